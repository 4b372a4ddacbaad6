import { bodyOnScales, type Car, sumOfWheels, type Wheels } from "@rollbook/lib";
import { numberFrom } from "../../../say/typed-number.js";
import type { UnitSystem } from "../../../say/units.js";
import { contentOf, type Draft, withTyped } from "./draft.js";
import { leavesOf } from "./leaves.js";
import { shownNumber } from "./number.js";
import { type Path, shapeAt } from "./path.js";

/** Where the readings stand among what was typed; the car file has no such places. */
export const readingAt = (end: "front" | "rear", side: "left" | "right"): Path =>
  `scales.${end}.${side}`;

/** What came of putting readings in. */
type OnScales =
  | { readonly draft: Draft; readonly readings: Wheels<number>; readonly refused?: undefined }
  | {
      readonly draft?: undefined;
      readonly readings?: undefined;
      readonly refused: "incomplete" | "off";
    };

/** The readings as typed, kg; NaN where there is none. */
function readingsOf({ typed }: Draft): Wheels<number> {
  const one = (end: "front" | "rear", side: "left" | "right") => {
    const given = typed[readingAt(end, side)];
    return given ? (numberFrom(given.text, "mass", given.units) ?? Number.NaN) : Number.NaN;
  };
  const axle = (end: "front" | "rear") => ({ left: one(end, "left"), right: one(end, "right") });
  return { front: axle("front"), rear: axle("rear") };
}

const bodyPlaces = ["mass", "behindFrontAxle", "leftOfCentre"] as const;

/** The draft with a body that stands on the scales as they were read. */
export function fromScales(draft: Draft, units: UnitSystem): OnScales {
  const readings = readingsOf(draft);
  const content = contentOf(draft);
  const others = leavesOf(content).filter(({ path }) => !path.startsWith("body."));
  const sound = others.every(
    ({ shape, value }) => shape.type !== "number" || Number.isFinite(value),
  );
  if (!sound || !Number.isFinite(sumOfWheels(readings))) return { refused: "incomplete" };
  try {
    const body = bodyOnScales(content as unknown as Car, readings);
    return { draft: bodyPlaces.reduce(typeIn(body, units), draft), readings };
  } catch {
    return { refused: "off" };
  }
}

const typeIn =
  (body: Car["body"], units: UnitSystem) =>
  (draft: Draft, name: (typeof bodyPlaces)[number]): Draft => {
    const shape = shapeAt(`body.${name}`);
    if (shape?.type !== "number") return draft;
    return withTyped(draft, `body.${name}`, shownNumber(body[name], shape, units), units);
  };

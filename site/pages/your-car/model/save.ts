import { type Car, carFromJson } from "@rollbook/lib";
import { type UnitSystem, unitOf } from "../../../say/units.js";
import { carWords as words } from "../../../say/your-car/cars.js";
import { levers } from "../../../say/your-car/levers.js";
import { contentOf, type Draft } from "./draft.js";
import { shownNumber } from "./number.js";
import { type Content, type Path, placesOf, shapeAt, valueAt, withValue } from "./path.js";

/** Which places of the car each lever sets. */
const places: Readonly<Record<string, string>> = {
  springRate: "{end}.spring.rate",
  seatTurns: "{end}.spring.seatTurns.{side}",
  tyrePressure: "{end}.tyre.pressure.{side}",
  camber: "{end}.camber.{side}",
  toe: "{end}.toe.{side}",
  rollCentreHeight: "{end}.geometry.rollCentreHeight",
  damperBump: "{end}.damper.bump",
  damperRebound: "{end}.damper.rebound",
  brakeFrontShare: "brakeFrontShare",
  driver: "driver.mass",
  passenger: "passenger.mass",
  fuel: "fuel.mass",
  ballast: "ballast.mass",
};

/** A car made ready to be kept, and what was done to it on the way. */
export interface Ready {
  readonly car: Car;
  readonly notes: readonly string[];
}

/** The car that a sound draft stands for, each range of adjustment wide enough for the value in use. */
export function readyCar(draft: Draft, units: UnitSystem): Ready | undefined {
  const { content, notes } = widened(contentOf(draft), units);
  const { car } = carFromJson(content);
  return car && { car, notes };
}

/** A content whose ranges of adjustment hold what is set now, and a note for each that had to grow. */
export function widened(
  content: Content,
  units: UnitSystem,
): { content: Content; notes: string[] } {
  let wide = content;
  const notes: string[] = [];
  for (const group of ["front.adjusters", "rear.adjusters", "adjusters"]) {
    for (const lever of Object.keys(places)) {
      if (shapeAt(`${group}.${lever}`) === undefined) continue;
      for (const value of valuesOf(content, group, lever)) {
        const end = endToMove(wide, `${group}.${lever}`, value);
        if (end === undefined) continue;
        wide = withValue(wide, end, value);
        notes.push(words.widened(levers[lever] ?? lever, shown(end, value, units)));
      }
    }
  }
  return { content: wide, notes };
}

/** The values that a lever has on the car now. */
function valuesOf(content: Content, group: string, lever: string): number[] {
  const end = group.split(".")[0] ?? "";
  return placesOf((places[lever] ?? "").replace("{end}", end))
    .map((path) => valueAt(content, path))
    .filter((value) => typeof value === "number");
}

/** Which end of a range has to move for a value, if one has. */
function endToMove(content: Content, path: Path, value: number): Path | undefined {
  const [min, max] = [valueAt(content, `${path}.min`), valueAt(content, `${path}.max`)];
  const hair = 1e-9 * Math.abs(value);
  if (typeof min === "number" && value < min - hair) return `${path}.min`;
  return typeof max === "number" && value > max + hair ? `${path}.max` : undefined;
}

function shown(path: string, value: number, units: UnitSystem): string {
  const shape = shapeAt(path);
  if (shape?.type !== "number") return String(value);
  return `${shownNumber(value, shape, units)} ${unitOf(shape.quantity, units)}`.trim();
}

/** A name that none of the others has: with a number behind it where it must be. */
export function freeName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  const bare = name.replace(/ \d+$/, "");
  let number = 2;
  while (taken.includes(`${bare} ${number}`)) number += 1;
  return `${bare} ${number}`;
}

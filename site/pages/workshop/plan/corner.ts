import {
  fromShown,
  lateralAccelerationOf,
  parameters,
  surfaces,
  type VenueCorner,
} from "@rollbook/lib";
import { element, format } from "@rollbook/page";
import { button, choiceField, textField } from "../parts/fields.js";
import { numberField } from "../parts/number-field.js";
import { words } from "../words.js";

const { plan } = words;
const { cornerRadius, speed: anySpeed } = parameters;

const ranges = {
  grade: { quantity: "share", min: -0.25, max: 0.25, decimals: 1 },
  banking: { quantity: "angle", min: -0.35, max: 0.7, decimals: 1 },
} as const;

/** What a corner's fields do to it. */
export interface CornerWork {
  change(corner: VenueCorner): void;
  move(by: -1 | 1): void;
  remove(): void;
  /** What is wrong with a new name. */
  faultOfName(name: string): string | undefined;
}

/** One corner of the list. */
export function cornerFields(corner: VenueCorner, index: number, work: CornerWork): HTMLElement {
  const id = `corner-${index}`;
  let now = corner;
  const asks = element("p", { class: "quiet", id: `${id}-asks` });
  const tell = () => {
    asks.textContent = plan.asks(format("accelerationInG", lateralAccelerationOf(now), 2));
  };
  const set = (part: Partial<VenueCorner>) => {
    now = { ...now, ...part };
    tell();
    work.change(now);
  };
  tell();
  const named = (name: string) => {
    const fault = name === "" ? plan.noName : work.faultOfName(name);
    if (fault === undefined) set({ name });
    return fault;
  };
  return element(
    "fieldset",
    { class: "corner", id },
    element("legend", {}, `${index + 1}`),
    textField(`${id}-name`, plan.cornerName, corner.name, named),
    choiceField(`${id}-direction`, plan.direction, directions, corner.direction, (direction) =>
      set({ direction }),
    ),
    numberField(`${id}-radius`, plan.radius, cornerRadius, corner.radius, (radius) =>
      set({ radius }),
    ),
    numberField(`${id}-speed`, plan.speed, anySpeed, corner.speed, (speed) => set({ speed })),
    numberField(`${id}-grade`, plan.grade, ranges.grade, corner.grade ?? 0, (grade) =>
      set({ grade }),
    ),
    numberField(`${id}-banking`, plan.banking, ranges.banking, corner.banking ?? 0, (banking) =>
      set({ banking }),
    ),
    choiceField(`${id}-surface`, plan.surface, roads, corner.surface ?? "smooth", (surface) =>
      set({ surface }),
    ),
    asks,
    buttons(corner, id, work),
  );
}

const directions = [
  ["left", words.left],
  ["right", words.right],
] as const;
const roads = surfaces.map((surface) => [surface, plan.surfaces[surface]] as const);

function buttons({ name }: VenueCorner, id: string, work: CornerWork): HTMLElement {
  return element(
    "p",
    { class: "tools" },
    button(`${id}-up`, "↑", () => work.move(-1), { "aria-label": plan.upCorner(name) }),
    button(`${id}-down`, "↓", () => work.move(1), { "aria-label": plan.downCorner(name) }),
    button(`${id}-remove`, plan.remove, work.remove, { "aria-label": plan.removeCorner(name) }),
  );
}

/** A corner that nobody has described yet. */
export const plainCorner = (name: string): VenueCorner => ({
  name,
  direction: "left",
  radius: 50,
  speed: fromShown("speed", 70),
});

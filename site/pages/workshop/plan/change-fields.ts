import {
  adjusterOf,
  type Car,
  type Change,
  formatAlike,
  type PlanStep,
  possibleChanges,
} from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { leverName, leverParameter } from "../../../say/change.js";
import { button, choiceField } from "../parts/fields.js";
import { words } from "../words.js";
import { placeKey, placesOf, seatsMatter, stepsIn, withSteps } from "./steps.js";

const { plan } = words;

type ChangeStep = Extract<PlanStep, { kind: "change" }>;
/** Exchanges a step; with `shape` its fields are other ones now. */
export type SetStep = (step: PlanStep, shape?: "shape") => void;

/** What is changed, how far, and whether the car is put back. */
export function changeFields(
  step: ChangeStep,
  id: string,
  car: Car,
  now: () => PlanStep,
  set: SetStep,
): HTMLElement[] {
  const places = placesOf(car, step.change);
  const choices = places.map((place) => [placeKey(place), leverName(place, reader)] as const);
  const lever = choiceField(`${id}-lever`, plan.lever, choices, placeKey(step.change), (key) => {
    const change = possibleChanges(car).find((one) => placeKey(one) === key);
    if (change !== undefined) set({ ...(now() as ChangeStep), change }, "shape");
  });
  return [
    lever,
    amount(step, id, car, now, set),
    ...(seatsMatter(step.change, car) ? [seats(step, id, now, set)] : []),
  ];
}

/** Whether the seats are turned so that the car stands as before. */
function seats(step: ChangeStep, id: string, now: () => PlanStep, set: SetStep): HTMLElement {
  const box = element("input", {
    type: "checkbox",
    id: `${id}-seats`,
    checked: step.putBack !== "nothing",
  });
  box.addEventListener("change", () => {
    const { putBack: _, ...rest } = now() as ChangeStep;
    set(box.checked ? rest : { ...rest, putBack: "nothing" });
  });
  return element("label", { class: "check", for: `${id}-seats` }, box, plan.putBack);
}

/** One step less, how many, one step more. */
function amount(
  step: ChangeStep,
  id: string,
  car: Car,
  now: () => PlanStep,
  set: SetStep,
): HTMLElement {
  const said = element("output", { id: `${id}-by` });
  const tell = (change: Change) => {
    said.textContent = plan.steps(stepsIn(change, car));
  };
  const by = (steps: number) => () => {
    const current = now() as ChangeStep;
    const changed = withSteps(current, steps, car);
    tell(changed.change);
    set(changed);
  };
  tell(step.change);
  const { quantity, decimals } = leverParameter(step.change);
  const size = adjusterOf(car, step.change)?.step;
  const each = size === undefined ? "" : formatAlike(quantity, size, decimals, reader.units);
  return element(
    "div",
    { class: "field", role: "group", "aria-labelledby": `${id}-size` },
    element("span", { id: `${id}-size`, class: "label" }, plan.by(each)),
    element(
      "span",
      { class: "boxed" },
      button(`${id}-less`, "−", by(-1), { "aria-label": plan.less }),
      said,
      button(`${id}-more`, "+", by(1), { "aria-label": plan.more }),
    ),
  );
}

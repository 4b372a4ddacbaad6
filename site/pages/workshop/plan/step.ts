import {
  adjusterOf,
  type Car,
  type Change,
  decimalsIn,
  format,
  type PlanStep,
  possibleChanges,
  type StageMinutes,
  type StepKind,
  stages,
} from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { leverName, leverParameter } from "../day/row-words.js";
import { button, choiceField, numberField, textField } from "../parts/fields.js";
import { words } from "../words.js";
import { asKind, placeKey, placesOf, stepsIn, withMinutes, withNote, withSteps } from "./steps.js";

const { plan } = words;

/** What a step's fields do to the plan. */
export interface StepWork {
  /** Exchanges the step; with `shape` its fields are other ones now. */
  set(step: PlanStep, shape?: "shape"): void;
  move(by: -1 | 1): void;
  remove(): void;
}

/** The fields of one run of the plan. */
export function stepFields(
  step: PlanStep,
  index: number,
  car: Car,
  usual: StageMinutes,
  work: StepWork,
): HTMLElement[] {
  const id = `step-${index}`;
  let now = step;
  const set = (changed: PlanStep, shape?: "shape") => {
    now = changed;
    work.set(changed, shape);
  };
  const kind = choiceField(`${id}-kind`, plan.kind, kinds, step.kind, (chosen) =>
    set(asKind(now, chosen, car), "shape"),
  );
  const note = textField(`${id}-note`, plan.note, step.note ?? "", (text) => {
    set(withNote(now, text));
    return undefined;
  });
  const minutes = element(
    "details",
    { id: `${id}-minutes` },
    element("summary", {}, plan.stageMinutes),
    element(
      "div",
      { class: "fields" },
      ...stages.map((stage) =>
        numberField(
          `${id}-${stage}`,
          words.stages[stage],
          minuteRange,
          step.minutes?.[stage] ?? usual[stage],
          (value) => set(withMinutes(now, stage, value)),
        ),
      ),
    ),
  );
  const changed = step.kind === "change" ? changeFields(step, id, car, () => now, set) : [];
  return [element("div", { class: "fields" }, kind, ...changed), note, minutes, tools(id, work)];
}

const kinds = (["baseline", "change", "return", "no change"] as const satisfies StepKind[]).map(
  (kind) => [kind, plan.kinds[kind]] as const,
);
const minuteRange = { quantity: "count", min: 0, max: 1440, decimals: 0 } as const;

type ChangeStep = Extract<PlanStep, { kind: "change" }>;
type SetStep = (step: PlanStep, shape?: "shape") => void;

function changeFields(
  step: ChangeStep,
  id: string,
  car: Car,
  now: () => PlanStep,
  set: SetStep,
): HTMLElement[] {
  const places = placesOf(car, step.change);
  const choices = places.map((place) => [placeKey(place), spell(leverName(place))] as const);
  const lever = choiceField(`${id}-lever`, plan.lever, choices, placeKey(step.change), (key) => {
    const change = possibleChanges(car).find((one) => placeKey(one) === key);
    if (change !== undefined) set({ ...step, change }, "shape");
  });
  const box = element("input", {
    type: "checkbox",
    id: `${id}-seats`,
    checked: step.putBack !== "nothing",
  });
  box.addEventListener("change", () => {
    const { putBack: _, ...rest } = now() as ChangeStep;
    set(box.checked ? rest : { ...rest, putBack: "nothing" });
  });
  const label = element("label", { class: "check", for: `${id}-seats` }, box, plan.putBack);
  return [lever, amount(step, id, car, now, set), label];
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
  const each =
    size === undefined
      ? ""
      : format(quantity, size, decimalsIn(quantity, decimals, reader.units), reader.units);
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

function tools(id: string, work: StepWork): HTMLElement {
  return element(
    "p",
    { class: "tools" },
    button(`${id}-up`, plan.up, () => work.move(-1)),
    button(`${id}-down`, plan.down, () => work.move(1)),
    button(`${id}-remove`, plan.remove, work.remove),
  );
}

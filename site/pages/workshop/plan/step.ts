import { type Car, type PlanStep, type StageMinutes, type StepKind, stages } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { button, choiceField, textField } from "../parts/fields.js";
import { numberField } from "../parts/number-field.js";
import { words } from "../words.js";
import { changeFields } from "./change-fields.js";
import { asKind, withMinutes, withNote } from "./steps.js";

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

function tools(id: string, work: StepWork): HTMLElement {
  return element(
    "p",
    { class: "tools" },
    button(`${id}-up`, plan.up, () => work.move(-1)),
    button(`${id}-down`, plan.down, () => work.move(1)),
    button(`${id}-remove`, plan.remove, work.remove),
  );
}

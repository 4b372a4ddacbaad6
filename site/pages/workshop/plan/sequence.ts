import {
  type PlanStep,
  proposePlan,
  Refusal,
  usualMinutes,
  withoutStep,
  withStep,
  withStepMoved,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import { bewares } from "../day/beware.js";
import type { Draft } from "../day/draft.js";
import { theDay } from "../day/open-day.js";
import { type Worked, worked } from "../day/worked.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { soon } from "../parts/soon.js";
import { words } from "../words.js";
import { outcome } from "./outcome.js";
import { edit } from "./people.js";
import { type StepWork, stepFields } from "./step.js";

const { plan } = words;

/** The runs of the plan with what the model says of each. */
export interface Sequence {
  readonly place: HTMLElement;
  /** Works out again what follows from the plan; with `shape` the runs are other ones. */
  update(shape?: "shape"): void;
}

export function sequence(): Sequence {
  const list = element("ol", { class: "steps", id: "steps" });
  const status = element("p", { role: "status", class: "quiet", id: "worked-out" });
  const later = soon();
  const changeSteps = (steps: (day: Draft) => readonly PlanStep[], shape?: "shape") => {
    edit((day) => ({ ...day, steps: steps(day) }));
    update(shape);
  };

  function update(shape?: "shape"): void {
    status.textContent = plan.working;
    later(() => {
      const day = theDay();
      if (day === undefined) return;
      const found = worked(day);
      if (shape === "shape" || list.childElementCount !== day.steps.length) draw(day, found);
      else fillOutcomes(day, found);
      status.textContent = summary(day, found);
    });
  }

  function draw(day: Draft, found: Worked): void {
    const items = day.steps.map((step, i) => {
      const minutes = found.rows?.[i]?.minutes ?? usualMinutes;
      const fields = stepFields(step, i, day.car, minutes, workOn(i));
      const result = element("div", { class: "outcome", id: `step-${i}-outcome` });
      const kind = element("span", { class: "only-print" }, `: ${plan.kinds[step.kind]}`);
      const title = element("h4", {}, plan.run(i + 1), kind);
      return element("li", { id: `step-${i}` }, title, ...fields, result);
    });
    refill(list, ...items);
    fillOutcomes(day, found);
  }

  function fillOutcomes(day: Draft, { rows = [] }: Worked): void {
    rows.forEach((row, i) => {
      const place = document.getElementById(`step-${i}-outcome`);
      if (place !== null) refill(place, ...outcome(row, rows[i - 1]?.car ?? day.car));
    });
  }

  function workOn(index: number): StepWork {
    return {
      set: (step, shape) => changeSteps((day) => withStep(day, index, step).steps, shape),
      move: (by) => {
        const to = index + by;
        if (to < 0 || to >= (theDay()?.steps.length ?? 0)) return;
        document.getElementById(`step-${to}-${by < 0 ? "up" : "down"}`)?.focus();
        changeSteps((day) => withStepMoved(day, index, to).steps, "shape");
      },
      remove: () => {
        const before = theDay()?.steps ?? [];
        document.getElementById("step-add")?.focus();
        changeSteps((day) => withoutStep(day, index).steps, "shape");
        const undo = () => changeSteps(() => before, "shape");
        say(plan.removed(plan.run(index + 1)), { label: words.takeBack, work: undo });
      },
    };
  }

  function propose(): void {
    say(plan.proposing);
    soon()(() => {
      const day = theDay();
      if (day === undefined) return;
      const before = day.steps;
      const steps = proposed(day);
      changeSteps(() => steps, "shape");
      if (steps.length === 0) say(plan.nothingFits);
      else {
        const undo = () => changeSteps(() => before, "shape");
        say(plan.proposed(steps.length), { label: words.takeBack, work: undo });
      }
    });
  }

  const add = () => {
    const kind = (theDay()?.steps.length ?? 0) === 0 ? "baseline" : "return";
    changeSteps((day) => [...day.steps, { kind }], "shape");
  };
  const place = element(
    "div",
    {},
    element("p", { class: "tools" }, button("step-propose", plan.propose, propose)),
    status,
    list,
    element("p", { class: "tools" }, button("step-add", plan.addRun, add)),
  );
  return { place, update };
}

function proposed(day: Draft): readonly PlanStep[] {
  try {
    return proposePlan(day).steps;
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

function summary({ steps }: Draft, { rows, fault }: Worked): string {
  if (fault !== undefined) return plan.cannotStand(fault);
  const last = rows.at(-1);
  if (steps.length === 0 || last === undefined) return plan.noSteps;
  const warnings = rows.reduce((sum, row) => sum + bewares(row).length, 0);
  return plan.workedOut(rows.length, words.hours(last.startsAt + last.lasts), warnings);
}

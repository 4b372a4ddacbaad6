import { type PlanStep, placeKey, usualMinutes } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { refusalInWords } from "../../../say/refusal.js";
import { Button } from "../../../ui/button.js";
import { bewares } from "../day/beware.js";
import type { Draft } from "../day/draft.js";
import { useWorked } from "../day/use-worked.js";
import type { Worked } from "../day/worked.js";
import { words } from "../words.js";
import { Outcome } from "./outcome.js";
import { StepFields } from "./step.js";
import { addRun, propose } from "./steps.js";

const { plan } = words;

/** The runs of the plan with what the model says of each. */
export function Sequence({ day, open }: { readonly day: Draft; readonly open: boolean }) {
  const { output, current } = useWorked(day, open);
  const rows = output?.rows ?? [];
  const outcomes = useMemo(
    () => rows.map((row, i) => <Outcome row={row} before={rows[i - 1]?.car ?? day.car} />),
    [output],
  );
  return (
    <>
      <p class="tools">
        <Button id="step-propose" work={propose}>
          {plan.propose}
        </Button>
      </p>
      <p role="status" class="quiet" id="worked-out">
        {output !== undefined && current ? summary(day, output) : plan.working}
      </p>
      <ol class="steps" id="steps">
        {day.steps.map((step, i) => (
          <li key={i} id={`step-${i}`}>
            <Title index={i} step={step} />
            <StepFields
              step={step}
              index={i}
              car={day.car}
              usual={rows[i]?.minutes ?? usualMinutes}
            />
            <div class="outcome" id={`step-${i}-outcome`} aria-busy={!current}>
              {isAbout(rows[i]?.step, step) && outcomes[i]}
            </div>
          </li>
        ))}
      </ol>
      <p class="tools">
        <Button id="step-add" work={addRun}>
          {plan.addRun}
        </Button>
      </p>
    </>
  );
}

function Title({ index, step }: { readonly index: number; readonly step: PlanStep }) {
  return (
    <h4>
      {plan.run(index + 1)}
      <span class="only-print">{`: ${plan.kinds[step.kind]}`}</span>
    </h4>
  );
}

/** Whether what was worked out last is about such a step: until it is worked out anew it may stand beside it. */
function isAbout(worked: PlanStep | undefined, step: PlanStep): boolean {
  if (worked?.kind !== "change" || step.kind !== "change") return worked?.kind === step.kind;
  return placeKey(worked.change) === placeKey(step.change);
}

function summary({ steps }: Draft, { rows, fault }: Worked): string {
  if (fault !== undefined) return plan.cannotStand(refusalInWords(fault, reader));
  const last = rows.at(-1);
  if (steps.length === 0 || last === undefined) return plan.noSteps;
  const warnings = rows.reduce((sum, row) => sum + bewares(row).length, 0);
  return plan.workedOut(rows.length, words.hours(last.startsAt + last.lasts), warnings);
}

import { type Car, type PlanStep, placeKey, type SheetRow, usualMinutes } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { refusalInWords } from "../../../say/refusal.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { bewares } from "../day/beware.js";
import { carsOfPlan, carTitle } from "../day/car-names.js";
import type { Draft } from "../day/draft.js";
import { useWorked } from "../day/use-worked.js";
import type { Worked } from "../day/worked.js";
import { words } from "../words.js";
import { Outcome } from "./outcome.js";
import { KeepOutside, NotKept } from "./outside-class.js";
import { StepFields } from "./step.js";
import { addRun, editedCar, forbidding, propose, proposeWith, stepsOf } from "./steps.js";

const { plan } = words;

/** The runs of the plan with what the model says of each. */
export function Sequence({ day, open }: { readonly day: Draft; readonly open: boolean }) {
  const { output, current } = useWorked(day, open);
  const sheets = output?.sheets ?? [];
  const { rows = [], plan: { car } = day } =
    sheets.find((sheet) => sheet.car === editedCar.value) ?? sheets[0] ?? {};
  const steps = stepsOf(day);
  const outcomes = useMemo(
    () => rows.map((row) => <Outcome key={row.run} row={row} measured={car} venue={day.venue} />),
    [rows],
  );
  return (
    <>
      <p class="tools">
        <Button id="step-propose" work={propose}>
          {plan.propose}
        </Button>
      </p>
      <Forbids />
      <WhichCar day={day} />
      <p role="status" class="quiet" id="worked-out">
        {output !== undefined && current ? summary(output) : plan.working}
      </p>
      <NotKept runs={steps.map((step, i) => ({ step, row: rows[i] }))} />
      <ol class="steps" id="steps">
        {steps.map((step, i) => (
          <Run key={i} index={i} step={step} car={car} row={rows[i]}>
            <div class="outcome" id={`step-${i}-outcome`} aria-busy={!current}>
              {isAbout(rows[i]?.step, step) && outcomes[i]}
            </div>
          </Run>
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

interface OneRun {
  readonly index: number;
  readonly step: PlanStep;
  readonly car: Car;
  readonly row: SheetRow | undefined;
  /** What the model says of it. */
  readonly children: ComponentChildren;
}

function Run({ index, step, car, row, children }: OneRun) {
  return (
    <li id={`step-${index}`}>
      <Title index={index} step={step} />
      <StepFields step={step} index={index} car={car} usual={row?.minutes ?? usualMinutes} />
      {children}
      <KeepOutside index={index} step={step} row={row} />
    </li>
  );
}

/** What forbids that a proposal tests more, and a button that changes it. */
function Forbids() {
  const forbids = forbidding.value;
  if (forbids.length === 0) return null;
  return (
    <div class="beware" id="forbids">
      <p>{plan.forbids}</p>
      <p class="tools">
        {forbids.map(({ assumption, usual }) => (
          <Button
            key={assumption}
            id={`allow-${assumption.replaceAll(" ", "-")}`}
            work={() => proposeWith(usual)}
          >
            {plan.allow(assumption, usual)}
          </Button>
        ))}
      </p>
    </div>
  );
}

/** Which car's runs are edited, where cars differ. */
function WhichCar({ day }: { readonly day: Draft }) {
  const cars = carsOfPlan(day);
  if (cars.length < 2) return null;
  return (
    <Chips
      id="edited-car"
      question={plan.whichCar}
      choices={cars.map((value) => ({ value, text: carTitle(day, value) ?? "" }))}
      chosen={cars.includes(editedCar.value) ? editedCar.value : 1}
      choose={(car) => {
        editedCar.value = car;
      }}
    />
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

function summary({ rows, sheets, fault }: Worked): string {
  if (fault !== undefined) return plan.cannotStand(refusalInWords(fault, reader));
  const last = rows.at(-1);
  if (last === undefined) return plan.noSteps;
  const all = sheets.flatMap((sheet) => sheet.rows);
  const warnings = all.reduce((sum, row) => sum + bewares(row).length, 0);
  return plan.workedOut(rows.length, words.hours(last.startsAt + last.lasts), warnings);
}

import {
  asStepOfKind,
  type Car,
  type PlanStep,
  type StageMinutes,
  type StepKind,
  stages,
  withMinutes,
  withNote,
  withPlace,
} from "@rollbook/lib";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { words } from "../words.js";
import { ChangeFields } from "./change-fields.js";
import { trimmed } from "./people.js";
import { PlanNumber, PlanText } from "./plan-fields.js";
import { changeStep, moveStep, removeStep } from "./steps.js";

const { plan } = words;

const kinds = (["baseline", "change", "return", "no change"] as const satisfies StepKind[]).map(
  (kind) => [kind, plan.kinds[kind]] as const,
);
const grounds = [
  ["corners", plan.onCorners],
  ["circle", plan.onCircle],
] as const;
const minuteRange = { quantity: "count", min: 0, max: 1440, decimals: 0 } as const;

interface Asked {
  readonly step: PlanStep;
  readonly index: number;
  readonly car: Car;
  /** Minutes of its stages where the step has none of its own. */
  readonly usual: StageMinutes;
}

/** The fields of one run of the plan. */
export function StepFields({ step, index, car, usual }: Asked) {
  const id = `step-${index}`;
  const asKind = (kind: StepKind) => changeStep(index, (now) => asStepOfKind(now, kind, car));
  return (
    <>
      <div class="fields">
        <ChoiceField
          id={`${id}-kind`}
          label={plan.kind}
          choices={kinds}
          value={step.kind}
          choose={asKind}
        />
        {step.kind === "change" && <ChangeFields step={step} index={index} car={car} />}
        <ChoiceField
          id={`${id}-on`}
          label={plan.drivenOn}
          choices={grounds}
          value={step.on ?? "corners"}
          choose={(on) =>
            changeStep(index, (now) => withPlace(now, on === "circle" ? on : undefined))
          }
        />
      </div>
      <PlanText
        id={`${id}-note`}
        label={plan.note}
        value={step.note ?? ""}
        tidy={trimmed}
        take={(text) => changeStep(index, (now) => withNote(now, text))}
      />
      <StepMinutes step={step} index={index} usual={usual} />
      <StepTools id={id} index={index} />
    </>
  );
}

/** How long each stage of the run takes. */
function StepMinutes({ step, index, usual }: Omit<Asked, "car">) {
  const id = `step-${index}`;
  return (
    <Fold id={`${id}-minutes`} title={plan.stageMinutes}>
      <div class="fields">
        {stages.map((stage) => (
          <PlanNumber
            key={stage}
            id={`${id}-${stage}`}
            label={words.stages[stage]}
            range={minuteRange}
            value={step.minutes?.[stage] ?? usual[stage]}
            report={(value) => changeStep(index, (now) => withMinutes(now, stage, value))}
          />
        ))}
      </div>
    </Fold>
  );
}

function StepTools({ id, index }: { readonly id: string; readonly index: number }) {
  return (
    <p class="tools">
      <Button id={`${id}-up`} work={() => moveStep(index, -1)}>
        {plan.up}
      </Button>
      <Button id={`${id}-down`} work={() => moveStep(index, 1)}>
        {plan.down}
      </Button>
      <Button id={`${id}-remove`} work={() => removeStep(index)}>
        {plan.remove}
      </Button>
    </p>
  );
}

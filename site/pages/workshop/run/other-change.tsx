import { useSignal } from "@preact/signals";
import {
  adjusterStepsIn,
  type Car,
  type ChangeStep,
  leversToChoose,
  placeKey,
  possibleChanges,
  withMoreSteps,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { changeLabel, leverName } from "../../../say/change.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { Forbidden } from "../../../ui/forbidden.js";
import { happens } from "../day/happen.js";
import { words } from "../words.js";

const { happen: said, plan } = words;

/** A change that was made instead of the planned one: which, how far, and a button that files it. */
export function OtherChange({ stood, car }: { readonly stood: Car; readonly car: number }) {
  const all = possibleChanges(stood);
  const made = useSignal<ChangeStep | undefined>(undefined);
  const [first] = all;
  if (first === undefined) return null;
  const step: ChangeStep = made.value ?? { kind: "change", change: first };
  const set = (changed: ChangeStep) => {
    made.value = changed;
  };
  const choose = (key: string) => {
    const change = all.find((one) => placeKey(one) === key);
    if (change !== undefined) set({ kind: "change", change });
  };
  const more = (by: number) => () => set(withMoreSteps(step, by, stood));
  const label = changeLabel(step.change, stood, reader);
  const file = () =>
    happens({ what: "other change", carNumber: car, change: step.change }, said.otherFiled(label));
  return (
    <>
      <ChoiceField
        id={`other-lever-${car}`}
        label={said.otherWhat}
        choices={leversToChoose(stood, step.change).map((one) => [
          placeKey(one),
          leverName(one, reader),
        ])}
        value={placeKey(step.change)}
        choose={choose}
      />
      <Steps id={`other-more-${car}`} count={adjusterStepsIn(step.change, stood)} more={more} />
      <p>{label}</p>
      <Forbidden car={stood} />
      <Button id={`other-file-${car}`} work={file}>
        {said.otherFile}
      </Button>
    </>
  );
}

/** One step less, how many, one step more. */
function Steps({
  id,
  count,
  more,
}: {
  readonly id: string;
  readonly count: number;
  readonly more: (by: number) => () => void;
}) {
  return (
    <p class="boxed">
      <Button aria-label={plan.less} work={more(-1)}>
        −
      </Button>
      <output>{plan.steps(count)}</output>
      <Button id={id} aria-label={plan.more} work={more(1)}>
        +
      </Button>
    </p>
  );
}

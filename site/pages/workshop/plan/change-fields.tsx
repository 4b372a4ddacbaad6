import {
  adjusterOf,
  adjusterStepsIn,
  type Car,
  type ChangeStep,
  leversToChoose,
  placeKey,
  possibleChanges,
  seatsMatter,
  withMoreSteps,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { leverName, leverParameter } from "../../../say/change.js";
import { formatAlike } from "../../../say/shown-range.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { Forbidden } from "../../../ui/forbidden.js";
import { words } from "../words.js";
import { changeStep } from "./steps.js";

const { plan } = words;

interface Asked {
  readonly step: ChangeStep;
  readonly index: number;
  readonly car: Car;
}

/** Exchanges a step that still changes something. */
const setChange = (index: number, with_: (step: ChangeStep) => ChangeStep): void =>
  changeStep(index, (step) => {
    if (step.kind !== "change") return step;
    const { outsideClass: _, ...asked } = step; // another change is another question
    return with_(asked);
  });

/** What is changed, how far, and whether the car is put back. */
export function ChangeFields({ step, index, car }: Asked) {
  const places = leversToChoose(car, step.change);
  const choices = places.map((place) => [placeKey(place), leverName(place, reader)] as const);
  const choose = (key: string) => {
    const change = possibleChanges(car).find((one) => placeKey(one) === key);
    if (change !== undefined) setChange(index, (now) => ({ ...now, change }));
  };
  return (
    <>
      <ChoiceField
        id={`step-${index}-lever`}
        label={plan.lever}
        choices={choices}
        value={placeKey(step.change)}
        choose={choose}
      />
      <Amount step={step} index={index} car={car} />
      {seatsMatter(step.change, car) && <Seats step={step} index={index} />}
      <Forbidden car={car} />
    </>
  );
}

/** Whether the seats are turned so that the car stands as before. */
function Seats({ step, index }: Pick<Asked, "step" | "index">) {
  const id = `step-${index}-seats`;
  const set = (putBack: boolean) =>
    setChange(index, ({ putBack: _, ...now }) => (putBack ? now : { ...now, putBack: "nothing" }));
  return (
    <label class="check" for={id}>
      <input
        type="checkbox"
        id={id}
        checked={step.putBack !== "nothing"}
        onChange={({ currentTarget }) => set(currentTarget.checked)}
      />
      {plan.putBack}
    </label>
  );
}

/** One step less, how many, one step more. */
function Amount({ step, index, car }: Asked) {
  const id = `step-${index}`;
  const { quantity, decimals } = leverParameter(step.change);
  const size = adjusterOf(car, step.change)?.step;
  const each = size === undefined ? "" : formatAlike(quantity, size, decimals, reader.units);
  const more = (steps: number) => () => setChange(index, (now) => withMoreSteps(now, steps, car));
  return (
    <div class="field" role="group" aria-labelledby={`${id}-size`}>
      <span id={`${id}-size`} class="label">
        {plan.by(each)}
      </span>
      <span class="boxed">
        <Button id={`${id}-less`} aria-label={plan.less} work={more(-1)}>
          −
        </Button>
        <output id={`${id}-by`}>{plan.steps(adjusterStepsIn(step.change, car))}</output>
        <Button id={`${id}-more`} aria-label={plan.more} work={more(1)}>
          +
        </Button>
      </span>
    </div>
  );
}

import { type Car, canonical, demoCar, shareStillAs, usualMinutes } from "@rollbook/lib";
import { ChoiceField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { carTitle } from "../day/car-names.js";
import type { Draft, OtherCarDraft } from "../day/draft.js";
import { edit } from "../day/open-day.js";
import { words } from "../words.js";
import { carsAtHand } from "./people.js";
import { PlanNumber } from "./plan-fields.js";
import { withUsual } from "./steps.js";

const { plan } = words;

const minuteRange = { quantity: "count", min: 0, max: 240, decimals: 0 } as const;
const MOST_COPIED = 0.5;

/** Which file each further car has, and the minutes that whoever leads the day knows best. */
export function CarsAndMinutes({ day }: { readonly day: Draft }) {
  const further = Array.from({ length: Math.min(day.cars, MOST_CHOSEN) - 1 }, (_, i) => i + 2);
  return (
    <>
      {further.length > 0 && (
        <div class="fields">
          {further.map((carNumber) => (
            <OwnFile key={carNumber} day={day} carNumber={carNumber} />
          ))}
        </div>
      )}
      <StillCopied day={day} />
      <Fold id="own-minutes" title={plan.ownMinutes}>
        <p class="quiet">{plan.ownMinutesHelp}</p>
        <Minutes day={day} />
      </Fold>
    </>
  );
}

const MOST_CHOSEN = 6; // further cars of a club day that differ

/** The file of a further car: like the first, or its own. */
function OwnFile({ day, carNumber }: { readonly day: Draft; readonly carNumber: number }) {
  const own = day.others?.find((other) => other.carNumber === carNumber);
  const filed: [string, Car][] = own === undefined ? [] : [[plan.dayCar(own.car.name), own.car]];
  const cars = [...filed, ...carsAtHand()];
  const choices = [
    ["", plan.likeFirst(day.car.name)] as const,
    ...cars.map(([label], i) => [String(i), label] as const),
  ];
  const choose = (chosen: string) => {
    const car = chosen === "" ? undefined : cars[Number(chosen)]?.[1];
    edit((now) => withOwn(now, carNumber, car));
    say(plan.otherCarChanged(carNumber, (car ?? day.car).name), () =>
      edit((now) => withOthers(now, day)),
    );
  };
  return (
    <ChoiceField
      id={`car-${carNumber}-file`}
      label={plan.fileOfCar(carNumber)}
      choices={choices}
      value={own === undefined ? "" : "0"}
      choose={choose}
    />
  );
}

/** The day with that file for a further car; without one it is like the first. */
function withOwn({ others = [], ...day }: Draft, carNumber: number, car: Car | undefined): Draft {
  const old = others.find((other) => other.carNumber === carNumber);
  const rest = others.filter((other) => other !== old);
  if (car === undefined) return { ...day, ...(rest.length > 0 && { others: rest }) };
  const made: OtherCarDraft = {
    ...{ carNumber, car, steps: old?.steps ?? day.steps.map(bare) },
    ...(old?.setUp !== undefined && { setUp: old.setUp }),
  };
  return { ...day, others: [...rest, made].sort((a, b) => a.carNumber - b.carNumber) };
}

const withOthers = ({ others: _, ...now }: Draft, { others }: Draft): Draft =>
  others === undefined ? now : { ...now, others };

/** What another car does in a run until its own runs are planned: baselines and returns alike, no change. */
const bare = ({ kind }: Draft["steps"][number]) => ({
  kind: kind === "change" ? ("no change" as const) : kind,
});

/** Says of which cars most is still as in the car that they were copied from. */
function StillCopied({ day }: { readonly day: Draft }) {
  const cars = [day, ...(day.others ?? [])].map(({ car }) => car);
  const copied = cars.filter((car) => !isDemo(car) && shareStillAs(car, demoCar) > MOST_COPIED);
  return copied.map((car) => (
    <p class="beware" key={car.name}>
      {plan.stillCopied(car.name, demoCar.name, Math.round(100 * shareStillAs(car, demoCar)))}
    </p>
  ));
}

const isDemo = (car: Car): boolean =>
  canonical({ ...car, name: "" }) === canonical({ ...demoCar, name: "" });

function Minutes({ day }: { readonly day: Draft }) {
  const { usual = {}, swap = 0, others = [] } = day;
  const set = (part: Draft["usual"]) =>
    edit((now) => ({ ...now, usual: { ...now.usual, ...part } }));
  return (
    <div class="fields">
      <PlanNumber
        id="own-change"
        label={plan.changeMinutes(carTitle(day, 1) ?? "")}
        range={minuteRange}
        value={usual.change ?? usualMinutes.change}
        report={(change) => set({ change })}
      />
      {others.map(({ carNumber, changeMinutes }) => (
        <PlanNumber
          key={carNumber}
          id={`own-change-${carNumber}`}
          label={plan.changeMinutes(carTitle(day, carNumber) ?? "")}
          range={minuteRange}
          value={changeMinutes ?? usualMinutes.change}
          report={(minutes) => edit((now) => withChangeMinutes(now, carNumber, minutes))}
        />
      ))}
      <PlanNumber
        id="own-stint"
        label={plan.stintMinutes}
        range={minuteRange}
        value={usual.drive ?? usualMinutes.drive}
        report={(drive) => edit((now) => withUsual(now, { drive }))}
      />
      <PlanNumber
        id="own-swap"
        label={plan.swapMinutes}
        range={{ ...minuteRange, max: 60 }}
        value={swap}
        report={(minutes) => edit((now) => ({ ...now, swap: minutes }))}
      />
    </div>
  );
}

const withChangeMinutes = (day: Draft, carNumber: number, changeMinutes: number): Draft => ({
  ...day,
  others: (day.others ?? []).map((other) =>
    other.carNumber === carNumber ? { ...other, changeMinutes } : other,
  ),
});

import { type Car, demoCar } from "@rollbook/lib";
import { ownCars } from "@rollbook/page";
import { inChosenClass } from "../../../store/classes.js";
import { ChoiceField } from "../../../ui/field.js";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../day/draft.js";
import { edit } from "../day/open-day.js";
import { words } from "../words.js";
import { PlanNumber, PlanText } from "./plan-fields.js";

const { plan } = words;

const minuteRange = { quantity: "count", min: 0, max: 10_000, decimals: 0 } as const;
const carRange = { quantity: "count", min: 1, max: 50, decimals: 0, whole: true } as const;

/** What is wrong with a name. */
export const faultOfName = (name: string): string | undefined =>
  name === "" ? plan.noName : undefined;
export const trimmed = (text: string): string => text.trim();

/** Name, car, time and people of a day. */
export function People({ day }: { readonly day: Draft }) {
  return (
    <div class="fields">
      <PlanText
        id="day-name"
        label={plan.name}
        value={day.name}
        tidy={trimmed}
        faultOf={faultOfName}
        take={(name) => edit((now) => ({ ...now, name }))}
      />
      <CarOfDay day={day} />
      <PlanNumber
        id="day-minutes"
        label={plan.minutes}
        range={minuteRange}
        value={day.minutes}
        report={(minutes) => edit((now) => ({ ...now, minutes }))}
      />
      <PlanNumber
        id="day-cars"
        label={plan.cars}
        range={carRange}
        value={day.cars}
        report={(cars) => edit((now) => withCars(now, cars))}
      />
      <PlanText
        id="day-drivers"
        label={plan.drivers}
        note={plan.driversNote}
        lines
        value={day.drivers.join("\n")}
        tidy={(text) => namesIn(text).join("\n")}
        faultOf={(text) => faultOfNames(namesIn(text))}
        take={(text) => edit((now) => ({ ...now, drivers: namesIn(text) }))}
      />
    </div>
  );
}

/** The day with another number of cars; the runs of one that is gone go with it. */
function withCars({ others, ...day }: Draft, cars: number): Draft {
  const left = others?.filter(({ carNumber }) => carNumber <= cars) ?? [];
  return { ...day, cars, ...(left.length > 0 && { others: left }) };
}

/** The day's own car first: choosing another makes that one the day's. */
function CarOfDay({ day }: { readonly day: Draft }) {
  const cars: [string, Car][] = [[plan.dayCar(day.car.name), day.car], ...carsAtHand()];
  const choose = (chosen: string) => {
    const car = cars[Number(chosen)]?.[1];
    if (car === undefined) return;
    edit((now) => ({ ...now, car }));
    say(plan.carChanged(car.name), () => edit((now) => ({ ...now, car: day.car })));
  };
  const choices = cars.map(([label], i) => [String(i), label] as const);
  return <ChoiceField id="day-car" label={plan.car} choices={choices} value="0" choose={choose} />;
}

/** The workbook's own car, and the reader's. */
export const carsAtHand = (): [string, Car][] => [
  [plan.demoCar(demoCar.name), inChosenClass(demoCar)],
  ...ownCars.now.value.cars.map((car): [string, Car] => [
    plan.ownCar(car.name),
    inChosenClass(car),
  ]),
];

/** The names in lines of text, empty lines left out. */
const namesIn = (text: string): string[] =>
  text
    .split("\n")
    .map((name) => name.trim().slice(0, 200))
    .filter((name) => name !== "");

/** What is wrong with a list of drivers. */
function faultOfNames(names: readonly string[]): string | undefined {
  if (names.length === 0) return plan.noDriver;
  if (names.length > 200) return plan.tooManyDrivers;
  const keys = names.map((name) => name.toLowerCase());
  const twice = names.find((_, i) => keys.indexOf(keys[i] ?? "") !== i);
  return twice === undefined ? undefined : plan.twice(twice);
}

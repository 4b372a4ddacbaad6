import { type Car, demoCar } from "@rollbook/lib";
import { ownCars } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { change, theDay } from "../day/open-day.js";
import { choiceField, linesField, textField } from "../parts/fields.js";
import { numberField } from "../parts/number-field.js";
import { words } from "../words.js";

const { plan } = words;

/** Changes the day as it is now, not as it was when the field was drawn. */
export function edit(with_: (day: Draft) => Draft): void {
  const day = theDay();
  if (day !== undefined) change(with_(day));
}

/** Name, car, time and people of a day. */
export function people(day: Draft, redraw: () => void): HTMLElement[] {
  const named = (name: string) => {
    if (name === "") return plan.noName;
    edit((now) => ({ ...now, name }));
    return undefined;
  };
  const listed = (text: string) => {
    const drivers = namesIn(text);
    const fault = faultOfNames(drivers);
    if (fault === undefined) edit((now) => ({ ...now, drivers }));
    return fault;
  };
  return [
    textField("day-name", plan.name, day.name, named),
    carField(day, redraw),
    numberField("day-minutes", plan.minutes, minuteRange, day.minutes, (minutes) =>
      edit((now) => ({ ...now, minutes })),
    ),
    numberField("day-cars", plan.cars, carRange, day.cars, (cars) =>
      edit((now) => ({ ...now, cars })),
    ),
    linesField("day-drivers", plan.drivers, day.drivers.join("\n"), listed, plan.driversNote),
  ];
}

const minuteRange = { quantity: "count", min: 0, max: 10_000, decimals: 0 } as const;
const carRange = { quantity: "count", min: 1, max: 50, decimals: 0, whole: true } as const;

function carField(day: Draft, redraw: () => void): HTMLElement {
  const cars: [string, Car][] = [
    [plan.dayCar(day.car.name), day.car],
    [plan.demoCar(demoCar.name), demoCar],
    ...ownCars.now.value.cars.map((car): [string, Car] => [plan.ownCar(car.name), car]),
  ];
  const choices = cars.map(([label], i) => [String(i), label] as const);
  return choiceField("day-car", plan.car, choices, "0", (chosen) => {
    const car = cars[Number(chosen)]?.[1];
    if (car !== undefined) edit((now) => ({ ...now, car }));
    redraw();
  });
}

/** The names in lines of text, empty lines left out. */
export const namesIn = (text: string): string[] =>
  text
    .split("\n")
    .map((name) => name.trim().slice(0, 200))
    .filter((name) => name !== "");

/** What is wrong with a list of drivers. */
export function faultOfNames(names: readonly string[]): string | undefined {
  if (names.length === 0) return plan.noDriver;
  if (names.length > 200) return plan.tooManyDrivers;
  const keys = names.map((name) => name.toLowerCase());
  const twice = names.find((_, i) => keys.indexOf(keys[i] ?? "") !== i);
  return twice === undefined ? undefined : plan.twice(twice);
}

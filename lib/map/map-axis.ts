import type { Car, CarLever } from "../car/car.js";
import { adjusterOf } from "../change/adjuster.js";
import { type Change, type EndChange, type EndLever, isEndChange } from "../change/change.js";
import { carLenses, endLenses } from "../change/levers.js";
import { type Parameter, type ParameterKey, parameters } from "../parameters.js";

/** A lever without how far it is moved. */
export type Lever = Omit<EndChange, "by" | "side"> | { readonly lever: CarLever };

/** A lever of a car as one axis of a map: how far it goes, and where it stands. */
export interface MapAxis {
  /** One word for it, such as "front-springRate". */
  readonly key: string;
  readonly lever: Lever;
  readonly parameter: ParameterKey;
  /** Such as "Front spring rate". */
  readonly name: string;
  /** SI, both sides alike; where they differ, their mean. */
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Where the car has it. */
  readonly present: number;
}

/** Every lever of a car that can be moved at all, in the order in which the lenses name them. */
export function mapAxesOf(car: Car): MapAxis[] {
  const ends = (Object.keys(endLenses) as EndLever[]).flatMap((lever) =>
    (["front", "rear"] as const).map((end) => axisOf(car, { lever, end })),
  );
  const whole = (Object.keys(carLenses) as CarLever[]).map((lever) => axisOf(car, { lever }));
  return [...ends, ...whole].filter((axis) => axis !== undefined);
}

/** The change that brings a lever from where the car has it to a value. */
export function changeTo({ lever, present }: MapAxis, value: number): Change {
  return { ...lever, by: value - present };
}

/** The row of the parameter table for this lever, with the range of the car's own adjuster. */
export function parameterOf({ parameter, name, min, max, step, present }: MapAxis): Parameter {
  return { ...parameters[parameter], name, min, max, step, start: present };
}

/** The nearest value that the adjuster can be set to, counted in steps from where the car has it. */
export function settable(axis: MapAxis, value: number): number {
  const { least, most } = reachOf(axis);
  const steps = Math.min(most, Math.max(least, Math.round((value - axis.present) / axis.step)));
  return valueAfter(axis, steps);
}

/** Every value that the adjuster can be set to, from the least. */
export function settingsOf(axis: MapAxis): number[] {
  const { least, most } = reachOf(axis);
  return Array.from({ length: most - least + 1 }, (_, i) => valueAfter(axis, least + i));
}

/** How many steps the adjuster goes each way from where the car has it. */
function reachOf({ min, max, step, present }: MapAxis): { least: number; most: number } {
  return {
    least: Math.ceil((min - present) / step - 1e-6),
    most: Math.floor((max - present) / step + 1e-6),
  };
}

const valueAfter = ({ min, max, step, present }: MapAxis, steps: number): number =>
  Math.min(max, Math.max(min, present + steps * step));

function axisOf(car: Car, lever: Lever): MapAxis | undefined {
  const adjuster = adjusterOf(car, lever);
  if (adjuster === undefined) return undefined;
  const { parameter, values } = stateOf(car, { ...lever, by: 0 });
  const present = (Math.min(...values) + Math.max(...values)) / 2;
  const apart = present - Math.min(...values); // both sides move together and stay in range
  const [min, max] = [adjuster.min + apart, adjuster.max - apart];
  if (!(max > min && present >= min && present <= max)) return undefined;
  const end = "end" in lever ? `${lever.end}-` : "";
  const name = parameters[parameter].name;
  return {
    key: `${end}${lever.lever}`,
    lever,
    parameter,
    name: end === "" ? name : capital(`${end.slice(0, -1)} ${name.toLowerCase()}`),
    min,
    max,
    step: adjuster.step,
    present,
  };
}

function stateOf(car: Car, change: Change): { parameter: ParameterKey; values: number[] } {
  if (!isEndChange(change)) {
    const { parameter, get } = carLenses[change.lever];
    return { parameter, values: [get(car) ?? 0] };
  }
  const { parameter, get } = endLenses[change.lever];
  const { left, right } = get(car[change.end]);
  return { parameter, values: [left, right] };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

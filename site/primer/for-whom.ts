import { readFileSync } from "node:fs";
import { standingCar } from "../../lib/balance/standing-car.js";
import type { Car } from "../../lib/car/car.js";
import { parseCar } from "../../lib/car/file/parse.js";
import { type CarClass, carInClass, parseClass } from "../../lib/day/class/class-file.js";
import { Refusal } from "../../lib/refusal.js";
import type { MadeFor } from "../cells/made-for.js";
import { codeOf, fromCaller, UsageError } from "../commands/usage.js";

/** Whose figures a file shows, and the class it is for. */
export interface ForWhom {
  readonly madeFor?: MadeFor;
  readonly carClass?: CarClass;
  /** The car as its file has it, before the class puts it on its control tyre. */
  readonly filed?: Car;
}

/** What a command is asked for: paths, empty where left out. */
interface Asked {
  readonly car: string;
  readonly class: string;
  readonly us: boolean;
}

/**
 * The car, the class and the units that a file is asked for; the class's base car where no car is
 * named.
 *
 * @throws UsageError where a file cannot be read or is not sound
 */
export function forWhom(asked: Asked): ForWhom {
  const carClass =
    asked.class === "" ? undefined : sound(parseClass(textOf("class", asked.class))).carClass;
  const own = asked.car === "" ? carClass?.baseCar : sound(parseCar(textOf("car", asked.car))).car;
  const car = own && (carClass ? carInClass(own, carClass) : own);
  if (car) standing(car);
  const units = asked.us ? "us" : "metric";
  return {
    ...(carClass && { carClass }),
    ...(own && { filed: own }),
    ...((car || asked.us) && { madeFor: { units, ...(car && { car }) } }),
  };
}

/** A car that cannot stand has no figures. */
function standing(car: Car): void {
  try {
    void standingCar(car).handling; // worked out once it is asked for
  } catch (error) {
    throw error instanceof Refusal ? new UsageError(`${car.name}: ${error.message}`) : error;
  }
}

function textOf(option: string, path: string): string {
  const file = fromCaller(path);
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    throw new UsageError(`--${option} is ${file}, which cannot be read (${codeOf(error)}).`);
  }
}

function sound<Read extends { readonly faults?: readonly string[] | undefined }>(read: Read) {
  if (read.faults !== undefined) throw new UsageError(read.faults.join("\n"));
  return read as Exclude<Read, { readonly faults: readonly string[] }>;
}

import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import { adjusterOf } from "../../change/adjuster.js";
import type { Change } from "../../change/change.js";
import { pick, randomFrom } from "../../random.js";
import { sameLever } from "../debrief/tried.js";
import { type LeverPlace, leverPlaces } from "../diagnosis/search.js";
import { candidatesFor } from "../plan/propose.js";
import { stepCountsFor, timesSteps } from "../plan/step-counts.js";
import type { Practice } from "./practice.js";
import type { HelpLevel } from "./puzzle.js";

const FEW = 4; // causes to choose from with most help

/** The causes to choose from: all that can be felt, or with most help four of them. */
export function causesFor({ seed, car, corner, hidden }: Practice, level: HelpLevel): Change[] {
  const all = candidatesFor(standingCar(car), corner.speed).map(({ change }) => change);
  if (level > 1) return all;
  const random = randomFrom(seed + 2);
  const chosen = [hidden];
  while (chosen.length < FEW) {
    const rest = all.filter((change) => !chosen.some((taken) => sameLever(taken, change)));
    const more = pick(rest, random);
    if (more === undefined) break;
    chosen.splice(Math.floor(random() * (chosen.length + 1)), 0, more);
  }
  return chosen;
}

/** A lever of a car, and the changes of it to choose from. */
export interface NextChoice {
  readonly place: LeverPlace;
  readonly changes: readonly Change[];
}

/** Every lever that this car has, with round counts of steps both ways. */
export function nextChoices(car: Car): NextChoice[] {
  return leverPlaces.flatMap((place) => {
    const step = adjusterOf(car, place as Change)?.step;
    if (step === undefined) return [];
    const way = (by: number) => {
      const one = { ...place, by } as Change; // lever and end come from one table of places
      return stepCountsFor(car, one).map((count) => timesSteps(one, count));
    };
    const changes = [...way(-step).reverse(), ...way(step)];
    return changes.length > 0 ? [{ place, changes }] : [];
  });
}

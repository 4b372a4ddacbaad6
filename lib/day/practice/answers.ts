import type { Car } from "../../car/car.js";
import { adjusterOf } from "../../change/adjuster.js";
import type { Change } from "../../change/change.js";
import { pick, randomFrom, seedFrom } from "../../random.js";
import { sameLever, sameWay } from "../debrief/tried.js";
import { type LeverPlace, leverPlaces } from "../diagnosis/search.js";
import { stepCountsFor, timesSteps } from "../plan/step-counts.js";
import { sizedChanges, WHOLE } from "./hide.js";
import type { Practice } from "./practice.js";

const FEW = 4; // causes to choose from with most help

/**
 * The causes to choose from: all levers that can be felt, each way in one of its sizes, so that no
 * size tells which it was; with most help four of them.
 */
export function causesFor({ seed, level, car, corner, hidden }: Practice): Change[] {
  const random = randomFrom(seedFrom(`causes ${seed}`));
  const all = oneSizeEach(car, corner.speed, hidden, random);
  if (level > 1) return all;
  const chosen = [...hidden];
  while (chosen.length < FEW) {
    const rest = all.filter((change) => !chosen.some((taken) => sameLever(taken, change)));
    const more = pick(rest, random);
    if (more === undefined) break;
    chosen.splice(Math.floor(random() * (chosen.length + 1)), 0, more);
  }
  return chosen;
}

/** Each lever each way once: as it was hidden, or in any size. */
function oneSizeEach(
  car: Car,
  speed: number,
  hidden: readonly Change[],
  random: () => number,
): Change[] {
  const sized = sizedChanges(car, speed).map(({ change }) => change);
  const ways = sized.filter((change, i) => i === sized.findIndex((one) => sameWay(one, change)));
  return ways.map((way) => {
    const any = pick(
      sized.filter((change) => sameWay(change, way)),
      random,
    );
    return hidden.find((change) => sameWay(change, way)) ?? any ?? way;
  });
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
      return stepCountsFor(car, one, WHOLE).map((count) => timesSteps(one, count));
    };
    const changes = [...way(-step).reverse(), ...way(step)];
    return changes.length > 0 ? [{ place, changes }] : [];
  });
}

import type { CarBalance } from "../balance/car-balance.js";
import type { HandlingCar } from "../balance/handling-car.js";
import { mirrorCar } from "../balance/mirror-car.js";
import { type PhaseName, phaseNames } from "../balance/phases.js";
import type { BothCorners } from "./behaviour.js";

/** A wheel that has no free travel left in the hardest turn of a part of a corner. */
export interface OnStop {
  readonly phase: PhaseName;
  readonly end: "front" | "rear";
  /** which wheel of that end, as a corner to either side has it */
  readonly wheel: "outer" | "inner";
  readonly stop: "bump" | "droop";
}

const ends = ["front", "rear"] as const;
const wheels = ["outer", "inner"] as const;

/** The wheels on their stops in a left or right corner, each told once. */
export function onStops(handling: HandlingCar, { left, right }: BothCorners): OnStop[] {
  const mirrored = mirrorCar(handling);
  return phaseNames.flatMap((phase) =>
    ends.flatMap((end) =>
      wheels.flatMap((wheel): OnStop[] => {
        const toLeft = stopOf(handling, left[phase], end, wheel);
        const stop = toLeft ?? stopOf(mirrored, right[phase], end, wheel);
        return stop === undefined ? [] : [{ phase, end, wheel, stop }];
      }),
    ),
  );
}

/** The stop that a wheel is on in a left turn. */
function stopOf(
  car: HandlingCar,
  balance: CarBalance,
  end: "front" | "rear",
  wheel: "outer" | "inner",
): "bump" | "droop" | undefined {
  const { stops } = car[end];
  if (stops === undefined) return undefined;
  const side = wheel === "outer" ? "right" : "left";
  const { travel } = balance.wheels[end][side];
  if (travel >= stops.bumpLeft[side]) return "bump";
  return -travel >= stops.droopLeft[side] ? "droop" : undefined;
}

/** Those that are on a stop now and were not before. */
export function newlyOnStops(after: readonly OnStop[], before: readonly OnStop[]): OnStop[] {
  return after.filter((now) => !before.some((then) => same(now, then)));
}

const same = (a: OnStop, b: OnStop): boolean =>
  a.phase === b.phase && a.end === b.end && a.wheel === b.wheel && a.stop === b.stop;

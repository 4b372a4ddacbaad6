import type { Felt, Fix, Ride } from "@rollbook/lib";
import type { Packed } from "../../../store/rides.js";

export const FELT = 7;
export const FIX = 3;

/** A ride as rows of numbers, which go to a worker and into the database as they are. */
export function packed({ felt, fixes }: Ride): Packed {
  return {
    felt: Float64Array.from(felt.flatMap(({ time, force, turn }) => [time, ...force, ...turn])),
    fixes: Float64Array.from(
      fixes.flatMap(({ time, speed, course = Number.NaN }) => [time, speed, course]),
    ),
  };
}

/** The ride of such rows; a sample that does not come after the one before is left out. */
export function unpacked({ felt, fixes }: Packed): Ride {
  const samples: Felt[] = [];
  for (let i = 0; i + FELT <= felt.length; i += FELT) {
    const [time = 0, fx = 0, fy = 0, fz = 0, tx = 0, ty = 0, tz = 0] = felt.subarray(i, i + FELT);
    if (time > (samples.at(-1)?.time ?? -Infinity))
      samples.push({ time, force: [fx, fy, fz], turn: [tx, ty, tz] });
  }
  const told: Fix[] = [];
  for (let i = 0; i + FIX <= fixes.length; i += FIX) {
    const [time = 0, speed = 0, course = 0] = fixes.subarray(i, i + FIX);
    told.push({ time, speed, ...(Number.isFinite(course) && { course }) });
  }
  return { felt: samples, fixes: told };
}

import { isBeamAxle } from "../car/axle.js";
import type { Axle } from "../car/car.js";
import { complianceSteerOf } from "../car/compliance-steer.js";
import { stopsOf } from "../car/stops.js";
import { bestPressureRange, tyreOf } from "../car/tyres.js";
import { bestPressure } from "../tyre/grip-against-pressure.js";

type End = "front" | "rear";

/**
 * What figures take for a number of an axle that its file leaves out, though it may be off all the
 * same; undefined where nothing is taken, or the axle has no such thing.
 */
export function valueLeftOut(axle: Axle, end: End, field: string): number | undefined {
  return usual[field]?.(axle, end);
}

const usual: Readonly<Record<string, (axle: Axle, end: End) => number | undefined>> = {
  "geometry.rollCentreMigration": () => 0,
  "geometry.camberGain": () => 0,
  "geometry.toeGain": () => 0,
  "geometry.rollSteer": () => 0,
  "geometry.bumpStop": (axle) =>
    axle.geometry.bumpTravel === undefined ? undefined : stopsOf(axle).bumpStop,
  "geometry.droopStop": (axle) =>
    axle.geometry.droopTravel === undefined ? undefined : stopsOf(axle).droopStop,
  "geometry.complianceSteer": complianceSteerOf,
  "tyre.grip": () => 1,
  "tyre.loadSensitivity": () => 1,
  "tyre.stiffness": () => 1,
  "tyre.bestPressure": (axle) => {
    const tyre = tyreOf(axle);
    if (bestPressureRange(tyre) === undefined) return undefined;
    return bestPressure(tyre, { load: tyre.coefficients.FNOMIN });
  },
};

/** Whether an axle has such a number at all: gains are of independent wheels, roll steer of a beam. */
export function isOfAxle(axle: Axle, field: string): boolean {
  if (field === "geometry.rollSteer") return isBeamAxle(axle);
  if (field === "geometry.camberGain" || field === "geometry.toeGain") return !isBeamAxle(axle);
  return true;
}

import { meanOf, tyreStiffnessOf } from "../car/axle.js";
import type { Car } from "../car/car.js";
import { tyreCoefficientsOf } from "../car/tyres.js";
import { Refusal } from "../refusal.js";
import { contactPatch61 } from "../tyre/contact-patch.js";
import { GRAVITY } from "../units.js";
import { curveThrough } from "./curve.js";
import { exactly, type Measured } from "./measured.js";
import { type Propagated, through } from "./through.js";

/** A load on a tyre, and how far its wheel's centre came down. */
export interface TyreStep {
  /** kg on the tyre */
  readonly load: number;
  /** m above the ground */
  readonly hub: Measured;
}

/** How stiff a tyre is. */
export interface TyreRate {
  /** N/m */
  readonly rate: Measured;
  /** over that of the tyre's data at the same load and pressure */
  readonly factor: Measured;
  readonly byChance: number;
}

/**
 * Vertical rate of a tyre from its load and the height of its wheel's centre, by least squares.
 *
 * @throws Refusal for fewer than two loads, or where the wheel did not come down
 */
export function tyreRateByLoad(
  car: Car,
  end: "front" | "rear",
  steps: readonly TyreStep[],
): TyreRate {
  const readings = steps.map(({ load, hub }) => ({ at: load * GRAVITY, read: hub }));
  const { found, byChance } = curveThrough(readings, 1);
  const [, risePerForce = { value: 0, spread: 0 }] = found;
  if (!(-risePerForce.value > 2 * risePerForce.spread))
    throw new Refusal(
      "not-determined",
      "The wheel did not come down by more than its readings are off.",
    );
  const value = -1 / risePerForce.value;
  const spread = value * Math.abs(risePerForce.spread / risePerForce.value);
  const mean = readings.reduce((sum, { at }) => sum + at, 0) / readings.length;
  const { stiffness: _, ...tyre } = car[end].tyre;
  const ofData = tyreStiffnessOf({ ...car[end], tyre }, mean);
  const factor = { value: value / ofData, spread: spread / ofData };
  return { rate: { value, spread }, factor, byChance };
}

/** A print of a tyre that rolled slowly over paper: what it says, and what the tyre's data say. */
export interface TyrePrint {
  /** m², grooves counted in */
  readonly area: Propagated;
  /** load over area and pressure: what the air alone would carry is 1 */
  readonly overPressure: Propagated;
  /** m of length and width by the tyre's data at that load and the pressure of the car's file */
  readonly byData: { readonly length: number; readonly width: number };
}

/**
 * What the print of a tyre says: its area, and how much of its load the air carries.
 *
 * @param print - m of length and width, kg on the tyre
 */
export function tyrePrint(
  car: Car,
  end: "front" | "rear",
  print: Readonly<Record<"length" | "width" | "load", Measured>>,
): TyrePrint {
  const pressure = meanOf(car[end].tyre.pressure);
  const inputs = { ...print, pressure: exactly(pressure) };
  const told = through(inputs, ({ length, width, load, pressure }) => ({
    area: length * width,
    overPressure: (load * GRAVITY) / (length * width * pressure),
  }));
  const patch = contactPatch61(tyreCoefficientsOf(car[end]), print.load.value * GRAVITY, pressure);
  return { ...told, byData: { length: 2 * patch.halfLength, width: 2 * patch.halfWidth } };
}

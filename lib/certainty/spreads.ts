import type { Source } from "../car/car.js";
import { fromHandy } from "../units.js";

/** How doubt about a kind of number grows: in its own unit, in proportion, or as a share of a whole. */
export type SpreadScale = "own unit" | "in proportion" | "share of a whole";

/** How far numbers of one kind are usually off: one standard deviation for each source. */
export interface SpreadRow extends Readonly<Record<Source, number>> {
  /**
   * What the deviations are: in the SI unit of the number; as a share of it; or, for a share s, of
   * 4·s·(1 − s), so that nothing and all are exact.
   */
  readonly scale: SpreadScale;
  /** Where an honest owner with tape measure, scales, gauges and data sheets has it from. */
  readonly honest: Source;
  /** Where the deviations come from. */
  readonly from: string;
}

const COMMON = "common practice, no source";

type Four = readonly [measured: number, maker: number, estimated: number, copied: number];

const row =
  (scale: SpreadScale) =>
  (honest: Source, [measured, maker, estimated, copied]: Four, from = COMMON): SpreadRow => ({
    scale,
    honest,
    measured,
    maker,
    estimated,
    copied,
    from,
  });

const off = row("own unit");
const share = row("in proportion");
const ofWhole = row("share of a whole");

const degrees = (...values: Four): Four =>
  values.map((value) => fromHandy("angle", value)) as unknown as Four;

const position = off("measured", [0.02, 0.03, 0.05, 0.1]); // m
const side = off("measured", [0.01, 0.02, 0.02, 0.05]); // m
const height = off("estimated", [0.03, 0.03, 0.05, 0.08]); // m
const person = share("measured", [0.015, 0.05, 0.05, 0.15]);

/**
 * The usual spread of every number that bears on how a car turns, by its place in general.
 *
 * What is counted or chosen has no row: it is taken as exact (turns, positions, the tyre's name), and
 * so is what rules or adjusters say. Joints are not varied; the geometry that follows from them is.
 */
// biome-ignore format: a table reads by rows
export const spreads: Readonly<Record<string, SpreadRow>> = {
  wheelbase: off("measured", [0.003, 0.005, 0.01, 0.15]),
  "{end}.track": off("measured", [0.004, 0.01, 0.012, 0.08]),
  "{end}.rideHeight": off("measured", [0.002, 0.01, 0.01, 0.02]),
  "{end}.unsprungMass": share("estimated", [0.03, 0.05, 0.12, 0.25]),
  "{end}.unsprungHeight": off("measured", [0.004, 0.01, 0.01, 0.02]),
  "body.mass": share("measured", [0.005, 0.02, 0.03, 0.2]),
  "body.behindFrontAxle": off("measured", [0.01, 0.03, 0.04, 0.12]),
  "body.leftOfCentre": off("measured", [0.006, 0.02, 0.02, 0.05]),
  "body.height": off("estimated", [0.02, 0.03, 0.04, 0.06]),
  "driver.mass": person, "driver.behindFrontAxle": position, "driver.leftOfCentre": side, "driver.height": height,
  "passenger.mass": person, "passenger.behindFrontAxle": position, "passenger.leftOfCentre": side, "passenger.height": height,
  "fuel.mass": share("measured", [0.05, 0.1, 0.1, 0.3]),
  "fuel.behindFrontAxle": position, "fuel.leftOfCentre": side, "fuel.height": height,
  "ballast.mass": share("measured", [0.01, 0.02, 0.05, 0.3]),
  "ballast.behindFrontAxle": position, "ballast.leftOfCentre": side, "ballast.height": height,
  "inertia.roll": share("estimated", [0.05, 0.05, 0.15, 0.3]),
  "inertia.pitch": share("estimated", [0.05, 0.05, 0.15, 0.3]),
  "inertia.yaw": share("estimated", [0.05, 0.05, 0.15, 0.3]),
  torsionStiffness: share("estimated", [0.1, 0.15, 0.3, 0.5]),
  steeringRatio: share("measured", [0.02, 0.01, 0.05, 0.1]),
  brakeFrontShare: ofWhole("maker", [0.02, 0.02, 0.04, 0.06]),
  driveFrontShare: ofWhole("maker", [0.02, 0.02, 0.05, 0.1]),
  "air.frontDownforce": share("estimated", [0.1, 0.1, 0.3, 0.6]),
  "air.rearDownforce": share("estimated", [0.1, 0.1, 0.3, 0.6]),
  "air.drag": share("estimated", [0.05, 0.05, 0.15, 0.3]),
  "{end}.spring.rate": share("maker", [0.02, 0.05, 0.08, 0.25]),
  "{end}.spring.motionRatio": share("measured", [0.03, 0.01, 0.05, 0.15]),
  "{end}.spring.spacing": off("measured", [0.004, 0.005, 0.015, 0.08]),
  "{end}.bar.motionRatio": share("measured", [0.03, 0.01, 0.06, 0.2]),
  "{end}.bar.rate": share("maker", [0.05, 0.1, 0.15, 0.4]),
  "{end}.damper.bump": share("estimated", [0.05, 0.1, 0.2, 0.4]),
  "{end}.damper.rebound": share("estimated", [0.05, 0.1, 0.2, 0.4]),
  "{end}.damper.motionRatio": share("measured", [0.03, 0.01, 0.05, 0.15]),
  "{end}.differential.power": off("maker", [0.05, 0.05, 0.1, 0.15]),
  "{end}.differential.overrun": off("maker", [0.05, 0.05, 0.1, 0.15]),
  "{end}.geometry.rollCentreHeight": off("estimated", [0.01, 0.015, 0.03, 0.05]),
  "{end}.geometry.rollCentreMigration": off("estimated", [0.2, 0.2, 0.5, 1]),
  "{end}.geometry.camberGain": off("estimated", degrees(2, 2, 4, 10)),
  "{end}.geometry.toeGain": off("estimated", degrees(0.5, 1, 2, 4)),
  "{end}.geometry.rollSteer": off("estimated", [0.01, 0.01, 0.03, 0.06]),
  "{end}.geometry.bumpTravel": off("measured", [0.004, 0.005, 0.01, 0.02]),
  "{end}.geometry.droopTravel": off("measured", [0.004, 0.005, 0.01, 0.02]),
  "{end}.geometry.bumpStop": share("estimated", [0.15, 0.2, 0.5, 0.6]),
  "{end}.geometry.droopStop": share("estimated", [0.15, 0.2, 0.5, 0.6]),
  "{end}.geometry.complianceSteer": share("estimated", [0.15, 0.2, 0.5, 0.6]),
  "{end}.camber.{side}": off("measured", degrees(0.1, 0.25, 0.25, 0.75)),
  "{end}.toe.{side}": off("measured", degrees(0.03, 0.05, 0.1, 0.2)),
  "{end}.tyre.pressure.{side}": off("measured", [2e3, 5e3, 5e3, 15e3]),
  "{end}.tyre.grip": share("estimated", [0.02, 0.03, 0.05, 0.08]),
  "{end}.tyre.loadSensitivity": share("estimated", [0.1, 0.15, 0.25, 0.4]),
  "{end}.tyre.stiffness": share("estimated", [0.05, 0.1, 0.2, 0.3]),
  "{end}.tyre.bestPressure": off("estimated", [5e3, 10e3, 20e3, 30e3]),
};

/**
 * What is off for several places at once, beyond what each is off by itself: one gauge reads all four
 * pressures, and one day is good or bad for all tyres.
 */
// biome-ignore format: a table reads by rows
export const sharedSpreads: Readonly<Record<"pressureGauge" | "gripOfTheDay", SpreadRow>> = {
  pressureGauge: off("measured", [3e3, 5e3, 5e3, 15e3]),
  gripOfTheDay: share("estimated", [0.03, 0.05, 0.05, 0.08]),
};

/** One standard deviation of a number of a kind, in its own SI unit, at least 0. */
export function spreadOf({ scale, ...row }: SpreadRow, how: Source, value: number): number {
  switch (scale) {
    case "own unit":
      return row[how];
    case "in proportion":
      return row[how] * Math.abs(value);
    case "share of a whole":
      return row[how] * 4 * Math.max(0, value * (1 - value));
  }
}

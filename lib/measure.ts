/** Measuring: readings to numbers of the car, each with its spread. One line a module, by alphabet. */

export * from "./measure/back-to-base.js";
export * from "./measure/circle.js";
export * from "./measure/circle-difference.js";
export * from "./measure/circle-gradient.js";
export * from "./measure/circle-predicted.js";
export * from "./measure/combined.js";
export * from "./measure/curve.js";
export * from "./measure/difference.js";
export * from "./measure/first-car.js";
export * from "./measure/first-car-given.js";
export * from "./measure/fit-tyre.js";
export * from "./measure/four-scales.js";
export * from "./measure/lap-difference.js";
export * from "./measure/learn.js";
export * from "./measure/least-squares.js";
export * from "./measure/measured.js";
export * from "./measure/motion-ratio.js";
export {
  type Next,
  nextToMeasure,
  type Sharpening,
  type SharpeningId,
  sharpeningsFor,
} from "./measure/next-to-measure.js";
export * from "./measure/raised-axle.js";
export * from "./measure/repeats.js";
export { cornersOfLap } from "./measure/ride/laps.js";
export * from "./measure/ride/mounting.js";
export * from "./measure/ride/predicted-roll.js";
export * from "./measure/ride/ride.js";
export * from "./measure/ride/ride-facts.js";
export * from "./measure/ride/roll-gradient.js";
export * from "./measure/ride/same-driving.js";
export * from "./measure/ride-rate.js";
export * from "./measure/sill-split.js";
export * from "./measure/sill-weight.js";
export * from "./measure/taped-linkage.js";
export * from "./measure/through.js";
export * from "./measure/tyre-print.js";
export * from "./measure/tyre-readings.js";

import type { Car } from "../../car/car.js";
import { demoCar } from "../../car/demo-car.js";
import { applyChanges } from "../../change/apply.js";
import type { Change } from "../../change/change.js";

/** The single changes that the example plans. */
export const exampleChanges = {
  stifferFrontBar: { lever: "barPosition", end: "front", by: 1 },
  stifferRearBar: { lever: "barPosition", end: "rear", by: 1 },
} as const satisfies Record<string, Change>;

/** What somebody did besides, in good faith, before the last run. */
const pressureLetDown: Change = { lever: "tyrePressure", end: "front", by: -30e3 };

const stifferRear = applyChanges(demoCar, [exampleChanges.stifferRearBar]);

/** The set-ups of the example, run by run; the fifth run changes nothing. */
export const exampleCars = {
  baseline: demoCar,
  stifferFront: applyChanges(demoCar, [exampleChanges.stifferFrontBar]),
  stifferRear,
  twoChanges: applyChanges(stifferRear, [exampleChanges.stifferFrontBar, pressureLetDown]),
} as const satisfies Record<string, Car>;

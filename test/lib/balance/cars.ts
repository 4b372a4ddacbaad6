import fc from "fast-check";
import type { AxleDifferential } from "../../../lib/balance/differential.js";
import type { HandlingAxle, HandlingCar } from "../../../lib/balance/handling-car.js";
import type { WheelStops } from "../../../lib/balance/stops.js";
import { clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import { between } from "../evenly.js";

const degree = Math.PI / 180;
const both = (value: number) => ({ left: value, right: value });

const axle: HandlingAxle = {
  track: 1.45,
  rollStiffness: 30e3,
  rollCentreHeight: 0.05,
  unsprungMass: 80,
  unsprungHeight: 0.29,
  tyre: clubTyreCoefficients,
  pressure: both(200e3),
  leftExcessLoad: 0,
  camber: both(-1.5 * degree),
  toe: both(0),
  independent: true,
  camberGain: (-0.02 * degree) / 1e-3,
  toeGain: 0,
  rollSteer: 0,
  tyreRollStiffness: 220e3,
  ownForceShare: 0.83,
  complianceSteer: 0.5e-6,
  wheelRate: 30e3,
  rollDamping: 3000,
  downforceFactor: 0,
};

/** The club tyre with its force in the middle of the contact patch: no aligning moment. */
export const momentlessTyre = {
  ...clubTyreCoefficients,
  ...{ QDZ1: 0, QDZ2: 0, QDZ6: 0, QDZ7: 0, QDZ8: 0, QDZ9: 0, QDZ10: 0, QDZ11: 0 },
  ...{ SSZ1: 0, SSZ2: 0, SSZ3: 0, SSZ4: 0 },
};

/** An invented light car, rear-wheel drive. */
export const lightCar: HandlingCar = {
  sprungMass: 890,
  sprungHeight: 0.52,
  sprungFrontShare: 0.52,
  wheelbase: 2.4,
  yawInertia: 1500,
  rollInertia: 300,
  brakeFrontShare: 0.66,
  driveFrontShare: 0,
  dragFactor: 0.4,
  front: axle,
  rear: { ...axle, rollStiffness: 20e3, rollCentreHeight: 0.12 },
};

const anyDifferential: fc.Arbitrary<AxleDifferential> = fc.oneof(
  fc.constant({ kind: "open" as const }),
  fc.constant({ kind: "locked" as const }),
  fc.record({
    kind: fc.constant("limited-slip" as const),
    power: between(0.1, 0.7),
    overrun: between(0, 0.5),
  }),
);

const anyStops: fc.Arbitrary<WheelStops> = fc.record({
  bumpLeft: fc.record({ left: between(0.01, 0.06), right: between(0.01, 0.06) }),
  droopLeft: fc.record({ left: between(0.01, 0.08), right: between(0.01, 0.08) }),
  bumpStop: between(1e6, 20e6),
  droopStop: between(1e6, 40e6),
});

const withoutStops = fc.record({
  track: between(1.2, 1.8),
  rollStiffness: between(12e3, 80e3),
  rollCentreHeight: between(-0.05, 0.35),
  unsprungMass: between(30, 150),
  unsprungHeight: between(0.2, 0.35),
  tyre: fc.constant(clubTyreCoefficients),
  pressure: fc.record({ left: between(130e3, 280e3), right: between(130e3, 280e3) }),
  leftExcessLoad: between(-200, 200),
  camber: fc.record({ left: between(-0.06, 0.02), right: between(-0.06, 0.02) }),
  toe: fc.record({ left: between(-0.01, 0.01), right: between(-0.01, 0.01) }),
  independent: fc.boolean(),
  camberGain: between(-0.8, 0.1),
  toeGain: between(-0.1, 0.1),
  rollSteer: between(-0.2, 0.2),
  tyreRollStiffness: fc.oneof(fc.constant(Infinity), between(120e3, 350e3)),
  ownForceShare: between(0, 1),
  complianceSteer: between(-0.5e-6, 1.5e-6),
  differential: anyDifferential,
  wheelRate: between(12e3, 120e3),
  rollDamping: between(500, 10e3),
  downforceFactor: between(0, 0.5),
});

const anyAxle: fc.Arbitrary<HandlingAxle> = fc.oneof(
  withoutStops,
  fc.tuple(withoutStops, anyStops).map(([axle, stops]) => ({ ...axle, stops })),
);

/** Cars over a wide range, all able to stand on their springs. */
export const anyCar: fc.Arbitrary<HandlingCar> = fc.record({
  sprungMass: between(500, 1500),
  sprungHeight: between(0.35, 0.65),
  sprungFrontShare: between(0.38, 0.64),
  wheelbase: between(2, 3),
  yawInertia: between(600, 3000),
  rollInertia: between(100, 800),
  brakeFrontShare: between(0.5, 0.8),
  driveFrontShare: between(0, 1),
  dragFactor: between(0, 0.6),
  front: anyAxle,
  rear: anyAxle,
});

/** So many cars of those, spread evenly and the same for the same seed. */
export const someCars = (count: number, seed: number): HandlingCar[] =>
  fc.sample(fc.noBias(anyCar), { numRuns: count, seed });

/**
 * A car that is the same seen from the front and from behind: weight in the middle, equal axles, no
 * air, wheels that neither toe nor give way.
 */
export const neutralCar: HandlingCar = {
  ...lightCar,
  sprungFrontShare: 0.5,
  dragFactor: 0,
  front: { ...axle, complianceSteer: 0 },
  rear: { ...axle, complianceSteer: 0 },
};

import { beforeAll, describe, expect, it } from "vitest";
import { distributeLoadTransfer } from "../../lib/load/distribution.js";
import { type Mechanics, startMechanics } from "./mechanics.js";
import { type PinnedCar, pinnedTransfers } from "./pinned-car.js";

// MuJoCo 3 (mujoco-js 0.0.7, Apache-2.0), a general engine for jointed bodies: ms 1100 kg,
// a 1.2 m, b 1.4 m, wheel rates 45/40 N/mm, bars 12 000/4000 N·m/rad
const car: PinnedCar = {
  wheelbase: 2.6,
  sprungMass: 1100,
  sprungHeight: 0.48,
  sprungFrontShare: 1.4 / 2.6,
  front: {
    track: 1.5,
    rollStiffness: 0.5 * 45e3 * 1.5 ** 2 + 12e3,
    rollCentreHeight: 0.05,
    unsprungMass: 80,
    unsprungHeight: 0.3,
  },
  rear: {
    track: 1.48,
    rollStiffness: 0.5 * 40e3 * 1.48 ** 2 + 4e3,
    rollCentreHeight: 0.12,
    unsprungMass: 90,
    unsprungHeight: 0.3,
  },
};

const cases = [
  { g: 0.05, front: 101.936, rear: 94.44 },
  { g: 0.3, front: 611.58, rear: 566.61 },
  { g: 0.9, front: 1833.84, rear: 1699.12 },
];

let mechanics: Mechanics;
beforeAll(async () => {
  mechanics = await startMechanics();
});

const apart = (value: number, reference: number) => Math.abs(value / reference - 1);

describe("axles pinned at their roll centres, in a general engine", () => {
  for (const { g, front, rear } of cases) {
    it(`move at ${g} g what an earlier run of the engine and the formula say, within 0.1 %`, () => {
      const engine = pinnedTransfers(mechanics, car, g * 9.80665);
      const formula = distributeLoadTransfer(car, g * 9.80665);
      expect(apart(engine.front, front)).toBeLessThan(1e-3);
      expect(apart(engine.rear, rear)).toBeLessThan(1e-3);
      expect(apart(formula.front.total, engine.front)).toBeLessThan(1e-3);
      expect(apart(formula.rear.total, engine.rear)).toBeLessThan(1e-3);
    });
  }
});

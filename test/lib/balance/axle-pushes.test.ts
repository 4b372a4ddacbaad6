import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type PushingWheel,
  pushingWheel,
  shareOverAxle,
  type Tie,
} from "../../../lib/balance/axle-pushes.js";
import { slipForPush } from "../../../lib/balance/slip-for-push.js";
import { clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import { combinedForce61 } from "../../../lib/tyre/magic-formula-61-combined.js";
import {
  mostSlip,
  newWheel,
  type PreparedWheel,
  prepareWheel,
} from "../../../lib/tyre/prepared-wheel.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { between } from "../evenly.js";

const anyWheel = fc.record({
  coefficients: fc.constantFrom(clubTyreCoefficients, referenceTyreCoefficients),
  load: between(50, 8000),
  inclination: between(-0.05, 0.05),
  slipAngle: between(-0.25, 0.25),
  rolling: between(0.95, 1.05),
});
type Wheel = typeof anyWheel extends fc.Arbitrary<infer T> ? T : never;

const open: Tie = { underPower: 0, onOverrun: 0, engine: 0 };
const locked: Tie = { underPower: 1, onOverrun: 1, engine: 0 };
const limitedSlip: Tie = { underPower: 0.4, onOverrun: 0.3, engine: 600 };
const anyTie = fc.constantFrom(open, locked, limitedSlip);

function prepared({ coefficients, load, inclination }: Wheel): PreparedWheel {
  const wheel = newWheel();
  prepareWheel(wheel, coefficients, load, 200e3, inclination);
  return wheel;
}

function atWork(one: Wheel): PushingWheel {
  const wheel = pushingWheel(prepared(one));
  wheel.tanAlpha = Math.tan(one.slipAngle);
  wheel.rolling = one.rolling;
  return wheel;
}

/** What a wheel gives along its plane with a slip, N, by the published formula and not the prepared one. */
const given = ({ coefficients, load, inclination, slipAngle }: Wheel, slip: number) =>
  load === 0
    ? 0
    : combinedForce61(coefficients, slip, slipAngle, load, 200e3, inclination).longitudinal;

/** What a wheel can give at its slip angle, N: at the slip where it pushes most straight ahead. */
const most = (one: Wheel, side: 1 | -1) =>
  Math.max(0, side * given(one, side * mostSlip(prepared(one))));

const isAtMost = (one: Wheel, slip: number) => Math.abs(slip) > mostSlip(prepared(one)) - 1e-9;

function shared(left: Wheel, right: Wheel, push: number, tie: Tie) {
  const wheels = [atWork(left), atWork(right)] as const;
  shareOverAxle(wheels[0], wheels[1], push, tie);
  const [slipLeft, slipRight] = [wheels[0].slip, wheels[1].slip];
  return {
    left: given(left, slipLeft),
    right: given(right, slipRight),
    turnsLeft: left.rolling * (1 + slipLeft),
    turnsRight: right.rolling * (1 + slipRight),
    slipLeft,
    slipRight,
  };
}

test("a slip is found for every push a wheel can give, and no wheel spins or locks", () => {
  fc.assert(
    fc.property(anyWheel, between(-1, 1), between(-0.3, 0.3), (one, share, start) => {
      const side = share < 0 ? -1 : 1;
      const wanted = Math.abs(share) * side * most(one, side) * 0.999;
      const wheel = { ...atWork(one), slip: start };
      wheel.mostSlip = mostSlip(wheel.wheel);
      slipForPush(wheel, wanted);
      const { slip } = wheel;
      expect(Math.abs(slip)).toBeLessThanOrEqual(wheel.mostSlip);
      expect(given(one, slip)).toBeCloseTo(wanted, 4);
    }),
  );
});

test("a wheel in the air gives no push, whatever is asked", () => {
  fc.assert(
    fc.property(anyWheel, anyTie, between(-3000, 3000), (one, tie, push) => {
      const { left } = shared({ ...one, load: 0 }, one, push, tie);
      expect(Math.abs(left)).toBe(0);
    }),
    { numRuns: 50 },
  );
});

test("an open differential gives both wheels the same, at most twice what the weaker has", () => {
  fc.assert(
    fc.property(anyWheel, anyWheel, between(0, 12e3), (one, other, push) => {
      const { left, right } = shared(one, other, push, open);
      expect(left).toBeCloseTo(right, 4);
      const weaker = Math.min(most(one, 1), most(other, 1));
      expect(left + right).toBeLessThanOrEqual(2 * weaker + 1e-4);
      expect(left + right).toBeLessThanOrEqual(push + 1e-4);
    }),
  );
});

test("a locked one turns both equally fast where neither is at its most", () => {
  let free = 0;
  fc.assert(
    fc.property(anyWheel, anyWheel, between(-4000, 4000), (one, other, push) => {
      const { turnsLeft, turnsRight, slipLeft, slipRight } = shared(one, other, push, locked);
      if (isAtMost(one, slipLeft) || isAtMost(other, slipRight)) return;
      free++;
      expect(turnsLeft).toBeCloseTo(turnsRight, 8);
    }),
    { numRuns: 300 },
  );
  expect(free).toBeGreaterThan(200);
});

test("a limited-slip one moves push from the faster to the slower wheel, as far as its lock goes", () => {
  let all = 0;
  let alike = 0;
  fc.assert(
    fc.property(anyWheel, anyWheel, between(100, 4000), (one, other, push) => {
      const is = shared(one, other, push, limitedSlip);
      const apart = (is.left - is.right) / (is.left + is.right);
      expect(Math.abs(apart)).toBeLessThan(0.4 + 1e-6);
      const faster = is.turnsLeft - is.turnsRight;
      if (Math.abs(faster) < 1e-7) alike++;
      else if (!isAtMost(one, is.slipLeft) && !isAtMost(other, is.slipRight)) {
        all++;
        expect(apart).toBeCloseTo(faster > 0 ? -0.4 : 0.4, 3);
      }
    }),
    { numRuns: 300 },
  );
  expect(Math.min(all, alike)).toBeGreaterThan(10);
});

test("a lock moves push from one wheel to the other, the sum is what the easing leaves", () => {
  // x/(1 + (x/m)⁶)^⅙, written anew: near x while it is small, never above m
  const eased = (x: number, m: number) => x / (1 + (x / m) ** 6) ** (1 / 6);
  const lockOf = { open: 0, limited: 0.4 };
  fc.assert(
    fc.property(anyWheel, anyWheel, between(10, 9000), (one, other, push) => {
      const [a, b] = [most(one, 1), most(other, 1)];
      if (Math.min(a, b) < 1) return;
      for (const [tie, lock] of [
        [open, lockOf.open],
        [limitedSlip, lockOf.limited],
      ] as const) {
        const { left, right } = shared(one, other, push, tie);
        const can = Math.min(a + b, (2 / (1 - lock)) * Math.min(a, b));
        expect(left + right).toBeCloseTo(eased(push, can), 3);
      }
    }),
  );
});

test("brakes ask half of each wheel, and none is asked for more than it has at its slip angle", () => {
  fc.assert(
    fc.property(anyWheel, anyWheel, between(0, 12e3), (one, other, braking) => {
      const { left, right } = shared(one, other, -braking, open);
      expect(left).toBeGreaterThanOrEqual(-Math.min(braking / 2, most(one, -1)) - 1e-4);
      expect(right).toBeGreaterThanOrEqual(-Math.min(braking / 2, most(other, -1)) - 1e-4);
      if (braking < 0.5 * Math.min(most(one, -1), most(other, -1)))
        expect(left + right).toBeCloseTo(-braking, 0);
    }),
  );
});

test("on the overrun only what the engine brakes with is moved by a limited-slip differential", () => {
  fc.assert(
    fc.property(anyWheel, anyWheel, between(1200, 5000), (one, other, braking) => {
      const free = shared(one, other, -braking, open);
      const tied = shared(one, other, -braking, limitedSlip);
      expect(tied.left + tied.right).toBeCloseTo(free.left + free.right, 3);
      expect(Math.abs(tied.left - free.left)).toBeLessThan(0.5 * 0.3 * 600 + 1e-4); // ½·lock·engine
    }),
  );
});

test("nothing jumps when a wheel loses its load, or when braking turns to driving", () => {
  fc.assert(
    fc.property(anyWheel, anyTie, between(-3000, 3000), (one, tie, push) => {
      const right = { ...one, load: 3000 };
      const sum = (load: number, asked: number) => {
        const is = shared({ ...one, load }, right, asked, tie);
        return is.left + is.right;
      };
      expect(Math.abs(sum(0.01, push) - sum(0, push))).toBeLessThan(1);
      expect(Math.abs(sum(1000, 0.01) - sum(1000, -0.01))).toBeLessThan(0.1);
    }),
  );
});

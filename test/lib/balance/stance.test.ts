import fc from "fast-check";
import { expect, test } from "vitest";
import {
  axleMasses,
  carMass,
  centreOfGravityHeight,
  type HandlingCar,
} from "../../../lib/balance/handling-car.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { type RoadDemand, type Stance, stanceFinder } from "../../../lib/balance/stance.js";
import { stanceInTurn, tipsOverAt } from "../../../lib/balance/stance-in-turn.js";
import { stopForce } from "../../../lib/balance/stops.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { between } from "../evenly.js";
import { anyCar, lightCar } from "./cars.js";

const gravity = 9.80665;
const ends = ["front", "rear"] as const;
const anyDemand = fc.record({
  forward: between(-8, 4),
  left: between(0, 13),
  pressed: between(8, 13),
  speedSquared: between(25, 2500),
});
const ofFour = ({ front, rear }: Stance, of: (load: number) => number = (load) => load) =>
  of(front.left.load) + of(front.right.load) + of(rear.left.load) + of(rear.right.load);

/** The demand scaled down until a car stands on at least three wheels. */
function standing(car: HandlingCar, demand: RoadDemand, jerk = 0): [RoadDemand, Stance] {
  const find = stanceFinder(car, jerk);
  let { left } = demand;
  while (find({ ...demand, left }).tips && left > 0.01) left *= 0.8;
  const held = { ...demand, left };
  return [held, find(held)];
}

test("the wheels together carry weight and downforce, none less than nothing", () => {
  fc.assert(
    fc.property(anyCar, anyDemand, between(-20, 20), (car, demand, jerk) => {
      const [{ pressed, speedSquared }, stance] = standing(car, demand, jerk);
      const down = (car.front.downforceFactor + car.rear.downforceFactor) * speedSquared;
      expect(ofFour(stance) / (carMass(car) * pressed + down)).toBeCloseTo(1, 9);
      for (const end of ends)
        expect(Math.min(stance[end].left.load, stance[end].right.load)).toBeGreaterThanOrEqual(0);
    }),
  );
});

test("axle loads balance the moments of weight, thrust and downforce along the car", () => {
  fc.assert(
    fc.property(anyCar, anyDemand, (car, demand) => {
      const [{ forward, pressed, speedSquared }, { front }] = standing(car, demand);
      const load = axleMasses(car).front * pressed + car.front.downforceFactor * speedSquared;
      const moved = (carMass(car) * forward * centreOfGravityHeight(car)) / car.wheelbase;
      if (load < moved) return; // the nose is in the air
      expect(front.left.load + front.right.load).toBeCloseTo(load - moved, 6);
    }),
  );
});

/** rad that both wheels of an axle lean on average as their own weight does. */
const ownLean = (share: number, body: number, axle: number) => (1 - share) * body + share * axle;

test("across the car, what the tyres move is m·a·h and the weight that leans; with a wheel up too", () => {
  let lifted = 0;
  fc.assert(
    fc.property(anyCar, anyDemand, between(-20, 20), (car, demand, jerk) => {
      const [{ left }, stance] = standing(car, demand, jerk);
      if (stance.tips) return;
      if (ends.some((end) => stance[end].right.load < 1e-9)) return; // dampers lift the outer one
      if (stance.front.lifted || stance.rear.lifted) lifted++;
      let moved = 0;
      let leans = 0;
      let rises = 0;
      for (const end of ends) {
        const axle = car[end];
        const { roll, suspensionRoll } = stance[end];
        const sprung =
          car.sprungMass * (end === "front" ? car.sprungFrontShare : 1 - car.sprungFrontShare);
        const onTyres = roll - suspensionRoll;
        const lean = ownLean(axle.ownForceShare ?? 1, roll, onTyres);
        const load = stance[end].left.load + stance[end].right.load;
        const atRest = Math.min(load, Math.max(0, load / 2 + axle.leftExcessLoad));
        const tyres = (atRest - stance[end].left.load) * axle.track;
        moved += tyres;
        if (stance[end].lifted) {
          // about its outer tyre the axle goes up, and side force gets the longer lever
          const up = onTyres - tyres / (axle.tyreRollStiffness ?? Infinity);
          rises += (sprung + axle.unsprungMass) * (axle.track / 2) * up * left;
        }
        leans += sprung * (car.sprungHeight - axle.rollCentreHeight) * roll;
        leans += sprung * axle.rollCentreHeight * onTyres;
        leans += axle.unsprungMass * axle.unsprungHeight * lean;
      }
      const turn = carMass(car) * left * centreOfGravityHeight(car);
      const missing = moved - turn - gravity * leans - rises;
      expect(missing / (carMass(car) * gravity)).toBeCloseTo(0, 8);
    }),
    { numRuns: 300 },
  );
  expect(lifted).toBeGreaterThan(20);
});

test("between body and axle springs, dampers and stops hold what the tyres do not get from elsewhere", () => {
  // axle: T = K·ψ + E + ms·h_rc·(B + g·φt) + s·mu·hu·(B + g·λ), by hand from the free axle;
  // springs that press along a leaning body put ms·g·h_rc·ψ of its weight on independent links too
  fc.assert(
    fc.property(anyCar, anyDemand, (car, demand) => {
      const [{ left, pressed, speedSquared, forward }, stance] = standing(car, demand);
      if (stance.tips) return;
      const shift = (carMass(car) * forward * centreOfGravityHeight(car)) / car.wheelbase;
      for (const end of ends) {
        const axle = car[end];
        const at = stance[end];
        const load = at.left.load + at.right.load;
        const free =
          axleMasses(car)[end] * pressed +
          axle.downforceFactor * speedSquared +
          (end === "front" ? -shift : shift);
        if (Math.abs(free - load) > 1e-6) return; // nose or tail in the air
        const push = (side: "left" | "right") =>
          axle.stops === undefined
            ? 0
            : stopForce(
                at[side].travel,
                axle.stops.bumpLeft[side],
                axle.stops.droopLeft[side],
                axle.stops,
              );
        const stops = ((push("right") - push("left")) * axle.track) / 2;
        const onTyres = at.roll - at.suspensionRoll;
        const sprung =
          car.sprungMass * (end === "front" ? car.sprungFrontShare : 1 - car.sprungFrontShare);
        const share = axle.ownForceShare ?? 1;
        if (at.lifted) return;
        const onLinks = axle.independent ? gravity * sprung * axle.rollCentreHeight : 0;
        const moment =
          (axle.rollStiffness + onLinks) * at.suspensionRoll +
          stops +
          sprung * axle.rollCentreHeight * (left + gravity * onTyres) +
          share *
            axle.unsprungMass *
            axle.unsprungHeight *
            (left + gravity * ownLean(share, at.roll, onTyres));
        const atRest = Math.min(load, Math.max(0, load / 2 + axle.leftExcessLoad));
        const tyres = (atRest - at.left.load) * axle.track;
        expect((tyres - moment) / (load * axle.track)).toBeCloseTo(0, 6);
        const heave = (at.left.travel + at.right.travel) / 2;
        const pushed = 2 * axle.wheelRate * heave + push("left") + push("right");
        expect((pushed - (load - axleMasses(car)[end] * gravity)) / load).toBeCloseTo(0, 6);
      }
    }),
  );
});

test("on stiff tyres, without air and on even sides it is the sharing of the textbook, four wheels down", () => {
  const plain = (axle: HandlingCar["front"]): HandlingCar["front"] => {
    const { stops: _, ...rest } = axle;
    const even = { leftExcessLoad: 0, downforceFactor: 0 };
    return { ...rest, ...even, tyreRollStiffness: Infinity, ownForceShare: 1 };
  };
  fc.assert(
    fc.property(anyCar, between(0, 9), (any, ay) => {
      const car = { ...any, front: plain(any.front), rear: plain(any.rear), dragFactor: 0 };
      const textbook = distributeLoadTransfer(car, ay); // tested against Milliken 1995, ch. 18
      const stance = stanceInTurn(car, { speed: 25 }, ay);
      expect(stance.tips).toBe(textbook.tipped);
      if (textbook.front.lifted || textbook.rear.lifted) return; // there its axle rolls on one tyre
      for (const end of ends) {
        expect(stance[end].left.load).toBeCloseTo(textbook[end].load.left, 5);
        expect(stance[end].roll).toBeCloseTo(textbook.rollAngle[end], 9);
      }
    }),
  );
});

test("dampers hold the body back while it rolls in, and its rolling moves load where they are stiff", () => {
  const damped = {
    ...lightCar,
    front: { ...lightCar.front, rollDamping: 6000 },
    rear: { ...lightCar.rear, rollDamping: 500 },
  };
  const demand = { forward: 0, left: 5, pressed: gravity, speedSquared: 600 };
  const loads = (jerk: number) => {
    const { front, rear } = stanceFinder(damped, jerk)(demand);
    return { roll: front.roll, front: front.right.load, rear: rear.right.load };
  };
  const [settled, rolling, back] = [loads(0), loads(15), loads(-15)];
  expect(rolling.roll).toBeLessThan(settled.roll);
  expect(rolling.front).toBeGreaterThan(settled.front + 50);
  expect(rolling.rear).toBeLessThan(settled.rear - 20);
  expect(settled.front - back.front).toBeCloseTo(rolling.front - settled.front, 6);
});

test("the body that dampers hold back lags by the time its damping and stiffness make", () => {
  // stiff tyres, both axles alike: φ(t) = gain·(ay − jerk·C/K'), by hand from K'φ + Cφ̇ = ms·d·ay;
  // the lean that is missing weighs ms·g·d·φ, which K' = K − ms·g·d already has
  const axle = {
    ...lightCar.front,
    rollCentreHeight: 0,
    unsprungHeight: 0,
    ownForceShare: 1,
    tyreRollStiffness: Infinity,
  };
  const car = { ...lightCar, sprungFrontShare: 0.5, front: axle, rear: axle };
  const demand = { forward: 0, left: 5, pressed: gravity, speedSquared: 600 };
  const lever = 890 * 0.52;
  const stiffness = 2 * 30e3 - lever * gravity;
  const { front } = stanceFinder(car, 12)(demand);
  const expected = (lever * (5 - (12 * 2 * 3000) / stiffness)) / stiffness;
  expect(front.roll).toBeCloseTo(expected, 9);
});

test("a lifted inner wheel carries nothing, and more turn goes to the other axle", () => {
  const car = { ...lightCar, rear: { ...lightCar.rear, rollStiffness: 150e3 }, sprungHeight: 0.6 };
  const at = (ay: number) => structuredClone(stanceInTurn(car, { speed: 25 }, ay));
  const [less, more] = [at(9), at(9.5)];
  expect([less.rear.lifted, less.front.lifted]).toEqual([true, false]);
  expect(less.rear.left.load).toBe(0);
  expect(more.rear.right.load).toBeCloseTo(less.rear.right.load, 9);
  const height = centreOfGravityHeight(car);
  const least = (carMass(car) * height * 0.5) / 1.45; // N of transfer, without what leans more
  expect(more.front.right.load - less.front.right.load).toBeGreaterThan(least);
});

test("loads have no jump where a wheel leaves the ground", () => {
  fc.assert(
    fc.property(anyCar, between(0, 6), (car, from) => {
      const most = Math.min(14, tipsOverAt(car, { speed: 25 }));
      let jump = 0;
      let before = structuredClone(stanceInTurn(car, { speed: 25 }, from));
      for (let ay = from + 0.1; ay < most; ay += 0.1) {
        const now = stanceInTurn(car, { speed: 25 }, ay);
        for (const end of ends)
          jump = Math.max(jump, Math.abs(now[end].right.load - before[end].right.load));
        before = structuredClone(now);
      }
      expect(jump / (carMass(car) * gravity)).toBeLessThan(0.05);
    }),
    { numRuns: 40 },
  );
});

test("a car stands up to the turn at which it tips over", () => {
  fc.assert(
    fc.property(anyCar, (any) => {
      const car = { ...any, sprungHeight: any.sprungHeight + 0.2 };
      const most = tipsOverAt(car, { speed: 25 });
      expect(stanceInTurn(car, { speed: 25 }, most - 1e-6).tips).toBe(false);
    }),
    { numRuns: 50 },
  );
});

test("on stiff springs and tyres a car tips at half its track over its height", () => {
  const axle = {
    ...lightCar.front,
    rollStiffness: 1e9,
    tyreRollStiffness: Infinity,
    rollCentreHeight: 0.3,
    unsprungMass: 0,
    independent: false, // on links of its own the side force at the outer wheels lifts the body too
  };
  const tall = { ...lightCar, sprungHeight: 0.8, front: axle, rear: axle };
  expect(tipsOverAt(tall, { speed: 25 })).toBeCloseTo((1.45 / 1.6) * gravity, 3); // NHTSA, T/(2h)
  const soft = { ...tall, front: { ...axle, tyreRollStiffness: 200e3 } };
  expect(tipsOverAt({ ...soft, rear: soft.front }, { speed: 25 })).toBeLessThan(
    (1.45 / 1.6) * gravity * 0.99,
  );
});

test("a car with its sides exchanged stands in a left turn as the other does in a right turn", () => {
  // straight ahead there is no turn to tell them apart
  fc.assert(
    fc.property(anyCar, (car) => {
      const demand = { forward: -2, left: 0, pressed: gravity, speedSquared: 400 };
      const [as, mirrored] = [stanceFinder(car)(demand), stanceFinder(mirrorCar(car))(demand)];
      for (const end of ends) {
        expect(as[end].left.load).toBeCloseTo(mirrored[end].right.load, 6);
        expect(as[end].left.inclination).toBeCloseTo(-mirrored[end].right.inclination, 9);
        expect(as[end].left.points).toBeCloseTo(-mirrored[end].right.points, 9);
        expect(as[end].left.travel).toBeCloseTo(mirrored[end].right.travel, 9);
      }
    }),
  );
});

test("two mirrors give the car back", () => {
  fc.assert(
    fc.property(anyCar, (car) => {
      expect(mirrorCar(mirrorCar(car))).toEqual(car);
    }),
  );
});

test("a car that cannot stand is refused", () => {
  const soft = (end: "front" | "rear") => ({ ...lightCar[end], rollStiffness: 100 });
  const car = { ...lightCar, front: soft("front"), rear: soft("rear") };
  expect(() => stanceFinder(car)).toThrow(RangeError);
});

test("a car that the air lifts off the road presses on it with no wheel", () => {
  const lifting = (end: "front" | "rear") => ({ ...lightCar[end], downforceFactor: -1 });
  const car = { ...lightCar, front: lifting("front"), rear: lifting("rear") };
  const stance = stanceFinder(car)({
    forward: 0,
    left: 3,
    pressed: gravity,
    speedSquared: 120 ** 2,
  });
  expect(ofFour(stance)).toBe(0); // by hand: 2·120² N of lift are nearly three times its weight
});

test("wheels pressed against their stops farther than a number can tell apart stand in finite numbers", () => {
  const endless = { left: Infinity, right: Infinity };
  const car: HandlingCar = {
    ...lightCar,
    sprungMass: 813.5779912117869,
    sprungHeight: 1.2394718030473102,
    sprungFrontShare: 0.7750299455861068,
    wheelbase: 3.5046167792752385,
    torsionStiffness: 1476293.323359956,
    front: {
      ...lightCar.front,
      ...{ track: 1.0288000601343812, rollStiffness: 242968.28701404048 },
      ...{ tyreRollStiffness: 125253.2328650227, ownForceShare: 1, wheelRate: 392922.1710270634 },
      ...{ rollCentreHeight: 0.26614325032569464, unsprungMass: 400, independent: false },
      ...{ unsprungHeight: 0.3217052018968388, leftExcessLoad: 3253.096725383455 },
      downforceFactor: 2.8125539077445865,
      stops: {
        bumpLeft: { left: -0.045623817233614576, right: -0.0813947294664468 },
        droopLeft: endless,
        ...{ bumpStop: 5e6, droopStop: 5e6 },
      },
    },
    rear: {
      ...lightCar.rear,
      ...{ track: 1.1071282711811365, rollStiffness: 1750.7002078715575 },
      ...{ tyreRollStiffness: 121781.68175932016, ownForceShare: 1, wheelRate: 1656.348194072618 },
      ...{
        rollCentreHeight: 0.287207140866667,
        unsprungMass: 173.5775467264466,
        independent: false,
      },
      ...{ unsprungHeight: 0.38639269445557145, leftExcessLoad: 1144.8522104163674 },
      downforceFactor: 0.24529368407092988,
      stops: {
        bumpLeft: { left: 0.2517888428125454, right: 0.21162994143947866 },
        droopLeft: { left: 0.18786635699505752, right: 0.22802525836812426 },
        ...{ bumpStop: 5e6, droopStop: 518613810.0623386 },
      },
    },
  };
  const asked = { forward: -7.0483338288969755, pressed: gravity, speedSquared: 9.670821561751122 };
  const { front, rear } = stanceFinder(car)({ ...asked, left: 2.7087367066365275 });
  for (const { left, right, roll } of [front, rear])
    for (const number of [roll, left.travel, right.travel, left.load, right.load])
      expect(number).toSatisfy(Number.isFinite);
});

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  axleDistances,
  axleMasses,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../../../lib/balance/handling-car.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { trim } from "../../../lib/balance/trim.js";
import { rollEquilibrium } from "../../../lib/load/roll-equilibrium.js";
import { drive, straightAhead } from "../../../lib/transient/drive.js";
import { linearStepSteer } from "../../../lib/transient/linear-car.js";
import {
  type Happening,
  type MovingState,
  whatHappens,
} from "../../../lib/transient/moving-car.js";
import { totalTransfer } from "../../../lib/transient/moving-loads.js";
import { stepSteer } from "../../../lib/transient/step-steer.js";
import { corneringStiffness61 } from "../../../lib/tyre/magic-formula-61-side.js";
import { anyCar, lightCar } from "../balance/cars.js";
import { withoutTrail } from "../balance/without-trail.js";
import { between } from "../evenly.js";

const gravity = 9.80665;
const anyState = fc.record({
  lateralSpeed: between(-2, 2),
  yawRate: between(-0.6, 0.6),
  rollAngle: between(-0.05, 0.05),
  rollRate: between(-0.5, 0.5),
  sideForce: fc.record({ front: between(-6000, 6000), rear: between(-6000, 6000) }),
});

/** What the axles of `anyCar` leave out: tyres that give, and wheels that keep some of their own force. */
const onTyres = fc.record({
  tyreRollStiffness: between(80e3, 400e3),
  ownForceShare: between(-0.2, 1.2),
});
const anyCarOnTyres = fc.tuple(anyCar, onTyres, onTyres).map(
  ([car, front, rear]): HandlingCar => ({
    ...car,
    front: { ...car.front, ...front },
    rear: { ...car.rear, ...rear },
  }),
);

/** Masses of both ends, and how far out and how fast they are. */
function endsOf(car: HandlingCar, { tyreAngle, ...now }: Happening, state: MovingState) {
  const at = axleDistances(car);
  const sprungFront = car.sprungMass * car.sprungFrontShare;
  const end = (name: "front" | "rear", x: number, sprung: number) => {
    const axle = car[name];
    const { ownForceShare: kept = 1, rollCentreHeight, unsprungHeight } = axle;
    const ay = now.lateralAcceleration + x * now.yawAcceleration;
    return {
      sprung,
      unsprung: axle.unsprungMass,
      arm: car.sprungHeight - rollCentreHeight,
      axle,
      ay,
      wheels: ay - (1 - kept) * unsprungHeight * now.rollAcceleration,
      out:
        (car.sprungHeight - rollCentreHeight) * state.rollAngle +
        rollCentreHeight * tyreAngle[name],
      lean: (1 - kept) * state.rollAngle + kept * tyreAngle[name],
      sideForce: state.sideForce[name],
    };
  };
  return [end("front", at.front, sprungFront), end("rear", -at.rear, car.sprungMass - sprungFront)];
}

test("the overturning moment of all parts is that of the masses in motion", () => {
  fc.assert(
    fc.property(anyCarOnTyres, anyState, (car, state) => {
      const now = whatHappens(car, 25, 0.02, state);
      const ends = endsOf(car, now, state);
      // each end: ms·(ay − d·φ̈)·d and mu·aw·hu, both masses' weight out of the middle, less Ix·φ̈
      const masses = ends.reduce((sum, end) => {
        const { sprung, unsprung, arm, ay, wheels, out, lean, axle } = end;
        const body = sprung * ((ay - arm * now.rollAcceleration) * arm + gravity * out);
        return sum + body + unsprung * axle.unsprungHeight * (wheels + gravity * lean);
      }, -car.rollInertia * now.rollAcceleration);
      // and the link forces at the roll centres, which the body passes down
      const links = ends.reduce(
        (sum, { sideForce, unsprung, wheels, axle }) =>
          sum + (sideForce - unsprung * wheels) * axle.rollCentreHeight,
        0,
      );
      const moved =
        totalTransfer(now.transfer.front) * car.front.track +
        totalTransfer(now.transfer.rear) * car.rear.track;
      expect((moved - masses - links) / (carMass(car) * gravity)).toBeCloseTo(0, 9);
    }),
  );
});

test("side forces are mass times acceleration, body and wheels together", () => {
  fc.assert(
    fc.property(anyCarOnTyres, anyState, (car, state) => {
      const now = whatHappens(car, 25, 0.02, state);
      // of the body at its centre of gravity; the wheels' masses balance about the car's middle
      const momentum = endsOf(car, now, state).reduce(
        (sum, { sprung, unsprung, arm, ay, wheels }) =>
          sum + sprung * (ay - arm * now.rollAcceleration) + unsprung * wheels,
        0,
      );
      const force = state.sideForce.front + state.sideForce.rear;
      expect((force - momentum) / (carMass(car) * gravity)).toBeCloseTo(0, 9);
    }),
  );
});

test("tyres under links, dampers and springs give as much as they are stiff", () => {
  fc.assert(
    fc.property(anyCarOnTyres, anyState, (car, state) => {
      const { transfer, tyreAngle } = whatHappens(car, 25, 0.02, state);
      for (const end of ["front", "rear"] as const) {
        const { track, tyreRollStiffness = NaN } = car[end];
        const moment = totalTransfer(transfer[end]) * track;
        expect(moment / (tyreRollStiffness * tyreAngle[end])).toBeCloseTo(1, 6);
      }
    }),
  );
});

test("a turn that lasts stands on springs and tyres as the steady balance of roll has it", () => {
  fc.assert(
    fc.property(anyCarOnTyres, between(0.5, 6), (car, ay) => {
      const steady = rollEquilibrium(car, ay);
      fc.pre(steady !== undefined && steady.body.front < 0.3);
      const firm = { ...car, front: withoutTrail(car.front), rear: withoutTrail(car.rear) };
      const masses = axleMasses(car);
      const state = {
        ...straightAhead,
        rollAngle: steady.body.front,
        sideForce: { front: masses.front * ay, rear: masses.rear * ay },
      };
      const now = whatHappens(firm, 25, 0.02, state);
      expect(now.rollAcceleration).toBeCloseTo(0, 7);
      expect(now.lateralAcceleration).toBeCloseTo(ay, 9);
      for (const end of ["front", "rear"] as const) {
        expect(now.tyreAngle[end]).toBeCloseTo(steady.tyres[end], 9);
        const moved = totalTransfer(now.transfer[end]) * car[end].track;
        expect(moved).toBeCloseTo(steady.moment[end], 4);
      }
    }),
  );
});

test("loads of each axle always sum to its weight and downforce, none below zero", () => {
  fc.assert(
    fc.property(anyCar, anyState, (car, state) => {
      const { load } = whatHappens(car, 25, 0.02, state);
      const sum = load.front.left + load.front.right + load.rear.left + load.rear.right;
      const air = (car.front.downforceFactor + car.rear.downforceFactor) * 25 ** 2;
      expect(sum / (carMass(car) * gravity + air)).toBeCloseTo(1, 9);
      for (const one of [load.front.left, load.front.right, load.rear.left, load.rear.right])
        expect(one).toBeGreaterThanOrEqual(0);
    }),
  );
});

/** A car whose tyres stay upright, whose body hardly rolls, and whose loads hardly matter. */
function simple(car: HandlingCar): HandlingCar {
  const axle = (one: HandlingAxle): HandlingAxle => ({
    ...withoutTrail(one),
    rollStiffness: 5e6,
    rollDamping: 1e5,
    camber: { left: 0, right: 0 },
    toe: { left: 0, right: 0 },
    leftExcessLoad: 0,
  });
  return { ...car, front: axle(car.front), rear: axle(car.rear) };
}

test("a small step of a stiff car follows the closed form of the linear car", () => {
  const car = simple(lightCar);
  const at = axleDistances(car);
  const speed = 30;
  const both = (end: "front" | "rear", arm: number) => {
    const load = (carMass(car) * gravity * arm) / car.wheelbase / 2;
    return 2 * corneringStiffness61(car[end].tyre, load, 200e3, 0);
  };
  const linear = {
    mass: carMass(car),
    yawInertia: car.yawInertia,
    distance: at,
    corneringStiffness: { front: both("front", at.rear), rear: both("rear", at.front) },
    speed,
  };
  const steer = 1e-3;
  const moments = drive(car, {
    speed,
    duration: 1.5,
    steer: () => steer,
    relaxationLength: 0.02,
    step: 5e-4,
  });
  for (const time of [0.1, 0.2, 0.4, 0.8, 1.5]) {
    const moment = moments[Math.round(time / 5e-4)];
    const exact = linearStepSteer(linear, steer, time);
    expect((moment?.yawRate ?? 0) / exact.yawRate).toBeCloseTo(1, 1.7);
    expect((moment?.lateralSpeed ?? 0) / speed / exact.sideSlip).toBeGreaterThan(0.9);
  }
  const end = moments.at(-1);
  expect((end?.yawRate ?? 0) / linearStepSteer(linear, steer, 1.5).yawRate).toBeCloseTo(1, 2);
});

test("after a while a step of steering is the steady turn of the four-wheel car", () => {
  const car = { ...lightCar, dragFactor: 0 };
  const { moments } = stepSteer(car, { speed: 25, lateralAcceleration: 5 });
  const end = moments.at(-1);
  const steady = trim(car, { speed: 25 }, 5);
  expect((end?.yawRate ?? 0) / (steady?.yawRate ?? NaN)).toBeCloseTo(1, 1.7);
  expect((end?.rollAngle ?? 0) / (steady?.rollAngle.front ?? NaN)).toBeCloseTo(1, 1.7);
  expect(end?.load.front.right).toBeCloseTo(steady?.wheels.front.right.load ?? NaN, -2);
});

test("load comes through the links at once, through dampers while it rolls, through springs at last", () => {
  const { moments } = stepSteer(lightCar, { speed: 25, lateralAcceleration: 5 });
  const parts = (time: number) => moments[Math.round(time / 0.005)]?.transfer.front;
  const [early, late] = [parts(0.16), parts(3)];
  expect(early?.geometric ?? 0).toBeGreaterThan(early?.elastic ?? 0);
  expect(early?.damper ?? 0).toBeGreaterThan(early?.elastic ?? 0);
  expect(Math.abs(late?.damper ?? 1)).toBeLessThan(1);
  expect(late?.elastic ?? 0).toBeGreaterThan(5 * (late?.geometric ?? 0));
});

test("dampers move load early and change nothing in the end", () => {
  const damped = { ...lightCar, front: { ...lightCar.front, rollDamping: 6000 } };
  const [soft, hard] = [stepSteer(lightCar), stepSteer(damped)];
  const front = (result: typeof soft, time: number) => {
    const moment = result.moments[Math.round(time / 0.005)];
    return moment ? totalTransfer(moment.transfer.front) : NaN;
  };
  expect(front(hard, 0.25)).toBeGreaterThan(front(soft, 0.25) + 20);
  expect(Math.abs(front(hard, 3) - front(soft, 3))).toBeLessThan(2);
});

test("a body let go swings back less far with more damping", () => {
  const swing = [500, 1000, 2000].map((rollDamping) => {
    const axle = (one: HandlingAxle) => ({ ...one, rollDamping });
    const car = { ...lightCar, front: axle(lightCar.front), rear: axle(lightCar.rear) };
    const leaning = { ...straightAhead, rollAngle: 0.04 };
    const moments = drive(car, { speed: 10, duration: 1.5, steer: () => 0 }, leaning);
    return -Math.min(...moments.map((moment) => moment.rollAngle));
  });
  expect(swing[2]).toBeGreaterThan(0);
  expect(swing).toEqual([...swing].sort((a, b) => b - a));
});

test("figures of a light car lie where passenger cars do", () => {
  // from memory: yaw response time 0.1–0.4 s at 100 km/h, overshoot below 30 %
  const { yawRate, lateralAcceleration, tbFactor } = stepSteer(lightCar);
  expect(yawRate.responseTime).toBeGreaterThan(0.05);
  expect(yawRate.responseTime).toBeLessThan(0.4);
  expect(yawRate.overshoot).toBeLessThan(0.3);
  expect(lateralAcceleration.responseTime).toBeGreaterThan(yawRate.responseTime);
  expect(tbFactor).toBeGreaterThan(0);
});

test("steering to the right is the mirror of steering to the left", () => {
  fc.assert(
    fc.property(anyCar, (car) => {
      const steer = () => 0.01;
      const left = drive(car, { speed: 25, duration: 0.5, steer }).at(-1);
      const right = drive(mirrorCar(car), { speed: 25, duration: 0.5, steer: () => -0.01 }).at(-1);
      expect(right?.yawRate).toBeCloseTo(-(left?.yawRate ?? NaN), 9);
      expect(right?.rollAngle).toBeCloseTo(-(left?.rollAngle ?? NaN), 9);
    }),
    { numRuns: 20 },
  );
});

test("no drive of any car ends in something that is not a number", () => {
  fc.assert(
    fc.property(anyCar, between(-0.3, 0.3), between(5, 60), (car, angle, speed) => {
      const end = drive(car, { speed, duration: 2, steer: () => angle }).at(-1);
      for (const value of [end?.yawRate, end?.rollAngle, end?.lateralAcceleration])
        expect(Number.isFinite(value)).toBe(true);
    }),
    { numRuns: 40 },
  );
});

test("a turn that the car cannot hold is refused", () => {
  expect(() => stepSteer(lightCar, { lateralAcceleration: 20 })).toThrow(RangeError);
  expect(() => drive(lightCar, { speed: 25, duration: 1, steer: () => 0, step: 1 })).toThrow(
    "step",
  );
});

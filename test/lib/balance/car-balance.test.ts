import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import {
  carMass,
  centreOfGravityHeight,
  type HandlingAxle,
  type HandlingCar,
} from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { heldOf } from "../../../lib/balance/held-numbers.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { phases } from "../../../lib/balance/phases.js";
import { trim } from "../../../lib/balance/trim.js";
import { wholeCar } from "../../../lib/balance/whole-car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import { combinedForce61 } from "../../../lib/tyre/magic-formula-61-combined.js";
import { between } from "../evenly.js";
import { hardestByWalk, mostByGrid, type Spot } from "./brute-force.js";
import { anyCar, lightCar, momentlessTyre, neutralCar, someCars } from "./cars.js";

const driving = { speed: 25 };
const still = { ...lightCar, dragFactor: 0 };
const demo = handlingCarOf(demoCar);

const stiffer = (axle: HandlingAxle, by: number): HandlingAxle => ({
  ...axle,
  rollStiffness: axle.rollStiffness * by,
});

/** The car with drive on one axle alone: where both push, there may be a second hill – docs/model.md. */
const oneDriven = (car: HandlingCar) => ({
  ...car,
  driveFrontShare: Math.round(car.driveFrontShare),
});

test("no state of a brute search holds more side force, and where it finds the same the margin agrees", () => {
  const cars = [demo, ...someCars(3, 5).map(oneDriven)];
  let alike = 0;
  for (const car of cars)
    for (const phase of Object.values(phases)) {
      const { mostLateralAcceleration, understeerMargin } = carBalance(car, {
        speed: 25,
        ...phase,
      });
      const found = mostByGrid(car, { speed: 25, ...phase });
      const { lateralAcceleration = 0, outward = 0 } = found ?? {};
      expect(mostLateralAcceleration).toBeGreaterThan(lateralAcceleration - 1e-3);
      if (mostLateralAcceleration > lateralAcceleration + 1e-4) continue; // it got stuck on a ridge
      alike++;
      expect(Math.abs(understeerMargin - outward)).toBeLessThan(0.03);
    }
  expect(alike).toBeGreaterThanOrEqual(14); // of 16
});

test("where a car that lets the brakes go is neither driven nor braked, a brute search finds the same margin", () => {
  const turnIn = { ...phases["turn-in"], cornerRadius: 60 };
  for (const [front, rear] of [
    [0.7, 1],
    [0.85, 1.5],
    [1, 1.5],
  ] as const) {
    const tall = {
      ...demo,
      sprungHeight: 1.4 * demo.sprungHeight,
      front: stiffer(demo.front, front),
      rear: stiffer(demo.rear, rear),
    };
    const { mostLateralAcceleration, understeerMargin, most } = carBalance(tall, turnIn);
    const found = mostByGrid(tall, turnIn);
    expect(found?.push).toBe(0);
    const whole = wholeCar(tall, turnIn);
    whole.hold(heldOf(most.at)); // drive asks nothing, or the inner driven wheel is in the air
    const { front: f, rear: r } = whole.wheels;
    for (const wheel of [f.left, f.right, r.left, r.right])
      expect(Math.abs(wheel.longitudinalForce)).toBeLessThan(1);
    expect(mostLateralAcceleration).toBeCloseTo(found?.lateralAcceleration ?? 0, 4);
    expect(Math.abs(understeerMargin - (found?.outward ?? 0))).toBeLessThan(0.01);
  }
});

test("a walk along the line without yaw moment ends at the same hardest turn", () => {
  const cars = [demo, ...someCars(1, 8)];
  let walked = 0;
  for (const car of cars)
    for (const phase of Object.values(phases)) {
      const hardest = hardestByWalk(car, { speed: 25, ...phase });
      if (hardest === undefined) continue;
      walked++;
      const { lateralAcceleration } = carBalance(car, { speed: 25, ...phase });
      expect(Math.abs(lateralAcceleration - hardest)).toBeLessThan(2e-3);
    }
  expect(walked).toBeGreaterThanOrEqual(7); // of 8
});

describe("a car without height, equal at both ends, all wheels driven and braked alike", () => {
  const flat = (axle: HandlingAxle): HandlingAxle => ({
    ...axle,
    tyre: momentlessTyre,
    rollCentreHeight: 0,
    unsprungHeight: 0,
    camber: { left: 0, right: 0 },
    camberGain: 0,
  });
  const car: HandlingCar = {
    ...neutralCar,
    sprungHeight: 0,
    brakeFrontShare: 0.5,
    driveFrontShare: 0.5,
    front: flat(neutralCar.front),
    rear: flat(neutralCar.rear),
  };
  const wide = { cornerRadius: 1e4 }; // the corner itself turns no wheel against another

  test.each([0, -3, 2])("has no margin and holds what its tyre does at %s m/s² along", (ax) => {
    // by hand: all four tyres alike, m·a across = 4(Fy cos α + Fx sin α), along = 4(Fx cos α − Fy sin α)
    const load = (carMass(car) * 9.80665) / 4;
    let most = 0;
    for (let angle = 0.05; angle < 0.3; angle += 0.001) {
      const force = (slip: number) =>
        combinedForce61(clubTyreCoefficients, slip, angle, load, 200e3, 0);
      const along = (slip: number) => {
        const { longitudinal, side } = force(slip);
        return (4 * (longitudinal * Math.cos(angle) - side * Math.sin(angle))) / carMass(car);
      };
      let [low, high] = [-0.1, 0.1];
      if (along(low) > ax || along(high) < ax) continue;
      for (let i = 0; i < 40; i++)
        if (along((low + high) / 2) > ax) high = (low + high) / 2;
        else low = (low + high) / 2;
      const { longitudinal, side } = force(low);
      const across = 4 * (side * Math.cos(angle) + longitudinal * Math.sin(angle));
      most = Math.max(most, across / carMass(car));
    }
    const balance = carBalance(car, { ...wide, longitudinalAcceleration: ax });
    expect(Math.abs(balance.understeerMargin)).toBeLessThan(5e-3);
    expect(balance.mostLateralAcceleration).toBeCloseTo(most, 2);
    expect(balance.lateralAcceleration).toBeCloseTo(most, 2);
  });

  test("with weaker tyres at one end that end gives up first; the ends exchanged, the other", () => {
    const weak = (axle: HandlingAxle) => ({
      ...axle,
      tyre: { ...axle.tyre, PDY1: 0.95 * axle.tyre.PDY1 },
    });
    const front = carBalance({ ...car, front: weak(car.front) }, wide);
    const rear = carBalance({ ...car, rear: weak(car.rear) }, wide);
    expect([front.first, rear.first]).toEqual(["front", "rear"]);
    // by hand: the stronger end could turn the car 1/0.95 times as hard, less what pushing it takes
    const spare = front.lateralAcceleration * (1 / 0.95 - 1);
    expect(front.understeerMargin / spare).toBeGreaterThan(0.75);
    expect(front.understeerMargin / spare).toBeLessThan(1.1);
    expect(rear.understeerMargin).toBeCloseTo(-front.understeerMargin, 2);
    expect(rear.lateralAcceleration).toBeCloseTo(front.lateralAcceleration, 1);
  });
});

test("the margin is the yaw moment left at the state of most side force, out of the corner above zero", () => {
  for (const car of someCars(10, 4)) {
    const { most, understeerMargin, first } = carBalance(car, driving);
    const left = wholeCar(car, driving).hold(heldOf(most.at));
    expect(Math.abs(left.along) + Math.abs(left.across)).toBeLessThan(1e-6);
    expect(left.outward).toBeCloseTo(understeerMargin, 6);
    expect(first).toBe(understeerMargin > 0 ? "front" : "rear");
  }
});

test("in the hardest turn nothing is left over, and it is no harder than the state of most side force", () => {
  for (const car of someCars(10, 6))
    for (const phase of Object.values(phases)) {
      const found = carBalance(car, { speed: 25, ...phase });
      const left = wholeCar(car, { speed: 25, ...phase }).hold(heldOf(found.turn.point.at));
      if (found.tips) continue;
      const size = Math.abs(left.along) + Math.abs(left.across) + Math.abs(left.outward);
      expect(size).toBeLessThan(1e-4);
      expect(found.lateralAcceleration).toBeLessThan(found.mostLateralAcceleration + 1e-4);
    }
});

/** The same car with every number a little off. */
const neighbour = (car: HandlingCar, by: readonly number[]): HandlingCar => {
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = by;
  const { front, rear } = car;
  return {
    ...car,
    sprungMass: car.sprungMass * (1 + 0.03 * a),
    sprungHeight: car.sprungHeight * (1 + 0.05 * b),
    brakeFrontShare: car.brakeFrontShare + 0.02 * c,
    front: { ...stiffer(front, 1 + 0.15 * d), camber: { ...front.camber, right: e * 0.03 } },
    rear: { ...stiffer(rear, 1 + 0.15 * e), rollCentreHeight: rear.rollCentreHeight + 0.02 * a },
  };
};

describe("the demo with a stiffer front in the middle of a corner", () => {
  const middle = { speed: 25, ...phases.middle };
  const stiffened = (by: number): HandlingCar => ({ ...demo, front: stiffer(demo.front, by) });
  const start = carBalance(demo, middle);
  const pushOf = ({ most }: { most: { at: readonly number[] } }) => most.at[2] ?? Number.NaN;

  test("has its state of most side force where less than all push is asked, also from a car that has not", () => {
    expect(pushOf(start)).toBeGreaterThan(0.95);
    for (const by of [1.12, 1.2, 1.3]) {
      const [near, cold] = [
        carBalance(stiffened(by), middle, start),
        carBalance(stiffened(by), middle),
      ];
      expect(pushOf(near)).toBeLessThan(0.5);
      expect(near.understeerMargin).toBeCloseTo(cold.understeerMargin, 3);
      expect(near.lateralAcceleration).toBeCloseTo(cold.lateralAcceleration, 5);
    }
  });

  test("is as high there as a grid and steps to all sides find it", () => {
    for (const by of [1, 1.12]) {
      const near = carBalance(stiffened(by), middle, start);
      const brute = mostByGrid(stiffened(by), middle) as Spot;
      expect(near.mostLateralAcceleration).toBeGreaterThan(brute.lateralAcceleration - 1e-4);
      expect(near.understeerMargin).toBeCloseTo(brute.outward, 2);
    }
  });
});

test("a changed car's balance begins with what is known of the car: counted, not timed", () => {
  const changes = [0.9, 0.97, 1.03, 1.1].flatMap((by) => [
    { ...demo, front: stiffer(demo.front, by) },
    { ...demo, rear: stiffer(demo.rear, by) },
  ]);
  const work = { done: 0 };
  for (const phase of Object.values(phases)) {
    const start = carBalance(demo, { speed: 25, ...phase });
    for (const car of changes) carBalance(car, { speed: 25, ...phase }, start, work);
  }
  // about 230 from nothing; a place with its slopes takes six, three such bring a near top home
  expect(work.done / (4 * changes.length)).toBeLessThan(110);
});

test("from a similar car the same balance is found as from nothing", () => {
  const off = fc.array(between(-1, 1), { minLength: 5, maxLength: 5 });
  const pairs = fc.sample(fc.tuple(fc.noBias(anyCar), off), { numRuns: 25, seed: 12 });
  const apart = pairs.flatMap(([any, by]) =>
    Object.values(phases).map((phase) => {
      const car = oneDriven(any);
      const start = carBalance(neighbour(car, by), { speed: 27, ...phase });
      const warm = carBalance(car, { speed: 25, ...phase }, start);
      const cold = carBalance(car, { speed: 25, ...phase });
      return {
        turn: Math.abs(warm.lateralAcceleration - cold.lateralAcceleration),
        margin: Math.abs(warm.understeerMargin - cold.understeerMargin),
      };
    }),
  );
  // where a wheel is about to lift, two tops can be as high as each other: a few find the other one
  const others = apart.filter(({ turn, margin }) => turn > 1e-4 || margin > 1e-3);
  expect(others.length).toBeLessThanOrEqual(5); // of 100
  for (const { turn, margin } of others) {
    expect(turn).toBeLessThan(0.01);
    expect(margin).toBeLessThan(0.05);
  }
});

test("round a corner it is what it is at the speed that this hardest turn asks", () => {
  for (const car of someCars(8, 9)) {
    const round = carBalance(car, { cornerRadius: 50 });
    const fast = carBalance(car, { speed: Math.sqrt(round.lateralAcceleration * 50) }); // V² = ay·R
    expect(round.speed).toBeCloseTo(fast.speed, 4);
    if (round.turn.ends === "at a top")
      expect(fast.lateralAcceleration).toBeCloseTo(round.lateralAcceleration, 2);
  }
});

/** The balance of a car; nothing of one that can be balanced nowhere. */
function balanceOrNothing(car: HandlingCar) {
  try {
    return carBalance(car, driving);
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return undefined;
  }
}

test("a car with equal sides turns left as it turns right", () => {
  fc.assert(
    fc.property(anyCar, (any) => {
      const even = (axle: HandlingAxle): HandlingAxle => ({
        ...axle,
        leftExcessLoad: 0,
        pressure: { left: axle.pressure.left, right: axle.pressure.left },
        camber: { left: axle.camber.left, right: axle.camber.left },
        toe: { left: axle.toe.left, right: axle.toe.left },
      });
      const { stops: _, ...front } = any.front;
      const { stops: __, ...rear } = any.rear;
      const car = { ...any, front: even(front), rear: even(rear) };
      const as = balanceOrNothing(car);
      const mirrored = balanceOrNothing(mirrorCar(car));
      expect(mirrored === undefined).toBe(as === undefined);
      if (as === undefined || mirrored === undefined) return;
      expect(mirrored.understeerMargin).toBe(as.understeerMargin);
      expect(mirrored.lateralAcceleration).toBe(as.lateralAcceleration);
    }),
    { numRuns: 20 },
  );
});

describe("what the trade knows of balance (common practice, no source)", () => {
  const marginOf = (car: HandlingCar, phase = {}) =>
    carBalance(car, { speed: 25, ...phase }).understeerMargin;

  test("a stiffer end slides earlier", () => {
    expect(marginOf({ ...still, front: stiffer(still.front, 1.3) })).toBeGreaterThan(
      marginOf(still) + 0.1,
    );
    expect(marginOf({ ...still, rear: stiffer(still.rear, 1.3) })).toBeLessThan(
      marginOf(still) - 0.1,
    );
  });

  test("the front bar of the demo car goes the same way at every position", () => {
    const margins = [1, 2, 3, 4, 5].map((position) => {
      const { bar } = demoCar.front;
      const front =
        bar === undefined ? demoCar.front : { ...demoCar.front, bar: { ...bar, position } };
      return marginOf(handlingCarOf({ ...demoCar, front }));
    });
    expect(margins).toEqual([...margins].sort((a, b) => a - b));
    expect((margins[4] ?? 0) - (margins[0] ?? 0)).toBeGreaterThan(0.1);
  });

  test("brakes further to the front keep the rear from sliding on the brakes", () => {
    const braking = { longitudinalAcceleration: -5 };
    const at = (brakeFrontShare: number) => marginOf({ ...still, brakeFrontShare }, braking);
    expect(at(0.75)).toBeGreaterThan(at(0.65) + 0.1);
    expect(at(0.65)).toBeGreaterThan(at(0.55) + 0.1);
  });

  test("the driven axle pays for the push", () => {
    const power = { longitudinalAcceleration: 2 };
    expect(marginOf({ ...still, driveFrontShare: 1 }, power)).toBeGreaterThan(
      marginOf({ ...still, driveFrontShare: 0 }, power) + 0.5,
    );
  });

  test("a stiff front damper makes turn-in understeer and leaves the middle alone", () => {
    const damped = { ...still, front: { ...still.front, rollDamping: 6000 } };
    const turnIn = phases["turn-in"];
    expect(marginOf(damped, turnIn)).toBeGreaterThan(marginOf(still, turnIn) + 0.03);
    expect(marginOf(damped)).toBe(marginOf(still));
  });

  test("a locked differential pulls the nose straight in a slow corner and helps the car out of it", () => {
    const rear = { ...still.rear, differential: { kind: "locked" as const } };
    const steer = (car: HandlingCar) => trim(car, { cornerRadius: 15 }, 4)?.steer ?? Number.NaN;
    expect(steer({ ...still, rear })).toBeGreaterThan(steer(still) + 1e-3);
    const out = { speed: 25, longitudinalAcceleration: 2.5 };
    expect(carBalance({ ...still, rear }, out).lateralAcceleration).toBeGreaterThan(
      carBalance(still, out).lateralAcceleration,
    );
  });

  test("downforce adds grip with the square of speed", () => {
    const winged = (one: HandlingAxle) => ({ ...one, downforceFactor: 0.5 });
    const car = { ...still, front: winged(still.front), rear: winged(still.rear) };
    const slow = carBalance(car, { speed: 15 }).lateralAcceleration;
    expect(carBalance(car, { speed: 45 }).lateralAcceleration).toBeGreaterThan(slow + 1);
  });
});

test("an axle that has lifted its inner wheel gains nothing from more stiffness", () => {
  const tall = { ...still, sprungHeight: 0.6 };
  const [a, b] = [6, 8].map((by) =>
    carBalance(
      { ...tall, rear: stiffer(tall.rear, by) },
      { speed: 25, longitudinalAcceleration: -1 },
    ),
  );
  expect(a?.lifted).toEqual({ front: false, rear: true });
  expect(b?.understeerMargin).toBeCloseTo(a?.understeerMargin ?? Number.NaN, 1);
});

test("a bank gives what friction on a slope gives", () => {
  // a·cos b − g·sin b = μ(g·cos b + a·sin b), with μ = a/g on the level – by hand; load eats some μ
  const level = carBalance(still, { cornerRadius: 100 }).lateralAcceleration / 9.80665;
  const bank = 0.1;
  const slope = Math.tan(bank);
  const expected = (9.80665 * (level + slope)) / (1 - level * slope);
  const found = carBalance(still, { cornerRadius: 100, bank }).lateralAcceleration;
  expect(found / expected).toBeGreaterThan(0.97);
  expect(found / expected).toBeLessThan(1);
});

describe("a tall narrow car", () => {
  const narrow = (one: HandlingAxle) => ({
    ...one,
    independent: false, // its links do not lift the body
    track: 1,
    rollCentreHeight: 0.3,
    rollStiffness: 60e3,
  });
  const tied = { ...narrow(still.rear), differential: { kind: "locked" as const } };
  const tall = { ...still, sprungHeight: 1, front: narrow(still.front), rear: tied };
  const balance = carBalance(tall, driving);

  test("tips over before its tyres let go, below half its track over its height", () => {
    expect(balance.tips).toBe(true);
    // NHTSA static stability factor: T/(2h)·g, on stiff springs and tyres
    const most = (1 / (2 * centreOfGravityHeight(tall))) * 9.80665;
    expect(balance.lateralAcceleration).toBeLessThan(most);
    expect(balance.lateralAcceleration).toBeGreaterThan(0.75 * most);
  });

  test("is at its limit where the second inner wheel leaves the ground", () => {
    const inner = (share: number) => {
      const wheels = trim(tall, driving, share * balance.lateralAcceleration)?.wheels;
      return (wheels?.front.left.load ?? NaN) + (wheels?.rear.left.load ?? NaN);
    };
    expect(inner(0.9999)).toBeLessThan(30); // N of some 11 000
    expect(inner(0.9999)).toBeGreaterThan(0);
    expect(inner(0.9)).toBeGreaterThan(100);
    expect(trim(tall, driving, 1.005 * balance.lateralAcceleration)).toBeUndefined();
  });
});

test.each([-14, 9])(
  "a car that cannot do %s m/s² along says what it can, near the most there is",
  (ax) => {
    for (const car of [demo, ...someCars(4, 2).map(oneDriven)]) {
      const balance = carBalance(car, { speed: 25, longitudinalAcceleration: ax });
      expect(balance.given).toBe(false);
      const can = balance.longitudinalAcceleration;
      // all push there is, straight ahead, with the loads of that acceleration
      const all = { front: 0, rear: 0, push: 20 * Math.sign(ax), lateralAcceleration: 1e-3 };
      const left = wholeCar(car, { speed: 25, longitudinalAcceleration: can }).hold(all).along;
      expect(left * Math.sign(ax)).toBeGreaterThan(0);
      expect(Math.abs(left / can)).toBeLessThan(0.06);
    }
  },
);

test("a car that can do what is asked says so", () => {
  expect(carBalance(demo, { speed: 25, longitudinalAcceleration: -4 }).given).toBe(true);
});

test("any car in any phase gives finite numbers", () => {
  fc.assert(
    fc.property(anyCar, between(-12, 8), between(-40, 40), (car, ax, lateralJerk) => {
      const balance = carBalance(car, { speed: 25, longitudinalAcceleration: ax, lateralJerk });
      expect(balance.lateralAcceleration).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(balance.understeerMargin)).toBe(true);
    }),
    { numRuns: 40 },
  );
});

test("front wheels that both point aside by as much only put the steering wheel off centre", () => {
  fc.assert(
    fc.property(between(-0.15, 0.15), between(8, 40), (aside, speed) => {
      const toe = { left: -aside, right: aside };
      const moved = carBalance({ ...lightCar, front: { ...lightCar.front, toe } }, { speed });
      const straight = carBalance(lightCar, { speed });
      expect(moved.lateralAcceleration).toBeCloseTo(straight.lateralAcceleration, 6);
      expect(moved.understeerMargin).toBeCloseTo(straight.understeerMargin, 4);
    }),
    { numRuns: 10 },
  );
});

test.each([5, 8, 10, 12, 15, 18])("an uneven car with wheels askew is held at %s m/s", (speed) => {
  const car: HandlingCar = {
    ...lightCar,
    wheelbase: 4,
    sprungMass: 516,
    front: {
      ...lightCar.front,
      toe: { left: 0.1575, right: 0.0408 },
      camber: { left: -0.1356, right: -0.1106 },
      leftExcessLoad: 483,
      downforceFactor: 3.27,
      complianceSteer: 17.4e-6,
    },
    rear: {
      ...lightCar.rear,
      toe: { left: 0.0078, right: 0.024 },
      downforceFactor: 3.45,
      complianceSteer: 5.8e-6,
    },
  };
  const { turn } = carBalance(car, { speed });
  const { along, across, outward } = wholeCar(car, { speed }).hold(heldOf(turn.point.at));
  expect(Math.abs(along) + Math.abs(across) + Math.abs(outward)).toBeLessThan(1e-4);
});

test("a car that cannot hold its speed is told so after one search", () => {
  const work = { done: 0 };
  const car = { ...lightCar, dragFactor: 40 }; // 40 · 40² N against a tyre's 1.2 · weight, by hand
  expect(() => carBalance(car, { speed: 40 }, undefined, work)).toThrow(/cannot be balanced/);
  expect(work.done).toBeLessThan(5000);
});

test("a car that cannot stand is refused", () => {
  const soft = (one: HandlingAxle) => ({ ...one, rollStiffness: 100 });
  const car = { ...still, front: soft(still.front), rear: soft(still.rear) };
  expect(() => carBalance(car, driving)).toThrow(RangeError);
});

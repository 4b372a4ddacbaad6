import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { carMass, type HandlingAxle } from "../../../lib/balance/handling-car.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { tipsOverAt } from "../../../lib/balance/stance-in-turn.js";
import { turnLoads } from "../../../lib/balance/turn-loads.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { eachAxle, sumOfWheels } from "../../../lib/load/wheels.js";
import { between } from "../evenly.js";
import { anyCar, lightCar } from "./cars.js";

const driving = { speed: 40 };
const gravity = 9.80665;

function even({ stops: _, ...axle }: HandlingAxle): HandlingAxle {
  return { ...axle, leftExcessLoad: 0, downforceFactor: 0 };
}

test("without air and with even sides it is the sharing of the textbook, to both sides", () => {
  fc.assert(
    fc.property(anyCar, between(-14, 14), (any, ay) => {
      const car = { ...any, dragFactor: 0, front: even(any.front), rear: even(any.rear) };
      const { tipped, ...textbook } = distributeLoadTransfer(car, ay);
      const turn = turnLoads(car, driving, ay);
      expect(turn === undefined).toBe(tipped);
      if (turn === undefined) return;
      if (textbook.front.lifted || textbook.rear.lifted) return; // see the tests of the stance
      for (const end of ["front", "rear"] as const) {
        for (const part of ["elastic", "geometric", "unsprung", "total"] as const)
          expect(turn[end][part]).toBeCloseTo(textbook[end][part], 5);
        expect(turn[end].load.left).toBeCloseTo(textbook[end].load.left, 5);
        expect(turn[end].lifted).toBe(textbook[end].lifted);
        expect(turn.rollAngle[end]).toBeCloseTo(textbook.rollAngle[end], 9);
      }
      expect(turn.momentFromRoll).toBeCloseTo(textbook.momentFromRoll, 4);
      expect(turn.frontShare).toBeCloseTo(textbook.frontShare, 6);
    }),
  );
});

test("the loads carry weight and downforce, and a right turn is the mirror's left turn", () => {
  fc.assert(
    fc.property(anyCar, between(0, 12), (car, ay) => {
      const [left, right] = [turnLoads(mirrorCar(car), driving, ay), turnLoads(car, driving, -ay)];
      expect(left === undefined).toBe(right === undefined);
      if (left === undefined || right === undefined) return;
      const down = (car.front.downforceFactor + car.rear.downforceFactor) * 40 ** 2;
      expect(
        sumOfWheels(eachAxle(right, ({ load }) => load)) / (carMass(car) * gravity + down),
      ).toBeCloseTo(1, 9);
      expect(right.front.load.left).toBeCloseTo(left.front.load.right, 6);
      expect(right.front.load.right).toBeCloseTo(left.front.load.left, 6);
      expect(right.total).toBeCloseTo(-left.total, 9);
    }),
  );
});

describe("a car that downforce presses down", () => {
  const winged = (axle: HandlingAxle) => ({ ...axle, downforceFactor: 1.5, independent: false });
  const car = { ...lightCar, front: winged(lightCar.front), rear: winged(lightCar.rear) };

  test("keeps its wheels down where the same car without air has lifted one or tipped over", () => {
    const bare = distributeLoadTransfer(car, 16);
    expect(bare.front.lifted || bare.rear.lifted).toBe(true);
    const turn = turnLoads(car, driving, 16);
    expect([turn?.front.lifted, turn?.rear.lifted]).toEqual([false, false]);
    expect(turn?.front.load.left).toBeGreaterThan(0);
  });

  test("tips over only where the speed says so", () => {
    const most = tipsOverAt(car, driving);
    expect(distributeLoadTransfer(car, most - 0.1).tipped).toBe(true);
    expect(turnLoads(car, driving, most - 0.1)).toBeDefined();
    expect(turnLoads(car, driving, most + 0.1)).toBeUndefined();
  });
});

import { expect, test } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { smallStep } from "../../../lib/transient/small-step.js";

const figures = figuresOf(demoCar);

test("at rest the demo car stands as its file says", () => {
  expect(figures.rideHeight.front).toBeCloseTo(0.13, 12);
  expect(figures.rideHeight.rear).toBeCloseTo(0.14, 12);
  expect(figures.camber.front).toBeCloseTo((-1.5 * Math.PI) / 180, 12);
  expect(figures.toe.rear).toBeCloseTo((0.1 * Math.PI) / 180, 12);
  expect(figures.bumpTravel.front).toBeCloseTo(0.06, 12);
  expect(figures.frontWeightShare).toBeCloseTo(1 - 1.1525 / 2.4, 9);
});

test("its front end bounces at 1.537 Hz", () => {
  // by hand: 25 350 and 215 000 N/m in series under half of 561.375 − 75 kg
  const ride = (25350 * 215e3) / (25350 + 215e3);
  const mass = (1080 * (1 - 1.1525 / 2.4) - 75) / 2;
  expect(figures.rideFrequency.front).toBeCloseTo(Math.sqrt(ride / mass) / (2 * Math.PI), 6);
});

test("one front wheel over a kerb meets its spring and half the bar", () => {
  expect(figures.oneWheelRate.front).toBeCloseTo(25350 + 22e3 * 0.6 ** 2, 6); // by hand: k·i²
});

/** One end of the demo car by hand: what holds its body in roll, and what rolls it for each m/s². */
function endByHand(
  { sprung, wheels, weight }: { sprung: number; wheels: number; weight: number },
  {
    springs,
    track,
    centre,
    gain,
  }: { springs: number; track: number; centre: number; gain: number },
) {
  const g = 9.80665;
  const height = (810 * 0.54 + 80 * 0.48 + 30 * 0.4) / 920;
  // Pacejka 2012, eqs A3.3 and A3.4: 215 N/mm at 3 kN with Q_FZ2 20, then the slope at this load
  const first = Math.sqrt(((215e3 * 0.29) / 3000) ** 2 - 4 * 20);
  const tyre = (3000 / 0.29) * Math.sqrt(first ** 2 + (4 * 20 * (weight / 2)) / 3000);
  const kept = ((gain * Math.PI) / 180) * (track / 2); // half the track over the swing arm
  const k = springs + g * sprung * centre;
  const lean = wheels * 0.29;
  const axle = 0.5 * tyre * track ** 2 + k - g * (sprung * centre + kept ** 2 * lean);
  const both = k + g * kept * (1 - kept) * lean;
  const push = sprung * centre + kept * lean;
  return {
    holds: k - g * (sprung * (height - centre) + (1 - kept) ** 2 * lean) - both ** 2 / axle,
    rolls: sprung * (height - centre) + (1 - kept) * lean + (both * push) / axle,
  };
}

test("it rolls as a body does whose axles stand on tyres", () => {
  const back = (810 * 1.07 + 80 * 1.35 + 30 * 2.2) / 2.4; // kg of the body over the rear axle
  const weight = (kg: number) => kg * 9.80665;
  const front = endByHand(
    { sprung: 920 - back, wheels: 75, weight: weight(995 - back) },
    {
      springs: 0.5 * 25350 * 1.44 ** 2 + 22e3 * (0.6 * 1.44) ** 2,
      track: 1.44,
      centre: 0.05,
      gain: 22,
    },
  );
  const rear = endByHand(
    { sprung: back, wheels: 85, weight: weight(back + 85) },
    {
      springs: 0.5 * 28125 * 1.45 ** 2 + 5e3 * (0.6 * 1.45) ** 2,
      track: 1.45,
      centre: 0.09,
      gain: 18,
    },
  );
  const byHand = (front.rolls + rear.rolls) / (front.holds + rear.holds);
  expect(figures.rollGradient / byHand).toBeCloseTo(1, 6);
});

test("the body in roll is quicker than in bounce and damped short of no overshoot", () => {
  // common practice, no source
  expect(figures.rollFrequency).toBeGreaterThan(1.5);
  expect(figures.rollFrequency).toBeLessThan(3);
  expect(figures.rollDampingRatio).toBeGreaterThan(0.2);
  expect(figures.rollDampingRatio).toBeLessThan(1);
});

test("it understeers a little and answers the steering as a light car does", () => {
  // road cars have 2 to 6 °/g (Gillespie 1992, Dixon 1996, from memory), a firm light car less; yaw at
  // 90 % after 0.1 to 0.3 s: common practice, no source
  const perG = (figures.understeerGradient * 180 * 9.80665) / Math.PI;
  expect(perG).toBeGreaterThan(0.5);
  expect(perG).toBeLessThan(3);
  expect(figures.yawResponseTime).toBeGreaterThan(0.1);
  expect(figures.yawResponseTime).toBeLessThan(0.3);
});

test("gradient and response are those at the speed asked for", () => {
  const fast = figuresOf(demoCar, demoCar, 40);
  expect(smallStep(handlingCarOf(demoCar), 40)).toMatchObject({
    understeerGradient: fast.understeerGradient,
    yawResponseTime: fast.yawResponseTime,
  });
  expect(Math.abs(fast.yawResponseTime - figures.yawResponseTime)).toBeGreaterThan(1e-3);
});

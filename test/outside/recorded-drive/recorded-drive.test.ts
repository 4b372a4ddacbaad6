import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { DEGREE, type Ride } from "../../../lib/index.js";
import { atRest } from "../../../lib/measure/ride/at-rest.js";
import { evenly, integral, meanOver, STEP } from "../../../lib/measure/ride/evenly.js";
import { type InCar, inCar } from "../../../lib/measure/ride/in-car.js";
import { mountingOf } from "../../../lib/measure/ride/mounting.js";
import type { Three } from "../../../lib/measure/ride/ride.js";
import { rideFacts } from "../../../lib/measure/ride/ride-facts.js";
import { guessed, headsOf, rideFrom } from "../../../site/pages/ride/work/table.js";

// A drive of a real car that no one here recorded; source and licence: README.md beside this file.

const text = readFileSync("test/outside/recorded-drive/drive.csv", "utf8");
const { columns } = guessed(headsOf(text));
const units = { time: "ms", force: "m/s²", turn: "°/s", speed: "km/h", course: "°" };
const drive = rideFrom(text, { columns, units });
const facts = rideFacts(drive);

const felt = (ride: Ride): InCar => {
  const even = evenly(ride);
  return inCar(even, mountingOf(even, atRest(even), ride.fixes));
};

/** The step of a moment on the recording's own clock. */
const stepOf = (seconds: number) => Math.round((seconds - (drive.felt[0]?.time ?? 0)) / STEP);

test("the columns are known by their names", () => {
  expect(columns).toEqual({
    ...{ time: 0, forceX: 1, forceY: 2, forceZ: 3, turnX: 4, turnY: 5, turnZ: 6 },
    ...{ speed: 7, course: 8 },
  });
});

test("it stood, gravity is gravity, and the box lies in the car as one sees that it does", () => {
  const { gravity, duration } = facts.rest;
  expect(duration).toBeGreaterThan(2);
  expect(Math.hypot(...gravity) / 9.81).toBeCloseTo(1, 2);
  const { axes, forceSign, sidesKnown, turnOrder, turnSign } = facts.mounting;
  expect({ forceSign, sidesKnown, turnOrder, turnSign }).toEqual({
    ...{ forceSign: -1, sidesKnown: true, turnOrder: [0, 1, 2], turnSign: 1 },
  });
  for (const [i, axis] of axes.entries())
    expect(axis[i], `axis ${i}`).toBeGreaterThan(Math.cos(15 * DEGREE));
});

test("it has one hard corner, to the right, and no number that is none", () => {
  expect(facts.corners).toHaveLength(1);
  const [corner] = facts.corners;
  expect(corner).toMatchObject({ way: "right" });
  expect(corner?.peak).toBeGreaterThan(2.5);
  expect(facts.rollGradient).toBeUndefined(); // one corner tells none
  expect(JSON.stringify(facts)).not.toMatch(/null|NaN|Infinity/);
});

test("turn rates summed up through it turn as far as the satellites' course, 74°", () => {
  const heading = integral(felt(drive).yawRate);
  const [before, after] = [528.97, 534.35].map(stepOf) as [number, number];
  const turned = (heading[before] ?? 0) - (heading[after] ?? 0);
  expect(Math.abs(turned / DEGREE - (103.36 - 29.34))).toBeLessThan(3);
});

test("force across over turn rate is the speed at which satellites see it leave the corner", () => {
  const { across, yawRate } = felt(drive);
  const [from, to] = [532.2, 533.1].map(stepOf) as [number, number]; // from its middle on, no longer braking
  const speed = meanOver(across, from, to) / meanOver(yawRate, from, to);
  const left = 22.69 / 3.6; // m/s at 534.1 s, the first that no longer lags
  expect(Math.abs(speed / left - 1)).toBeLessThan(0.12);
});

test("the box turned about and its signs turned round, it is the same drive", () => {
  const [c, s] = [Math.cos(2.1), Math.sin(2.1)];
  const about = ([x, y, z]: Three): Three => [z, c * x - s * y, s * x + c * y];
  const turned = drive.felt.map(({ time, force, turn }) => {
    const [x, y, z] = about(force);
    return { time, force: [-x, -y, -z] as Three, turn: about(turn) };
  });
  const other = rideFacts({ ...drive, felt: turned });
  expect(other.mounting.forceSign).toBe(1);
  expect(other.corners[0]?.way).toBe("right");
  for (const what of ["peak", "turned"] as const) // what counts as straight is asked axis by axis
    expect(
      Math.abs((other.corners[0]?.[what] ?? 0) / (facts.corners[0]?.[what] ?? 1) - 1),
    ).toBeLessThan(0.03);
});

test("without satellites it is found but for left and right", () => {
  const { mounting, corners } = rideFacts({ ...drive, fixes: [] });
  expect(mounting.sidesKnown).toBe(false);
  expect(corners).toHaveLength(1);
  expect(corners[0]?.turned).toBeCloseTo(facts.corners[0]?.turned ?? 0, 1);
});

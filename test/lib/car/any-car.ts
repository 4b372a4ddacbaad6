import fc from "fast-check";
import type { AntiRollBar, Axle, BarPosition, Car } from "../../../lib/car/car.js";
import { carShape } from "../../../lib/car/file/car-shape.js";
import { carFromJson } from "../../../lib/car/file/parse.js";
import type { GroupShape, NumberShape, Shape } from "../../../lib/car/file/shape.js";
import { bestPressureRange, OWN_TYRE, tyreNamed } from "../../../lib/car/tyres.js";
import type { SpaceAxle } from "../../../lib/linkage/axle-in-space.js";
import { parameters } from "../../../lib/parameters.js";
import { between } from "../evenly.js";
import { beam, strutCorner, wishbones } from "../linkage/reference-corners.js";

const MOST_ASIDE = 0.05; // m of a joint from where the tests of linkages have it

/** How many cars a law is tried on: more in the nightly run. */
export const RUNS = Number(process.env.LAW_RUNS ?? 150);

/** Masses are put where a car has them, so that not nearly all cars fall on their nose. */
const likely: Readonly<Record<string, readonly [number, number]>> = {
  behindFrontAxle: [0.3, 1.1],
};

/** What random parts seldom make: joints of links, coefficients of a tyre, rules of a class. */
const leftToFiles = ["linkage", "data", "classRules"];

type Spread = (min: number, max: number) => fc.Arbitrary<number>;

/** fast-check's own doubles, spread over exponents: nearly all of them close to zero. */
const doubles: Spread = (min, max) => fc.double({ min, max, noNaN: true });

/**
 * Any car that its file may hold: every number anywhere in the range of the parameter table, every
 * optional part there or not. Joints of linkages, tyres of one's own and class rules are left out: few
 * random ones are sound.
 */
export const anyCar: fc.Arbitrary<Car> = partOf(carShape, "", doubles)
  .map(withOrder)
  .map((content) => carFromJson(content).car)
  .filter((car) => car !== undefined);

/**
 * The same with all fields there are: joints of links where they might be in earnest, and masses
 * anywhere that the file allows.
 */
export const anyLegalCar: fc.Arbitrary<Car> = fc
  .record({
    content: partOf(carShape, "", between).map(withOrder) as fc.Arbitrary<Car>,
    front: fc.option(anyLinkage(), { freq: 5, nil: undefined }),
    rear: fc.option(anyLinkage(), { freq: 5, nil: undefined }),
    body: fc.option(placeAnywhere(), { freq: 8, nil: undefined }),
    driver: fc.option(placeAnywhere(), { freq: 2, nil: undefined }),
    ballast: fc.option(placeAnywhere(), { freq: 2, nil: undefined }),
  })
  .map(({ content, front, rear, body, driver, ballast }) => ({
    ...content,
    body: { ...content.body, ...(body !== undefined && { behindFrontAxle: body }) },
    ...(content.driver && driver && { driver: { ...content.driver, behindFrontAxle: driver } }),
    ...(content.ballast &&
      ballast && { ballast: { ...content.ballast, behindFrontAxle: ballast } }),
    front: withLinkage(content.front, front),
    rear: withLinkage(content.rear, rear),
  }))
  .map((content) => carFromJson(content).car)
  .filter((car) => car !== undefined);

function placeAnywhere(): fc.Arbitrary<number> {
  return between(parameters.behindFrontAxle.min, parameters.behindFrontAxle.max);
}

/** Links like those of the linkage tests, every joint somewhere near. */
function anyLinkage(): fc.Arbitrary<SpaceAxle> {
  const aside = between(-MOST_ASIDE, MOST_ASIDE);
  const design = fc.constantFrom<SpaceAxle>(
    { kind: "independent", left: wishbones },
    { kind: "independent", left: strutCorner },
    beam,
  );
  return fc.tuple(design, fc.array(aside, { minLength: 60, maxLength: 60 })).map(([axle, by]) => {
    let next = 0;
    return JSON.parse(JSON.stringify(axle), (name, value) =>
      ["x", "y", "z"].includes(name) ? value + (by[next++ % by.length] ?? 0) : value,
    );
  });
}

/** An axle with links, its springs as their kind has them. */
function withLinkage(axle: Axle, linkage: SpaceAxle | undefined): Axle {
  if (linkage === undefined) return axle;
  const { spacing = 1, ...spring } = axle.spring;
  if (linkage.kind === "beam axle") return { ...axle, linkage, spring: { ...spring, spacing } };
  const { rollSteer: _, ...geometry } = axle.geometry;
  return { ...axle, linkage, spring, geometry };
}

function partOf(shape: Shape, path: string, spread: Spread): fc.Arbitrary<unknown> {
  switch (shape.type) {
    case "number":
      return numberOf(shape, path, spread);
    case "text":
      return fc.constantFrom(...(shape.choices ?? ["any"]).filter((name) => name !== OWN_TYRE));
    case "list":
      return fc.array(partOf(shape.item, path, spread), { minLength: 1, maxLength: shape.most });
    case "group":
      return groupOf(shape, path, spread);
    case "variant":
    case "record":
      return fc.constant(undefined);
  }
}

function numberOf({ min, max, whole }: NumberShape, path: string, spread: Spread) {
  if (whole) return fc.integer({ min, max });
  const name = path.split(".").pop() ?? "";
  const [low, high] = likely[name] ?? [min, max];
  const ends = fc.constantFrom(low, high);
  return fc.oneof({ weight: 1, arbitrary: ends }, { weight: 6, arbitrary: spread(low, high) });
}

function groupOf({ fields }: GroupShape, path: string, spread: Spread): fc.Arbitrary<unknown> {
  const parts = Object.entries(fields).filter(([name]) => !leftToFiles.includes(name));
  const arbitraries = parts.map(([name, field]) => [
    name,
    partOf(field, `${path}.${name}`, spread),
  ]);
  const required = parts.filter(([, field]) => !field.optional).map(([name]) => name);
  return fc.record(Object.fromEntries(arbitraries), { requiredKeys: required as never[] });
}

/** What random numbers do not give: an order within adjusters, bars and damper, a rate to each position, locks to limited-slip differentials and roll steer to beams alone. */
function withOrder(content: unknown): unknown {
  return JSON.parse(JSON.stringify(content), (_, value) => {
    if (value && typeof value === "object" && "min" in value && "max" in value)
      return { ...value, min: Math.min(value.min, value.max), max: Math.max(value.min, value.max) };
    if (value && typeof value === "object" && Array.isArray(value.positions))
      return {
        ...value,
        ...(value.tube && { tube: withWall(value.tube) }),
        positions: value.positions.map(({ rate, armLength }: BarPosition) =>
          rate === undefined && armLength !== undefined && value.tube
            ? { armLength }
            : { rate: rate ?? 0 },
        ),
        position: Math.min(value.position, value.positions.length),
      };
    if (value?.bestPressure !== undefined) return withReachableBestPressure(value);
    if (value?.kind === "open" || value?.kind === "locked") return { kind: value.kind };
    if (value?.kind === "limited-slip") return { power: 0.3, overrun: 0.2, ...value };
    if (value?.geometry && value.spring && value.spring.spacing === undefined) {
      const { rollSteer: _, ...geometry } = value.geometry; // only a beam axle has one
      return { ...value, geometry };
    }
    return value;
  });
}

function withWall({ diameter, innerDiameter, length }: NonNullable<AntiRollBar["tube"]>) {
  if (innerDiameter === undefined) return { diameter, length };
  return { diameter, length, innerDiameter: Math.min(innerDiameter, 0.95 * diameter) };
}

/** A best pressure is one that the tyre's data reach, and there is none where they have none. */
function withReachableBestPressure({ bestPressure, ...tyre }: Car["front"]["tyre"]) {
  const range = bestPressureRange(tyreNamed(tyre.name));
  if (range === undefined || bestPressure === undefined) return tyre;
  const { minimum, maximum } = range;
  return { ...tyre, bestPressure: Math.min(maximum, Math.max(minimum, bestPressure)) };
}

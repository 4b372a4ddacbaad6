import fc from "fast-check";
import type { Car } from "../../../lib/car/car.js";
import { carShape } from "../../../lib/car/file/car-shape.js";
import { carFromJson } from "../../../lib/car/file/parse.js";
import type { GroupShape, NumberShape, Shape } from "../../../lib/car/file/shape.js";
import { bestPressureRange, tyreNamed } from "../../../lib/car/tyres.js";

/** How many cars a law is tried on: more in the nightly run. */
export const RUNS = Number(process.env.LAW_RUNS ?? 300);

/** Masses are put where a car has them, so that not nearly all cars fall on their nose. */
const likely: Readonly<Record<string, readonly [number, number]>> = {
  behindFrontAxle: [0.3, 1.1],
};

/**
 * Any car that its file may hold: every number anywhere in the range of the parameter table, every
 * optional part there or not. Joints of linkages are left out: few random joints make an axle.
 */
export const anyCar: fc.Arbitrary<Car> = partOf(carShape, "")
  .map(withOrder)
  .map((content) => carFromJson(content).car)
  .filter((car) => car !== undefined);

function partOf(shape: Shape, path: string): fc.Arbitrary<unknown> {
  switch (shape.type) {
    case "number":
      return numberOf(shape, path);
    case "text":
      return fc.constantFrom(...(shape.choices ?? ["any"]));
    case "list":
      return fc.array(partOf(shape.item, path), { minLength: 1, maxLength: shape.most });
    case "group":
      return groupOf(shape, path);
    case "variant":
    case "record":
      return fc.constant(undefined);
  }
}

function numberOf({ min, max, whole }: NumberShape, path: string): fc.Arbitrary<number> {
  if (whole) return fc.integer({ min, max });
  const name = path.split(".").pop() ?? "";
  const [low, high] = likely[name] ?? [min, max];
  const ends = fc.constantFrom(low, high);
  const between = fc.double({ min: low, max: high, noNaN: true });
  return fc.oneof({ weight: 1, arbitrary: ends }, { weight: 6, arbitrary: between });
}

function groupOf({ fields }: GroupShape, path: string): fc.Arbitrary<unknown> {
  const parts = Object.entries(fields).filter(([name]) => name !== "linkage");
  const arbitraries = parts.map(([name, field]) => [name, partOf(field, `${path}.${name}`)]);
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
        positions: value.positions.map((one: { rate?: number }) => ({ rate: one.rate ?? 0 })),
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

/** A best pressure is one that the tyre's data reach, and there is none where they have none. */
function withReachableBestPressure({ bestPressure, ...tyre }: Car["front"]["tyre"]) {
  const range = bestPressureRange(tyreNamed(tyre.name));
  if (range === undefined || bestPressure === undefined) return tyre;
  const { minimum, maximum } = range;
  return { ...tyre, bestPressure: Math.min(maximum, Math.max(minimum, bestPressure)) };
}

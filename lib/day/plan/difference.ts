import type { Car, CarLever } from "../../car/car.js";
import type { Change, End, EndLever } from "../../change/change.js";
import { carLenses, endLenses } from "../../change/levers.js";

/** What differs between two set-ups of a car. */
export interface SetUpDifference {
  /** Levers that were moved, one change for each. */
  readonly changes: readonly Change[];
  /** Paths of all else that is not the same, such as "rear.track". */
  readonly other: readonly string[];
}

/** What was changed from one set-up to another. */
export function differenceOfSetUps(before: Car, after: Car): SetUpDifference {
  const changes = [...endChanges(before, after, "front"), ...endChanges(before, after, "rear")];
  const all = [...changes, ...carChanges(before, after)];
  return { changes: all, other: differingPaths(before, withLeversOf(before, after), "") };
}

function endChanges(before: Car, after: Car, end: End): Change[] {
  const levers = Object.keys(endLenses) as EndLever[];
  return levers.flatMap((lever): Change[] => {
    const [old, now] = [endLenses[lever].get(before[end]), endLenses[lever].get(after[end])];
    const by = { left: moved(old.left, now.left), right: moved(old.right, now.right) };
    if (by.left === by.right) return by.left === 0 ? [] : [{ lever, end, by: by.left }];
    return (["left", "right"] as const)
      .filter((side) => by[side] !== 0)
      .map((side) => ({ lever, end, side, by: by[side] }));
  });
}

function carChanges(before: Car, after: Car): Change[] {
  const levers = Object.keys(carLenses) as CarLever[];
  return levers.flatMap((lever) => {
    const by = moved(carLenses[lever].get(before) ?? 0, carLenses[lever].get(after) ?? 0);
    return by === 0 ? [] : [{ lever, by }];
  });
}

/** How far a number moved, free of the dust of adding and taking away. */
function moved(from: number, to: number): number {
  const by = to - from;
  const dust = 1e-9 * Math.max(Math.abs(from), Math.abs(to), 1e-3);
  return Math.abs(by) <= dust ? 0 : Number(by.toPrecision(10));
}

/** The second car with all levers where the first one has them: what is left is no set-up change. */
function withLeversOf(before: Car, after: Car): Car {
  const ends = (["front", "rear"] as const).map((end) =>
    Object.values(endLenses).reduce(
      (axle, { get, set }) => set(axle, get(before[end])),
      after[end],
    ),
  );
  const [front = after.front, rear = after.rear] = ends;
  return Object.values(carLenses).reduce<Car>(
    (car, { get, set }) => set(car, get(before) ?? get(car) ?? 0),
    { ...after, front, rear },
  );
}

function differingPaths(a: unknown, b: unknown, path: string): string[] {
  if (Object.is(a, b)) return [];
  if (!isGroup(a) || !isGroup(b)) return [path];
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return names.flatMap((name) =>
    differingPaths(a[name], b[name], path === "" ? name : `${path}.${name}`),
  );
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

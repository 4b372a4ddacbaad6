import { type MapAxis, type PhaseName, settable } from "@rollbook/lib";

/** What the reader has chosen: keys of levers, and values in SI. */
export interface MapState {
  readonly along: string;
  readonly up: string;
  /** Nothing where the car has two levers only. */
  readonly third?: string;
  /** Of the third lever; left out: as the car has it. */
  readonly value?: number;
  readonly phase: PhaseName;
  /** Where the reading mark is; left out: at the present set-up. */
  readonly mark?: { readonly x: number; readonly y: number };
}

/** Levers that make a good first map, best first. */
const liked = ["front-springRate", "rear-springRate", "front-barPosition", "rear-barPosition"];

/** The map that is shown before anything is chosen; nothing where the car has too few levers. */
export function firstState(axes: readonly MapAxis[]): MapState | undefined {
  const keys = axes.map(({ key }) => key);
  const rank = (key: string) => (liked.includes(key) ? liked.indexOf(key) : liked.length);
  const [along, up] = [...keys].sort((a, b) => rank(a) - rank(b));
  if (along === undefined || up === undefined) return undefined;
  const third = ["front-tyrePressure", ...keys].find(
    (key) => keys.includes(key) && key !== along && key !== up,
  );
  return { along, up, phase: "middle", ...(third === undefined ? {} : { third }) };
}

/** The same map with one lever chosen anew; where another part had it, the two change places. */
export function withLever(state: MapState, part: "along" | "up" | "third", key: string): MapState {
  const { value, mark, ...rest } = state;
  const other = (["along", "up", "third"] as const).find((name) => state[name] === key);
  const swapped = other === undefined ? {} : { [other]: state[part] };
  const changed = { ...rest, ...swapped, [part]: key };
  const sameThird = changed.third === state.third && value !== undefined;
  const sameMap = changed.along === state.along && changed.up === state.up && mark !== undefined;
  return { ...changed, ...(sameThird ? { value } : {}), ...(sameMap ? { mark } : {}) };
}

/** The axes of a state, in full. */
export function axesIn(state: MapState, axes: readonly MapAxis[]) {
  const named = (key: string | undefined) => axes.find((axis) => axis.key === key);
  const [along, up] = [named(state.along), named(state.up)];
  if (along === undefined || up === undefined) throw new RangeError("a map needs two levers.");
  return { along, up, third: named(state.third) };
}

/** Where the reading mark is, on settings that can be made. */
export function markOf({ mark }: MapState, along: MapAxis, up: MapAxis): { x: number; y: number } {
  return {
    x: settable(along, mark?.x ?? along.present),
    y: settable(up, mark?.y ?? up.present),
  };
}

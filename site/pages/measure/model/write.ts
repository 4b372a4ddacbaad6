import {
  type Car,
  type Certainty,
  type Content,
  carFromJson,
  type Measured,
  type Source,
  valueAtPlace,
  withValueAtPlace,
} from "@rollbook/lib";
import type { Before } from "../../../store/measured-sheets.js";

/** A measured number and its place in the car file. */
export interface Write extends Measured {
  readonly path: string;
}

/** Who measured, and on which day. */
export interface Measuring {
  /** YYYY-MM-DD */
  readonly when: string;
  readonly by: string;
  /** Measured, where it is left out; what was learned stays an estimate. */
  readonly how?: Source;
}

export type { Before };

const content = (car: Car) => car as unknown as Content;

/** What a number says of itself in the car file. */
export function certaintyOf(
  { spread }: Measured,
  { when, by, how = "measured" }: Measuring,
): Certainty {
  return { how, spread: Number(spread.toPrecision(3)), when, ...(by !== "" && { by }) };
}

/** A car, or any part of its content, with a number at its place and how sure it is. */
export function withMeasured<Part extends Content>(part: Part, write: Write, by: Measuring): Part {
  const { path, value } = write;
  const known = { ...((part.known ?? {}) as object), [path]: certaintyOf(write, by) };
  return {
    ...withValueAtPlace(part, path, Number(value.toPrecision(6))),
    known,
  } as unknown as Part;
}

/**
 * The car with measured numbers written into it, what stood there before, or what is wrong with it then.
 */
export function written(
  car: Car,
  writes: readonly Write[],
  by: Measuring,
):
  | { readonly car: Car; readonly before: readonly Before[] }
  | { readonly faults: readonly string[] } {
  const changed = writes.reduce((part, write) => withMeasured(part, write, by), content(car));
  const read = carFromJson(changed);
  if (read.faults) return { faults: read.faults };
  return { car: read.car, before: writes.map(({ path }) => beforeAt(content(car), path)) };
}

/** What stands at a place and how sure it is. */
export function beforeAt(part: Content, path: string): Before {
  const known = (part.known ?? {}) as Readonly<Record<string, Certainty>>;
  return { path, value: valueAtPlace(part, path), known: known[path] };
}

/** The content as it was before, at those places; all fields in the order in which they were. */
export function putBack<Part extends Content>(part: Part, before: readonly Before[]): Part {
  return before.reduce((back, { path, value, known: entry }) => {
    const now = (back.known ?? {}) as Readonly<Record<string, Certainty>>;
    const { [path]: _, ...others } = now;
    const known = entry ? { ...now, [path]: entry } : others;
    const content = withValueAtPlace(back, path, value);
    const { known: gone, ...rest } = content;
    return (Object.keys(known).length > 0 ? { ...content, known } : rest) as Part;
  }, part);
}

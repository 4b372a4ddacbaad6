import {
  type Car,
  type Certainty,
  type Content,
  carFromJson,
  type Measured,
  valueAtPlace,
  withValueAtPlace,
} from "@rollbook/lib";

/** A measured number and its place in the car file. */
export interface Write extends Measured {
  readonly path: string;
}

/** Who measured, and on which day. */
export interface Measuring {
  /** YYYY-MM-DD */
  readonly when: string;
  readonly by: string;
}

/** What stood at a place before, for the way back. */
export interface Before {
  readonly path: string;
  readonly value: unknown;
  readonly known: Certainty | undefined;
}

const content = (car: Car) => car as unknown as Content;

/** What a measured number says of itself in the car file. */
export function certaintyOf({ spread }: Measured, { when, by }: Measuring): Certainty {
  return { how: "measured", spread: Number(spread.toPrecision(3)), when, ...(by !== "" && { by }) };
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

/** The content as it was before, at those places. */
export function putBack<Part extends Content>(part: Part, before: readonly Before[]): Part {
  return before.reduce((back, { path, value, known: entry }) => {
    const { [path]: _, ...others } = (back.known ?? {}) as Readonly<Record<string, Certainty>>;
    const known = entry ? { ...others, [path]: entry } : others;
    const { known: gone, ...rest } = withValueAtPlace(back, path, value);
    return (Object.keys(known).length > 0 ? { ...rest, known } : rest) as Part;
  }, part);
}

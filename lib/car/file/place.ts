import { carShape } from "./car-shape.js";
import type { NumberShape, Shape } from "./shape.js";

/** A place in a car file: its fields from the outside in, such as "front.bar.positions.0.rate". */
export type Path = string;

/** The content of a car file, or any part of it. */
export type Content = Readonly<Record<string, unknown>>;

const isPart = (value: unknown): value is Content => typeof value === "object" && value !== null;

/** The shape that the car file gives a place, whatever is in it; undefined where it knows none. */
export function shapeAt(path: Path): Shape | undefined {
  return path
    .split(".")
    .reduce<Shape | undefined>((shape, name) => shape && inside(shape, name), carShape);
}

/** The shape of one field or entry of a part; of a variant only where the part says its kind. */
function inside(shape: Shape, name: string, part?: unknown): Shape | undefined {
  if (shape.type === "list") return /^\d+$/.test(name) ? shape.item : undefined;
  const fields = shape.type === "variant" ? ofKind(shape.kinds, part)?.fields : fieldsOf(shape);
  return fields && Object.hasOwn(fields, name) ? fields[name] : undefined;
}

const fieldsOf = (shape: Shape) => (shape.type === "group" ? shape.fields : undefined);

function ofKind<T>(kinds: Readonly<Record<string, T>>, part: unknown): T | undefined {
  const kind = String(valueAtPlace(part, "kind"));
  return Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
}

/** What stands at a place, or undefined. */
export function valueAtPlace(content: unknown, path: Path): unknown {
  return path
    .split(".")
    .reduce<unknown>(
      (part, name) => (isPart(part) && Object.hasOwn(part, name) ? part[name] : undefined),
      content,
    );
}

/** The number that a content has at a place, with its shape; undefined where it has none. */
export function numberAt(
  content: unknown,
  path: Path,
): { readonly shape: NumberShape; readonly value: number } | undefined {
  let [shape, value]: [Shape | undefined, unknown] = [carShape, content];
  for (const name of path.split(".")) {
    shape = shape && inside(shape, name, value);
    value = valueAtPlace(value, name);
  }
  return shape?.type === "number" && typeof value === "number" ? { shape, value } : undefined;
}

/** The content with another value at a place, parts on the way made where they are missing; undefined takes it out. */
export function withValueAtPlace(content: Content, path: Path, value: unknown): Content {
  const [name = "", ...rest] = path.split(".");
  if (Array.isArray(content)) return withItem(content, Number(name), rest, value);
  const { [name]: present, ...others } = content;
  if (rest.length === 0) return value === undefined ? others : { ...content, [name]: value };
  if (!isPart(present) && value === undefined) return content;
  const part = withValueAtPlace(isPart(present) ? present : {}, rest.join("."), value);
  return { ...content, [name]: part };
}

/** The list with another entry, or without one; as it is where it has no such entry. */
function withItem(
  list: readonly unknown[],
  index: number,
  rest: readonly string[],
  value: unknown,
): Content {
  const item = list[index];
  const next =
    rest.length === 0 ? value : withValueAtPlace(isPart(item) ? item : {}, rest.join("."), value);
  const items = list.flatMap((entry, i) =>
    i !== index ? [entry] : next === undefined ? [] : [next],
  );
  return items as unknown as Content;
}

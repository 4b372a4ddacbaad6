import { carShape } from "./car-shape.js";
import type { NumberShape, Shape } from "./shape.js";

/** A place in a car file: its fields from the outside in, such as "front.bar.positions.0.rate". */
export type Path = string;

/** The content of a car file, or any part of it. */
export type Content = Readonly<Record<string, unknown>>;

const isPart = (value: unknown): value is Content => typeof value === "object" && value !== null;

/** The place in general: "front.track" and "rear.track" are both "{end}.track". */
export function generalPlace(path: Path): string {
  return path
    .replace(/\b(front|rear)\b/g, "{end}")
    .replace(/\b(left|right)\b/g, "{side}")
    .replace(/\.\d+/g, ".{n}");
}

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
  return withValue(content, path.split("."), value);
}

function withValue(content: Content, [name = "", ...rest]: string[], value: unknown): Content {
  if (Array.isArray(content)) return withItem(content, Number(name), rest, value);
  if (rest.length === 0)
    return value === undefined ? without(content, name) : { ...content, [name]: value };
  const present = valueAtPlace(content, name);
  if (!isPart(present) && value === undefined) return content;
  return { ...content, [name]: withValue(isPart(present) ? present : {}, rest, value) };
}

function without({ ...content }: Record<string, unknown>, name: string): Content {
  delete content[name];
  return content;
}

/** The list with another entry, or without one; as it is where it has no such entry. */
function withItem(
  list: readonly unknown[],
  index: number,
  rest: string[],
  value: unknown,
): Content {
  const changed = (item: unknown) =>
    rest.length === 0 ? value : withValue(isPart(item) ? item : {}, rest, value);
  const items = list.map((item, i) => (i === index ? changed(item) : item));
  return items.filter((item, i) => i !== index || item !== undefined) as unknown as Content;
}

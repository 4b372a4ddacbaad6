import { carShape, type Shape } from "@rollbook/lib";

/** A place in a car file: its fields from the outside in, such as "front.bar.positions.0.rate". */
export type Path = string;

/** The content of a car file, or any part of it. */
export type Content = Readonly<Record<string, unknown>>;

const isPart = (value: unknown): value is Content => typeof value === "object" && value !== null;

/** The shape that the car file gives a place; undefined where it knows none. */
export function shapeAt(path: Path): Shape | undefined {
  return path.split(".").reduce<Shape | undefined>(inside, carShape);
}

function inside(shape: Shape | undefined, name: string): Shape | undefined {
  if (shape?.type === "list") return /^\d+$/.test(name) ? shape.item : undefined;
  if (shape?.type !== "group") return undefined;
  return Object.hasOwn(shape.fields, name) ? shape.fields[name] : undefined;
}

/** What stands at a place, or undefined. */
export function valueAt(content: unknown, path: Path): unknown {
  return path
    .split(".")
    .reduce<unknown>(
      (part, name) => (isPart(part) && Object.hasOwn(part, name) ? part[name] : undefined),
      content,
    );
}

/** The content with another value at a place, parts on the way made where they are missing; undefined takes it out. */
export function withValue(content: Content, path: Path, value: unknown): Content {
  const [name = "", ...rest] = path.split(".");
  if (Array.isArray(content)) return withItem(content, Number(name), rest, value);
  const { [name]: present, ...others } = content;
  if (rest.length === 0) return value === undefined ? others : { ...content, [name]: value };
  if (!isPart(present) && value === undefined) return content;
  const part = withValue(isPart(present) ? present : {}, rest.join("."), value);
  return { ...content, [name]: part };
}

function withItem(
  list: readonly unknown[],
  index: number,
  rest: readonly string[],
  value: unknown,
): Content {
  const item = list[index];
  const next =
    rest.length === 0 ? value : withValue(isPart(item) ? item : {}, rest.join("."), value);
  const items = next === undefined ? list.toSpliced(index, 1) : list.with(index, next);
  return items as unknown as Content;
}

/** The place in general: "front.track" and "rear.track" are both "{end}.track". */
export function keyOf(path: Path): string {
  return path
    .replace(/\b(front|rear)\b/g, "{end}")
    .replace(/\b(left|right)\b/g, "{side}")
    .replace(/\.\d+/g, ".{n}");
}

/** Every place that a general one stands for. */
export function placesOf(key: string): Path[] {
  const each = (text: string, mark: string, names: readonly string[]) =>
    text.includes(mark) ? names.map((name) => text.replace(mark, name)) : [text];
  return each(key, "{end}", ["front", "rear"]).flatMap((path) =>
    each(path, "{side}", ["left", "right"]),
  );
}

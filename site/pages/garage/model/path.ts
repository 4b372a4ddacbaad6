import type { Path } from "@rollbook/lib";

export {
  type Content,
  type Path,
  shapeAt,
  valueAtPlace as valueAt,
  withValueAtPlace as withValue,
} from "@rollbook/lib";

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

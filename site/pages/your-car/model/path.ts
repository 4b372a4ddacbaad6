import type { Path } from "@rollbook/lib";

export {
  type Content,
  generalPlace as keyOf,
  type Path,
  shapeAt,
  valueAtPlace as valueAt,
  withValueAtPlace as withValue,
} from "@rollbook/lib";

/** Every place that a general one stands for. */
export function placesOf(key: string): Path[] {
  const each = (text: string, mark: string, names: readonly string[]) =>
    text.includes(mark) ? names.map((name) => text.replace(mark, name)) : [text];
  return each(key, "{end}", ["front", "rear"]).flatMap((path) =>
    each(path, "{side}", ["left", "right"]),
  );
}

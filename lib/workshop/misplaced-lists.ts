import type { Shape } from "../car/file/shape.js";

/** Lists that stand where a group of fields should: to JavaScript a list has fields too. */
export function misplacedLists(shape: Shape, value: unknown, path = ""): string[] {
  if (typeof value !== "object" || value === null) return [];
  const parts = value as Readonly<Record<string, unknown>>;
  const at = (name: string) => (path === "" ? name : `${path}.${name}`);
  if (shape.type === "list" && Array.isArray(value))
    return value.flatMap((item, i) => misplacedLists(shape.item, item, at(String(i))));
  if (shape.type !== "group") return [];
  if (Array.isArray(value)) return [`${path} is a list but must be a group of fields.`];
  return Object.entries(shape.fields).flatMap(([name, field]) =>
    misplacedLists(field, parts[name], at(name)),
  );
}

import type { Shape } from "./shape.js";

/** Paths of the fields that a value has and its shape does not know. */
export function unknownFieldsOf(shape: Shape, value: unknown, path = ""): string[] {
  if (typeof value !== "object" || value === null) return [];
  if (shape.type === "list") {
    const items = Array.isArray(value) ? value : [];
    return items.flatMap((item, i) => unknownFieldsOf(shape.item, item, `${path}.${i}`));
  }
  if (shape.type === "record")
    return Object.entries(value).flatMap(([name, part]) =>
      unknownFieldsOf(shape.item, part, `${path}.${name}`),
    );
  const fields = fieldsOf(shape, value);
  return Object.entries(value).flatMap(([name, part]) => {
    const here = path === "" ? name : `${path}.${name}`;
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    return field === undefined ? [here] : unknownFieldsOf(field, part, here);
  });
}

function fieldsOf(shape: Shape, value: object): Readonly<Record<string, Shape>> {
  if (shape.type === "group") return shape.fields;
  if (shape.type !== "variant" || !("kind" in value)) return {};
  return shape.kinds[String(value.kind)]?.fields ?? {};
}

import { carShape, type NumberShape, type Shape } from "@rollbook/lib";
import type { Content, Path } from "./path.js";

/** A place of a car file that holds a number or a text, and what stands there. */
export interface Leaf {
  readonly path: Path;
  readonly shape: Exclude<Shape, { type: "group" | "list" | "record" | "variant" }>;
  readonly value: unknown;
}

/** Every place that a content has or must have; joints of linkages and how sure numbers are, are left to their file. */
export function leavesOf(content: Content): Leaf[] {
  return inPart(carShape, content, "");
}

function inPart(shape: Shape, value: unknown, path: Path): Leaf[] {
  if (value === undefined && shape.optional) return [];
  switch (shape.type) {
    case "variant":
    case "record":
      return [];
    case "group":
      return Object.entries(shape.fields).flatMap(([name, field]) =>
        inPart(
          field,
          (value as Content | undefined)?.[name],
          path === "" ? name : `${path}.${name}`,
        ),
      );
    case "list":
      return Array.isArray(value)
        ? value.flatMap((item, index) => inPart(shape.item, item, `${path}.${index}`))
        : [];
    default:
      return [{ path, shape, value }];
  }
}

export const isNumber = (leaf: Leaf): leaf is Leaf & { shape: NumberShape } =>
  leaf.shape.type === "number";

import { carShape, demoCar, type GroupShape, parameters, type Shape } from "@rollbook/lib";
import type { Content } from "./path.js";

/** A part of a car file to begin with: the middle of each row of the parameter table, nothing optional. */
export function beginning(shape: Shape): unknown {
  switch (shape.type) {
    case "number":
      return shape.parameter === undefined ? shape.min : parameters[shape.parameter].start;
    case "text":
      return shape.choices?.[0] ?? "";
    case "list":
      return [beginning(shape.item)];
    case "variant":
    case "record":
      return undefined;
    case "group":
      return Object.fromEntries(
        Object.entries(shape.fields)
          .filter(([, field]) => !field.optional)
          .map(([name, field]) => [name, beginning(field)]),
      );
  }
}

/** A file's content made whole enough to be worked on: what it lacks, or has in no usable form, is the demo car's. */
export const mended = (content: unknown): Content => whole(carShape, content, demoCar) as Content;

function whole(shape: Shape, value: unknown, spare: unknown): unknown {
  if (value === undefined && shape.optional) return undefined;
  const instead = spare ?? beginning(shape);
  switch (shape.type) {
    case "number":
      return typeof value === "number" && Number.isFinite(value) ? value : instead;
    case "text":
      return typeof value === "string" ? value : instead;
    case "variant":
    case "record":
      return typeof value === "object" ? (value ?? undefined) : undefined;
    case "list":
      if (!Array.isArray(value) || value.length === 0) return instead;
      return value.slice(0, shape.most).map((item) => whole(shape.item, item, undefined));
    case "group":
      return wholeGroup(shape, value, instead as Content);
  }
}

function wholeGroup(shape: GroupShape, value: unknown, instead: Content): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return instead;
  const fields = Object.entries(shape.fields).map(([name, field]) => [
    name,
    whole(field, (value as Content)[name], instead[name]),
  ]);
  const known = fields.filter(([, field]) => field !== undefined);
  const others = Object.entries(value).filter(([name]) => !Object.hasOwn(shape.fields, name));
  return Object.fromEntries([...known, ...others]);
}

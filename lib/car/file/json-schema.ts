import { quantities } from "../../units.js";
import type { GroupShape, Shape } from "./shape.js";

type Json = Readonly<Record<string, unknown>>;

/** What a file says of itself before its fields. */
export interface FileHead {
  readonly title: string;
  readonly version: number;
  /** What it says it is; a car says nothing. */
  readonly kind?: string;
}

/** JSON Schema (2020-12) of a file; fields that are not known are allowed and kept. */
export function fileSchema(shape: GroupShape, { title, version, kind }: FileHead): Json {
  const definitions: Record<string, Json> = {};
  const { properties, required, ...rest } = objectOf(shape, definitions);
  const head = {
    ...(kind !== undefined && { kind: { description: "What this file is", const: kind } }),
    version: { description: "Version of this format", const: version },
  };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title,
    ...rest,
    required: kind === undefined ? required : ["kind", ...required],
    properties: { ...head, ...properties },
    $defs: definitions,
  };
}

/** Schema of a shape; what has a name is said once, among the definitions. */
function schemaOf(shape: Shape, definitions: Record<string, Json>): Json {
  const description = descriptionOf(shape);
  if (shape.definition === undefined) return { description, ...bodyOf(shape, definitions) };
  definitions[shape.definition] ??= bodyOf(shape, definitions);
  return { description, $ref: `#/$defs/${shape.definition}` };
}

function bodyOf(shape: Shape, definitions: Record<string, Json>): Json {
  switch (shape.type) {
    case "number":
      return { type: shape.whole ? "integer" : "number", minimum: shape.min, maximum: shape.max };
    case "text":
      if (shape.choices !== undefined) return { enum: shape.choices };
      return { type: "string", ...(shape.format && { format: shape.format }) };
    case "list":
      return {
        type: "array",
        items: schemaOf(shape.item, definitions),
        minItems: 1,
        maxItems: shape.most,
      };
    case "record":
      return {
        type: "object",
        additionalProperties: schemaOf(shape.item, definitions),
        maxProperties: shape.most,
      };
    case "variant":
      return { oneOf: Object.values(shape.kinds).map((kind) => schemaOf(kind, definitions)) };
    case "group":
      return objectOf(shape, definitions);
  }
}

function objectOf({ fields }: GroupShape, definitions: Record<string, Json>) {
  const entries = Object.entries(fields);
  const properties = entries.map(([name, field]) => [name, schemaOf(field, definitions)]);
  return {
    type: "object",
    properties: Object.fromEntries(properties) as Json,
    required: entries.filter(([, field]) => !field.optional).map(([name]) => name),
  };
}

/** What a field is, with its SI unit and the unit readers know. */
function descriptionOf(shape: Shape): string {
  if (shape.type !== "number") return shape.about;
  const { si } = quantities[shape.quantity];
  return si === "" ? shape.about : `${shape.about}, ${si}`;
}

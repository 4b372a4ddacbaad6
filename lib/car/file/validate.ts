import * as v from "valibot";
import { quantities } from "../../units.js";
import { cut, inShort } from "./in-short.js";
import {
  type GroupShape,
  type ListShape,
  type NumberShape,
  type RecordShape,
  rangeInFile,
  rangeInHandy,
  type Shape,
  type TextShape,
  type VariantShape,
} from "./shape.js";

/** A check of one shape: everything wrong with a value, one sentence each, with the path of the field in front. */
export function validatorOf(shape: Shape): (value: unknown) => string[] {
  const schema = schemaOf(shape);
  return (value) => sentences(v.safeParse(schema, value).issues);
}

function sentences(issues: readonly v.BaseIssue<unknown>[] | undefined): string[] {
  return (issues ?? []).map(
    (issue) => `${cut(v.getDotPath(issue) ?? "The file")} ${issue.message}`,
  );
}

function schemaOf(shape: Shape): v.GenericSchema {
  const schema = requiredSchemaOf(shape);
  return shape.optional ? v.optional(schema) : schema;
}

function requiredSchemaOf(shape: Shape): v.GenericSchema {
  switch (shape.type) {
    case "number":
      return numberSchema(shape);
    case "text":
      return textSchema(shape);
    case "group":
      return groupSchema(shape);
    case "list":
      return listSchema(shape);
    case "record":
      return recordSchema(shape);
    case "variant":
      return variantSchema(shape);
  }
}

function numberSchema(shape: NumberShape): v.GenericSchema {
  const { min, max, whole } = shape;
  const fits = (value: number) =>
    value >= min && value <= max && (!whole || Number.isInteger(value));
  const say = ({ input }: { input: unknown }) => numberFault(shape, input);
  return v.pipe(v.number(say), v.check(fits, say));
}

/** Says the range in SI, as the file has it, and in the unit of data sheets. */
function numberFault(shape: NumberShape, input: unknown): string {
  const [file, handy] = [rangeInFile(shape), rangeInHandy(shape)];
  const kind = shape.whole ? "a whole number " : "";
  const unit = typeof input === "number" ? ` ${quantities[shape.quantity].si}` : "";
  const also = file === handy ? "" : ` (${handy})`;
  return `is ${inShort(input)}${unit.trimEnd()} but must be ${kind}from ${file}${also}.`;
}

function textSchema({ choices, format }: TextShape): v.GenericSchema {
  if (format === "date") return v.pipe(v.string(notADay), v.check(isDay, notADay));
  const wanted = choices === undefined ? "a text" : `one of: ${choices.join(", ")}`;
  const say = ({ input }: { input: unknown }) => `is ${inShort(input)} but must be ${wanted}.`;
  return choices === undefined
    ? v.pipe(v.string(say), v.maxLength(LONGEST, tooLong))
    : v.picklist(choices, say);
}

const isDay = (text: string) =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00Z`).toJSON()?.slice(0, 10) === text; // there is no 30 February

const notADay = ({ input }: { input: unknown }) =>
  `is ${inShort(input)} but must be a day, as YYYY-MM-DD.`;

const LONGEST = 10_000;
const tooLong = `is longer than ${LONGEST} characters.`;

/** To JavaScript a list has fields too. */
function groupSchema(shape: GroupShape): v.GenericSchema {
  const noList = v.custom<unknown>((value) => !Array.isArray(value), notAGroup);
  return v.pipe(noList, fieldsSchema(shape));
}

function fieldsSchema({ fields }: GroupShape): v.GenericSchema {
  const entries = Object.entries(fields).map(([name, field]) => [name, schemaOf(field)]);
  return v.looseObject(Object.fromEntries(entries), notAGroup);
}

function listSchema({ item, most }: ListShape): v.GenericSchema {
  const say = ({ input }: { input: unknown }) => `is ${inShort(input)} but must be a list.`;
  return v.pipe(
    v.custom<unknown[]>(Array.isArray, say),
    v.minLength(1, "must have at least one entry."),
    v.maxLength(most, `must have at most ${most} entries.`), // else its entries are not looked at
    v.array(schemaOf(item)),
  );
}

function recordSchema({ item, names, most }: RecordShape): v.GenericSchema {
  const few = (value: object) => Object.keys(value).length <= most;
  const noList = v.custom<object>((value) => !Array.isArray(value), notAGroup);
  const group = v.custom<object>((value) => typeof value === "object" && value !== null, notAGroup);
  const short = v.check(few, `must have at most ${most} ${names}.`);
  return v.pipe(noList, group, short, v.record(v.string(), schemaOf(item)));
}

function variantSchema({ kinds }: VariantShape): v.GenericSchema {
  const groups = Object.values(kinds).map(fieldsSchema) as ReturnType<typeof v.looseObject>[];
  const wanted = Object.keys(kinds).join(", ");
  const say = ({ input }: { input: unknown }) =>
    `is ${inShort(input)} but must be one of: ${wanted}.`;
  return v.variant("kind", groups as never, say);
}

function notAGroup({ input, received }: { input: unknown; received: string }): string {
  return received === "undefined"
    ? "is missing."
    : `is ${inShort(input)} but must be a group of fields.`;
}

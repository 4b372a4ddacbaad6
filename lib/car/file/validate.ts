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
  return (value) => faultsAt("", shape, value);
}

/** What is wrong with what stands at a place, itself and all that is in it. */
function faultsAt(path: string, shape: Shape, value: unknown): string[] {
  if (value === undefined) return shape.optional ? [] : [told(path, "is missing.")];
  if (shape.type === "variant") return variantFaults(path, shape, value);
  const fault = faultOf(shape, value);
  if (fault !== undefined) return [told(path, fault)];
  if (shape.type === "group") return fieldFaults(path, shape, value as Part);
  if (shape.type === "list" || shape.type === "record")
    return itemFaults(path, shape.item, value as Part);
  return [];
}

function faultOf(shape: Exclude<Shape, VariantShape>, value: unknown): string | undefined {
  switch (shape.type) {
    case "number":
      return numberFault(shape, value);
    case "text":
      return textFault(shape, value);
    case "group":
      return groupFault(value);
    case "list":
      return listFault(shape, value);
    case "record":
      return recordFault(shape, value);
  }
}

type Part = Readonly<Record<string, unknown>>;

const within = (path: string, name: string): string => (path === "" ? name : `${path}.${name}`);

const told = (path: string, fault: string): string =>
  `${cut(path === "" ? "The file" : path)} ${fault}`;

/** Says the range in SI, as the file has it, and in the unit of data sheets. */
function numberFault(shape: NumberShape, value: unknown): string | undefined {
  const { min, max, whole } = shape;
  const isNumber = typeof value === "number";
  if (isNumber && value >= min && value <= max && (!whole || Number.isInteger(value))) return;
  const [file, handy] = [rangeInFile(shape), rangeInHandy(shape)];
  const kind = whole ? "a whole number " : "";
  const unit = isNumber ? ` ${quantities[shape.quantity].si}` : "";
  const also = file === handy ? "" : ` (${handy})`;
  return `is ${inShort(value)}${unit.trimEnd()} but must be ${kind}from ${file}${also}.`;
}

const LONGEST = 10_000;

function textFault({ choices, format }: TextShape, value: unknown): string | undefined {
  const isText = typeof value === "string";
  if (format === "date") return isText && isDay(value) ? undefined : instead(value, aDay);
  if (choices !== undefined)
    return isText && choices.includes(value) ? undefined : instead(value, oneOf(choices));
  if (!isText) return instead(value, "a text");
  return value.length > LONGEST ? `is longer than ${LONGEST} characters.` : undefined;
}

const aDay = "a day, as YYYY-MM-DD";
const oneOf = (choices: readonly string[]) => `one of: ${choices.join(", ")}`;
const instead = (value: unknown, wanted: string) => `is ${inShort(value)} but must be ${wanted}.`;

const isDay = (text: string) =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00Z`).toJSON()?.slice(0, 10) === text; // there is no 30 February

const isObject = (value: unknown): value is Part => typeof value === "object" && value !== null;

/** To JavaScript a list has fields too. */
const groupFault = (value: unknown) =>
  isObject(value) && !Array.isArray(value) ? undefined : instead(value, "a group of fields");

function fieldFaults(path: string, { fields }: GroupShape, part: Part): string[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const value = Object.hasOwn(part, name) ? part[name] : undefined;
    return faultsAt(within(path, name), field, value);
  });
}

const itemFaults = (path: string, item: Shape, part: Part): string[] =>
  Object.entries(part).flatMap(([name, value]) => faultsAt(within(path, name), item, value));

function listFault({ most }: ListShape, value: unknown): string | undefined {
  if (!Array.isArray(value)) return instead(value, "a list");
  if (value.length === 0) return "must have at least one entry.";
  return value.length > most ? `must have at most ${most} entries.` : undefined; // else its entries are not looked at
}

function recordFault({ names, most }: RecordShape, value: unknown): string | undefined {
  const few = isObject(value) && Object.keys(value).length <= most;
  return groupFault(value) ?? (few ? undefined : `must have at most ${most} ${names}.`);
}

function variantFaults(path: string, { kinds }: VariantShape, value: unknown): string[] {
  const wanted = oneOf(Object.keys(kinds));
  if (!isObject(value)) return [told(path, instead(value, wanted))];
  const kind = Object.hasOwn(value, "kind") ? value.kind : undefined;
  const shape = typeof kind === "string" && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
  if (shape) return fieldFaults(path, shape, value);
  return [told(within(path, "kind"), instead(kind, wanted))];
}

import { type ParameterKey, parameters } from "../../parameters.js";
import { type Quantity, quantities } from "../../units.js";
import type { Differential } from "../car.js";

/** A number of the file: what it measures and the range it may have, SI. */
export interface NumberShape {
  readonly type: "number";
  readonly about: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  /** The row of the parameter table that it comes from. */
  readonly parameter?: ParameterKey;
}

/** A text of the file; with choices, one of them; or a day. */
export interface TextShape {
  readonly type: "text";
  readonly about: string;
  readonly choices?: readonly string[];
  /** A day as YYYY-MM-DD. */
  readonly format?: "date";
}

/** A part of the file that has fields of its own. */
export interface GroupShape<Fields = Readonly<Record<string, Shape>>> {
  readonly type: "group";
  readonly about: string;
  readonly fields: Fields;
}

/** Several parts of the same shape, one after the other. */
export interface ListShape<Item = Shape> {
  readonly type: "list";
  readonly about: string;
  readonly item: Item;
  readonly most: number;
}

/** Parts of the same shape, each under a name of its own. */
export interface RecordShape<Item = Shape> {
  readonly type: "record";
  readonly about: string;
  /** What the names are, in a word. */
  readonly names: string;
  readonly item: Item;
  readonly most: number;
}

/** A part that comes in several kinds and says which in its field `kind`. */
export interface VariantShape {
  readonly type: "variant";
  readonly about: string;
  readonly kinds: Readonly<Record<string, GroupShape>>;
}

/** What a part of a car file looks like; optional parts may be left out. */
export type Shape = (
  | NumberShape
  | TextShape
  | GroupShape
  | ListShape
  | RecordShape
  | VariantShape
) & {
  readonly optional?: true;
  /** A name for what stands in several places, so that a schema says it once. */
  readonly definition?: string;
};

/** The shape that a TypeScript type must have in the file: same fields, same optional ones. */
export type ShapeOf<T> = T extends number
  ? NumberShape
  : T extends string
    ? TextShape
    : T extends Differential // its kinds have the same fields, so it is no variant
      ? GroupShape<FieldsOf<T>>
      : T extends { readonly kind: string }
        ? VariantShape
        : T extends readonly (infer Item)[]
          ? ListShape<ShapeOf<Item>>
          : string extends keyof T
            ? RecordShape<ShapeOf<T[keyof T]>>
            : GroupShape<FieldsOf<T>>;

type FieldsOf<T> = {
  readonly [K in keyof T]-?: object extends Pick<T, K>
    ? ShapeOf<NonNullable<T[K]>> & { readonly optional: true }
    : ShapeOf<T[K]>;
};

/** A number that has its range, and its words where none are given, from the parameter table. */
export function number(key: ParameterKey, about?: string): NumberShape {
  const { name, quantity, min, max } = parameters[key];
  return { type: "number", about: about ?? name, quantity, min, max, whole: false, parameter: key };
}

/** A number with a range of its own. */
export function numberWithin(
  about: string,
  quantity: Quantity,
  min: number,
  max: number,
): NumberShape {
  return { type: "number", about, quantity, min, max, whole: false };
}

/** A whole number. */
export function count(about: string, min: number, max: number): NumberShape {
  return { type: "number", about, quantity: "count", min, max, whole: true };
}

/** A text, free or one of some choices. */
export function text(about: string, choices?: readonly string[]): TextShape {
  return choices === undefined ? { type: "text", about } : { type: "text", about, choices };
}

/** A day, as YYYY-MM-DD. */
export function day(about: string): TextShape {
  return { type: "text", about, format: "date" };
}

/** Parts under names of their own. */
export function record<Item>(
  about: string,
  names: string,
  item: Item,
  most: number,
): RecordShape<Item> {
  return { type: "record", about, names, item, most };
}

/** A part with fields. */
export function group<Fields>(about: string, fields: Fields): GroupShape<Fields> {
  return { type: "group", about, fields };
}

/** A list of parts. */
export function list<Item>(about: string, item: Item, most: number): ListShape<Item> {
  return { type: "list", about, item, most };
}

/** The same shape, with a name by which a schema says it once. */
export function defined<S extends object>(
  name: string,
  shape: S,
): S & { readonly definition: string } {
  return { ...shape, definition: name };
}

/** The same shape, for a part that may be left out. */
export function optional<S extends object>(shape: S): S & { readonly optional: true } {
  return { ...shape, optional: true };
}

/** The range of a number in SI, such as "5000 to 400000 N/m". */
export function rangeInFile({ quantity, min, max }: NumberShape): string {
  return `${tidy(min)} to ${tidy(max)} ${quantities[quantity].si}`.trim();
}

/** The range of a number in the unit of data sheets and gauges, such as "5 to 400 N/mm". */
export function rangeInHandy({ quantity, min, max }: NumberShape): string {
  const { unit, size } = quantities[quantity].handy;
  const [from, to] = [min, max].map((end) => tidy(end / size));
  return `${from} to ${to} ${unit}`.trim().replace(" °", "°");
}

function tidy(value: number): number {
  return Number(value.toPrecision(6));
}

import { type FirstAxle, type FirstCar, parameters, tyreRadiusOf } from "@rollbook/lib";
import type { Typed } from "../../../store/car-draft.js";
import { readTyped } from "../model/input.js";
import type { Field } from "../model/spec.js";

/** What is typed of a first car, by field. */
export type FirstTyped = Readonly<Record<string, Typed>>;

const from = (key: string, parameter: keyof typeof parameters, least?: number): Field => {
  const { quantity, min, max, decimals } = parameters[parameter];
  return { key, quantity, min: least ?? min, max, decimals };
};

/** Numbers of the whole car. */
export const wholeFields: readonly Field[] = [
  { ...from("mass", "mass"), min: 400 },
  { ...from("frontMass", "mass"), min: 120, max: 2000 },
  from("wheelbase", "wheelbase"),
];

/** Numbers of each axle; a bar may be none. */
export const axleFields: readonly Field[] = [
  from("track", "track"),
  from("pressure", "tyrePressure"),
  from("rideHeight", "rideHeight"),
  from("bar", "barDiameter"),
];

/** Questions with a few answers, the first being taken until another is chosen. */
export const choices = {
  driven: ["rear", "front", "all"],
  seat: ["left", "right", "middle"],
  frontKind: ["independent", "beam"],
  rearKind: ["independent", "beam"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type Choice = keyof typeof choices;

export function chosen(typed: FirstTyped, key: Choice): string {
  const text = typed[key]?.text ?? "";
  const all: readonly string[] = choices[key];
  return all.includes(text) ? text : (all[0] ?? "");
}

const tyre = /^\D*(\d{3})\s*\/\s*(\d{2})\s*[A-Z]*\s*(\d{2})\b/i;

/** m of a tyre by the size on its side, such as 195/50 R 15; nothing where it is none. */
export function radiusIn(text: string): number | undefined {
  const [width, aspect, rim] = (tyre.exec(text.trim()) ?? []).slice(1).map(Number);
  if (width === undefined || aspect === undefined || rim === undefined) return undefined;
  const radius = tyreRadiusOf({ width, aspect, rim });
  return radius > 0.2 && radius < 0.45 ? radius : undefined;
}

/** A first car, or the fields that it still lacks. */
export function givenFrom(
  typed: FirstTyped,
): { readonly given: FirstCar } | { readonly missing: readonly string[] } {
  const missing: string[] = [];
  const read = (key: string, field: Field): number => {
    const value = readTyped(typed[key], field);
    if (value === undefined && field.key === "bar") return 0; // no bar
    if (value === undefined || Number.isNaN(value)) missing.push(key);
    return value ?? Number.NaN;
  };
  const [mass = 0, frontMass = 0, wheelbase = 0] = wholeFields.map((field) =>
    read(field.key, field),
  );
  const radius = radiusIn(typed.tyre?.text ?? "");
  if (radius === undefined) missing.push("tyre");
  const axle = (end: "front" | "rear"): FirstAxle => {
    const [track = 0, pressure = 0, rideHeight = 0, bar = 0] = axleFields.map((field) =>
      read(`${end}.${field.key}`, field),
    );
    const kind = chosen(typed, `${end}Kind`) === "beam" ? "beam" : "independent";
    return { track, pressure, rideHeight, bar, kind, tyreRadius: radius ?? 0 };
  };
  const [front, rear] = [axle("front"), axle("rear")];
  const name = (typed.name?.text ?? "").trim();
  if (name === "") missing.unshift("name");
  const frontShare = frontMass / mass;
  if (missing.length === 0 && !(frontShare > 0.25 && frontShare < 0.75)) missing.push("frontMass");
  if (missing.length > 0) return { missing };
  const driven = chosen(typed, "driven") as FirstCar["driven"];
  const seat = chosen(typed, "seat") as FirstCar["seat"];
  return { given: { name, mass, frontShare, wheelbase, driven, seat, front, rear } };
}

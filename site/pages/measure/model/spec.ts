import { type Quantity, type SharpeningId, usualTools } from "@rollbook/lib";
import { rideForm } from "../../../store/ride-reading.js";

/** A number that is read off something: what it measures and where it can lie, SI. */
export interface Field {
  readonly key: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  /** Digits after the point in the metric unit. */
  readonly decimals: number;
}

/** How far a tool may be off: a field with what is usual. */
export interface Tool extends Field {
  readonly usual: number;
}

/** What a form asks for. */
export interface Spec {
  readonly id: MeasurementId;
  /** Asked for each axle by itself. */
  readonly ofAxle: boolean;
  /** Questions with a few answers, the first being the usual one. */
  readonly choices: readonly { readonly key: string; readonly values: readonly string[] }[];
  /** Read once or several times each. */
  readonly fields: readonly Field[];
  /** Read together, line by line. */
  readonly columns: readonly Field[];
  readonly tools: readonly Tool[];
}

/** What can be measured here. */
export type MeasurementId =
  | "four-scales"
  | "raised-axle"
  | "ride-rate"
  | "sill-weight"
  | "motion-ratio"
  | "linkage"
  | "tyre-rate"
  | "tyre-print"
  | "circle"
  | "ride";

/** What is measured with no form of its own: its numbers are typed in on Your car. */
export const withoutForm = [
  "alignment",
  "bar-and-links",
  "wheels",
  "travels",
  "people-and-fuel",
  "brake-share",
] as const satisfies readonly SharpeningId[];

/** Each that has a drawing of how it is done. */
export type DrawnId = MeasurementId | (typeof withoutForm)[number];

const field = (
  key: string,
  quantity: Quantity,
  [min, max, decimals]: readonly [number, number, number],
): Field => ({ key, quantity, min, max, decimals });

const mass = (key: string, most = 1500) => field(key, "mass", [0, most, 1]);
const small = (key: string, min: number, max: number) => field(key, "lengthSmall", [min, max, 1]);

const tool = (one: Field, usual: number): Tool => ({ ...one, usual });
const scale = tool(field("scale", "mass", [0.01, 20, 2]), 0.5); // kg: common practice, no source
const tape = (usual: number) => tool(small("tape", 1e-4, 0.03), usual);

const joint = (name: string, kinds: readonly string[] = []) => ({
  ...{ name, kinds },
  fields: [small(`${name}Y`, 0, 1.3), small(`${name}Z`, -0.1, 1.5)],
});

/** The joints that are measured, and for which kind of linkage where not for both. */
export const joints = [
  joint("lowerInner"),
  joint("lowerOuter"),
  joint("upperInner", ["double wishbone"]),
  joint("upperOuter", ["double wishbone"]),
  joint("strutTop", ["strut"]),
  joint("strutFoot", ["strut"]),
  joint("wheelCentre"),
];

/** Tyre pressures around a run on the circle. */
export const pressures = [
  { key: "frontBefore", end: "front", when: "before" },
  { key: "rearBefore", end: "rear", when: "before" },
  { key: "frontAfter", end: "front", when: "after" },
  { key: "rearAfter", end: "rear", when: "after" },
] as const;

const none = { ofAxle: false, choices: [], fields: [], columns: [], tools: [] } as const;

const wheels = ["frontLeft", "frontRight", "rearLeft", "rearRight"] as const;

/** All forms, in the order of the page. */
export const specs: readonly Spec[] = [
  {
    ...none,
    id: "four-scales",
    fields: wheels.map((key) => mass(key)),
    tools: [scale],
  },
  {
    ...none,
    id: "raised-axle",
    choices: [
      { key: "raised", values: ["front", "rear"] },
      { key: "at", values: ["hubs", "tyres"] },
      { key: "springs", values: ["held", "free"] },
    ],
    fields: [
      mass("level", 3000),
      mass("lifted", 3000),
      field("rise", "lengthSmall", [0.02, 1.5, 0]),
      small("frontHub", 0.1, 0.6),
      small("rearHub", 0.1, 0.6),
    ],
    tools: [scale, tape(1.5e-3)],
  },
  {
    ...none,
    id: "ride-rate",
    ofAxle: true,
    columns: [mass("added", 500), small("fallLeft", -0.02, 0.25), small("fallRight", -0.02, 0.25)],
    tools: [tape(0.7e-3)],
  },
  {
    ...none,
    id: "sill-weight",
    fields: [
      field("arm", "lengthSmall", [0.2, 1.5, 0]),
      field("apart", "lengthSmall", [0.4, 2.5, 0]),
      ...wheels.map((key) => mass(`loaded.${key}`)),
    ],
    columns: [mass("added", 500), small("nearFall", -0.02, 0.25), small("farRise", -0.05, 0.25)],
    tools: [tape(0.7e-3), scale],
  },
  {
    ...none,
    id: "motion-ratio",
    ofAxle: true,
    columns: [small("hub", -0.3, 0.9), small("spring", 0.02, 1)],
    tools: [tape(0.7e-3)],
  },
  {
    ...none,
    id: "linkage",
    ofAxle: true,
    choices: [{ key: "kind", values: ["double wishbone", "strut"] }],
    fields: joints.flatMap(({ fields }) => fields),
    tools: [tape(2e-3)],
  },
  {
    ...none,
    id: "tyre-rate",
    ofAxle: true,
    columns: [mass("load", 1200), small("hubHeight", 0.1, 0.6)],
    tools: [tape(0.5e-3)],
  },
  {
    ...none,
    id: "tyre-print",
    ofAxle: true,
    fields: [small("length", 0.02, 0.4), small("width", 0.05, 0.45), mass("load", 1200)],
    tools: [tape(2e-3), scale],
  },
  {
    ...none,
    id: "circle",
    choices: [{ key: "direction", values: ["left", "right"] }],
    fields: [
      field("radius", "length", [3, 200, 2]),
      small("rimDiameter", 0.2, 0.6),
      ...pressures.map(({ key }) => field(key, "pressure", [30e3, 500e3, 0])),
    ],
    columns: [field("steadyTime", "time", [2, 600, 2]), small("rimMark", -1.5, 3)],
    tools: [
      tool(field("radiusTape", "length", [0.005, 2, 2]), usualTools.radius),
      tool(field("stopwatch", "time", [0.002, 1, 3]), usualTools.stopwatch),
      tool(small("rimTape", 1e-4, 0.05), 5e-3),
      tool(field("gauge", "pressure", [100, 20e3, 1]), 3e3), // Pa: common practice, no source
    ],
  },
  {
    ...none,
    id: rideForm.id,
    columns: [
      field(rideForm.gradient, "rollGradient", [1e-4, 0.03, 2]),
      field(rideForm.spread, "rollGradient", [1e-6, 0.01, 2]),
    ],
  },
];

export const specOf = (id: MeasurementId): Spec =>
  specs.find((spec) => spec.id === id) ?? (specs[0] as Spec);

/** A lap of a circle, s. */
export const lapField: Field = field("lap", "time", [2, 600, 2]);

/** Readings of one field, lines of one form, laps of one run, and runs of one set-up that there is room for. */
export const MOST = { readings: 6, lines: 10, laps: 12, runs: 4 } as const;

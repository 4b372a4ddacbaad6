import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { PlainCar } from "./random-cars.js";

/** How a car is driven, as the script reads it; a speed or a radius. */
export interface PlainDriving {
  readonly speed?: number;
  readonly cornerRadius?: number;
  readonly longitudinalAcceleration?: number;
  readonly lateralJerk?: number;
  readonly grade?: number;
  readonly bank?: number;
}

type Wanted = "margin" | "hardest" | "moving";

export interface IndependentCase {
  readonly car: PlainCar;
  readonly driving: PlainDriving;
  readonly want: readonly Wanted[];
  /** follows the path in steps an eighth as long */
  readonly finely?: boolean;
}

interface Ends<T> {
  readonly front: T;
  readonly rear: T;
}

/** A state in balance; angles in rad, forces in N. */
export interface IndependentState {
  readonly lateralAcceleration: number;
  readonly steer: number;
  readonly sideSlip: number;
  readonly push: number;
  readonly yawMoment: number;
  readonly slipAngle: Ends<number>;
  readonly load: Ends<{ readonly left: number; readonly right: number }>;
  readonly lifted: Ends<boolean>;
  readonly tips: boolean;
}

/** What was asked for; null where the longitudinal acceleration cannot be given. */
export interface IndependentResult {
  readonly margin: (IndependentState & { readonly margin: number }) | null;
  /** end: "top" of the path, or why it ended while the turn still got harder */
  readonly hardest:
    | (IndependentState & { readonly end: "top" | "end" | "tips" | "wide" | "back" | "long" })
    | null;
  readonly moving: {
    readonly lateralAcceleration: number;
    readonly first: "front" | "rear" | null;
    readonly slipAngle: Ends<number>;
    readonly speed: number;
  };
}

/** One check of the script against a published number or an identity. */
export interface OwnCheck {
  readonly what: string;
  readonly found: number;
  readonly expected: number;
  /** absolute; null where found must be at most expected */
  readonly within: number | null;
}

/** Debian's Python, for whose packages site/commands/needs.ts cares. */
const python = "/usr/bin/python3";

/** The whole car in balance by Python, in the order of the cases. */
export function independently(cases: readonly IndependentCase[]): IndependentResult[] {
  return run("whole_car.py", cases) as IndependentResult[];
}

/** What the independent solution is itself checked by. */
export function ownChecks(tyre: object, cars: readonly PlainCar[]): OwnCheck[] {
  return run("checks.py", { tyre, cars }) as OwnCheck[];
}

function run(script: string, input: unknown): unknown {
  const path = fileURLToPath(new URL(script, import.meta.url));
  const done = spawnSync(python, ["-B", path], {
    input: JSON.stringify(input),
    encoding: "utf8",
    maxBuffer: 1e9,
  });
  if (done.error || /No module named 'scipy/.test(done.stderr))
    throw new Error(
      "The outside check of the whole car needs Debian's Python with scipy: sudo apt-get install python3-scipy",
    );
  if (done.status !== 0) throw new Error(`${script} failed:\n${done.stderr}`);
  return JSON.parse(done.stdout);
}

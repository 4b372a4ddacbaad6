import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { type FullTyre, magicFormula61Tyre } from "./magic-formula-61.js";
import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";
import { pressureIncrement } from "./magic-formula-61-side.js";

/** What a reader knows better of a tyre than its coefficients do. */
export interface TyreTuning {
  /** Friction along and across as a share of the tyre's own, 0.5–1.5; left out: 1. */
  readonly grip?: number;
  /** Pressure of most friction along and across, Pa; left out: the tyre's own. */
  readonly bestPressure?: number;
}

/** Scale of friction that a tyre may be given, without unit. */
const gripRange = { minimum: 0.5, maximum: 1.5 };

/** Whether friction has a top against pressure along and across, so that it can be moved. */
function hasBestPressure(t: MagicFormula61Coefficients): boolean {
  return t.PPY4 < 0 && t.PPX4 < 0;
}

/**
 * The tyre with another friction and another best pressure; the same object for the same wish.
 *
 * Friction is scaled as by the book's λμ: peaks and vertical shifts grow, stiffness at no slip
 * stays, and so a peak moves out to more slip. The top of friction against pressure keeps its height
 * and its bend against pressure in Pa.
 *
 * @throws Refusal for a grip or pressure out of range, and for a best pressure of a tyre without one
 * @see Pacejka 2012, eqs 4.E13, 4.E18, 4.E23, 4.E28, 4.E29, 4.E40, 4.E46, 4.E47, Aμ = 1
 */
export function tunedTyre(
  t: MagicFormula61Coefficients,
  { grip = 1, bestPressure }: TyreTuning,
): MagicFormula61Coefficients {
  if (grip === 1 && bestPressure === undefined) return t;
  const known = tunedBefore(t);
  const key = `${grip} ${bestPressure}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const moved = bestPressure === undefined ? t : withBestPressure(t, bestPressure);
  const tuned = withGrip(moved, requireInRange("grip", grip, gripRange.minimum, gripRange.maximum));
  if (known.size >= MOST_KEPT) known.delete(known.keys().next().value as string);
  known.set(key, tuned);
  return tuned;
}

/** The full tyre of `tunedTyre`, the same object for the same wish. */
export function tunedFullTyre(tyre: FullTyre, tuning: TyreTuning): FullTyre {
  const tuned = tunedTyre(tyre.coefficients, tuning);
  if (tuned === tyre.coefficients) return tyre;
  const before = fullTyres.get(tuned);
  if (before !== undefined) return before;
  const full = magicFormula61Tyre(tuned);
  fullTyres.set(tuned, full);
  return full;
}

const MOST_KEPT = 100; // of one tyre: a sampler tries hundreds, each once
const tunedTyres = new WeakMap<
  MagicFormula61Coefficients,
  Map<string, MagicFormula61Coefficients>
>();
const fullTyres = new WeakMap<MagicFormula61Coefficients, FullTyre>();

function tunedBefore(t: MagicFormula61Coefficients): Map<string, MagicFormula61Coefficients> {
  const known = tunedTyres.get(t) ?? new Map<string, MagicFormula61Coefficients>();
  tunedTyres.set(t, known);
  return known;
}

function withGrip(t: MagicFormula61Coefficients, grip: number): MagicFormula61Coefficients {
  if (grip === 1) return t;
  const tuned: Record<string, unknown> = { ...t };
  for (const name of growing) tuned[name] = t[name] * grip;
  for (const name of shrinking) tuned[name] = t[name] / grip;
  return tuned as unknown as MagicFormula61Coefficients;
}

const growing = [
  ...(["PDX1", "PDX2", "PVX1", "PVX2", "PDY1", "PDY2", "PVY1", "PVY2", "PVY3", "PVY4"] as const),
  ...(["QDZ6", "QDZ7", "QDZ8", "QDZ9", "QDZ10", "QDZ11"] as const),
];
const shrinking = ["QBZ1", "QBZ2", "QBZ3", "QBZ9"] as const;

function withBestPressure(
  t: MagicFormula61Coefficients,
  bestPressure: number,
): MagicFormula61Coefficients {
  if (!hasBestPressure(t))
    throw new Refusal(
      "no-best-pressure",
      `best pressure cannot be given: the ${t.name} has none to move.`,
    );
  const { minimum, maximum } = t.valid.pressure;
  const top = pressureIncrement(
    t,
    requireInRange("best pressure", bestPressure, minimum, maximum, "Pa"),
  );
  const x = movedTop(t.PPX3, t.PPX4, top);
  const y = movedTop(t.PPY3, t.PPY4, top);
  return {
    ...t,
    PDX1: t.PDX1 * x.nominal,
    PDX2: t.PDX2 * x.nominal,
    PPX3: x.linear,
    PPX4: x.square,
    PDY1: t.PDY1 * y.nominal,
    PDY2: t.PDY2 * y.nominal,
    PPY3: y.linear,
    PPY4: y.square,
  };
}

/** h + square·(dp − top)² written as nominal·(1 + linear·dp + square·dp²), h the height before. */
function movedTop(linear: number, square: number, top: number) {
  const height = 1 - linear ** 2 / (4 * square);
  const nominal = height + square * top ** 2;
  return { nominal, linear: (-2 * square * top) / nominal, square: square / nominal };
}

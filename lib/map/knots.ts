import { parameters } from "../parameters.js";
import type { MapAxis } from "./map-axis.js";

/** Places along an axis, 0–1, and how much each of them counts for any other place. */
export interface Knots {
  readonly at: readonly number[];
  /** Writes the weight of every knot for a place from 0 to 1; they sum to 1. */
  readonly weigh: (place: number, into: Float64Array) => void;
}

const FEWEST = 4; // knots of a smooth lever, enough for a range of one to four
const MOST = 9;

/** Few knots for a lever that moves smoothly, more for a wide range; for a bar each position. */
export function knotsOf({ parameter, min, max, step }: MapAxis): Knots {
  if (parameter === "barPosition") return straightKnots(Math.round((max - min) / step) + 1);
  if (!(parameters[parameter].quantity === "stiffness" && min > 0)) return smoothKnots(FEWEST);
  const ratio = max / min;
  const more = Math.max(0, Math.ceil(Math.log2(ratio / 4)));
  return byRatio(smoothKnots(Math.min(MOST, FEWEST + more)), ratio);
}

/** The same knots spread evenly in ratio: what springs in series do bends most at the soft end. */
function byRatio({ at, weigh }: Knots, ratio: number): Knots {
  const place = (part: number) => (ratio ** part - 1) / (ratio - 1);
  const part = (place: number) => Math.log1p(place * (ratio - 1)) / Math.log(ratio);
  return {
    at: at.map(place),
    weigh: (place, into) => weigh(part(place), into),
  };
}

/** Evenly spaced knots with straight lines between them: exact at each, a blend between two. */
export function straightKnots(count: number): Knots {
  const last = count - 1;
  const at = Array.from({ length: count }, (_, i) => i / last);
  return {
    at,
    weigh(place, into) {
      const below = Math.min(last - 1, Math.max(0, Math.floor(place * last)));
      into.fill(0);
      into[below + 1] = place * last - below;
      into[below] = 1 - (into[below + 1] ?? 0);
    },
  };
}

/**
 * Knots that lie closer towards both ends, with one polynomial through all of them.
 *
 * Their places are those of Chebyshev, the ends among them; the weights are Lagrange's
 * – Trefethen 2013, ch. 2 and 5.
 */
export function smoothKnots(count: number): Knots {
  const last = count - 1;
  const at = Array.from({ length: count }, (_, i) => (1 - Math.cos((Math.PI * i) / last)) / 2);
  return {
    at,
    weigh(place, into) {
      at.forEach((own, i) => {
        let weight = 1; // ℓᵢ(x) = Π (x − xⱼ)/(xᵢ − xⱼ), j ≠ i
        at.forEach((other, j) => {
          if (j !== i) weight *= (place - other) / (own - other);
        });
        into[i] = weight;
      });
    },
  };
}

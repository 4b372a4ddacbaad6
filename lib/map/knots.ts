import { parameters } from "../parameters.js";
import type { MapAxis } from "./map-axis.js";

/** Places along an axis, 0–1, and how much each of them counts for any other place. */
export interface Knots {
  readonly at: readonly number[];
  /** Writes the weight of every knot for a place from 0 to 1; they sum to 1. */
  readonly weigh: (place: number, into: Float64Array) => void;
}

const PLAIN = 3; // knots of a lever that does much the same all along
const SPRING = 4; // of a spring, whose stops and lifted wheels bend what it does
const MOST = 6;

/**
 * Knots for one axis of a map, all among the places that are worked out: of a bar each position, of
 * another lever few places, more of them for a spring with a wide range.
 *
 * @param places - 0–1, evenly spread
 */
export function knotsOf({ parameter, min, max }: MapAxis, places: readonly number[]): Knots {
  if (parameter === "barPosition") return straightKnots(places.length);
  const last = places.length - 1;
  const onPlace = (place: number) => Math.round(place * last) / last;
  if (!(parameters[parameter].quantity === "stiffness" && min > 0))
    return polynomialKnots(chebyshev(PLAIN).map(onPlace));
  const ratio = max / min;
  const more = Math.max(0, Math.ceil(Math.log2(ratio / 4)));
  return byRatio(chebyshev(Math.min(MOST, SPRING + more)), ratio, onPlace);
}

/** Knots spread evenly in ratio: what springs in series do bends most at the soft end. */
function byRatio(parts: readonly number[], ratio: number, onPlace: (place: number) => number) {
  const place = (part: number) => (ratio ** part - 1) / (ratio - 1);
  const part = (place: number) => Math.log1p(place * (ratio - 1)) / Math.log(ratio);
  const at = parts.map((one) => onPlace(place(one)));
  const { weigh } = polynomialKnots(at.map(part));
  return { at, weigh: (place: number, into: Float64Array) => weigh(part(place), into) };
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

/** Chebyshev's places from 0 to 1, the ends among them – Trefethen 2013, ch. 2. */
export function chebyshev(count: number): number[] {
  const last = count - 1;
  return Array.from({ length: count }, (_, i) => (1 - Math.cos((Math.PI * i) / last)) / 2);
}

/** Knots with one polynomial through all of them; the weights are Lagrange's – Trefethen 2013, ch. 5. */
export function polynomialKnots(at: readonly number[]): Knots {
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

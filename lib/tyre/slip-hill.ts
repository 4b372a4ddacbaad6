import type { MagicFormula61Coefficients } from "./magic-formula-61-coefficients.js";

/**
 * What share of a force slip in the other direction leaves: cos(C atan(Bx − E(Bx − atan Bx))).
 *
 * @see Pacejka 2012, eqs 4.E51–4.E57 and 4.E59–4.E65
 */
export interface Hill {
  /** B where the slip of the force's own direction is at the centre, and how it falls beside it. */
  steepness: number;
  falling: number;
  centre: number;
  /** C and E. */
  shape: number;
  curvature: number;
  /** Added to the slip in the other direction. */
  shift: number;
}

/** A hill that leaves all of a force. */
export function flatHill(): Hill {
  return { steepness: 0, falling: 0, centre: 0, shape: 1, curvature: 0, shift: 0 };
}

/** What slip along leaves of the side force: eqs 4.E62–4.E65 at a load increment and γ*. */
export function fillSideHill(into: Hill, t: MagicFormula61Coefficients, df: number, g: number) {
  into.steepness = t.RBY1 + t.RBY4 * g * g; // – eq. 4.E62
  into.falling = t.RBY2;
  into.centre = t.RBY3;
  into.shape = t.RCY1; // – eq. 4.E63
  into.curvature = Math.min(1, t.REY1 + t.REY2 * df); // – eq. 4.E64
  into.shift = t.RHY1 + t.RHY2 * df; // – eq. 4.E65
}

/** What slip across leaves of the push: eqs 4.E54–4.E57. */
export function fillAlongHill(into: Hill, t: MagicFormula61Coefficients, df: number, g: number) {
  into.steepness = t.RBX1 + t.RBX3 * g * g; // – eq. 4.E54
  into.falling = t.RBX2;
  into.centre = 0;
  into.shape = t.RCX1; // – eq. 4.E55
  into.curvature = Math.min(1, t.REX1 + t.REX2 * df); // – eq. 4.E56
  into.shift = t.RHX1; // – eq. 4.E57
}

/** The share left, 1 without slip in the other direction. */
export function leftOf(hill: Hill, other: number, own: number): number {
  if (other === 0) return 1;
  const reach = hill.falling * (own - hill.centre);
  const b = hill.steepness / Math.sqrt(1 + reach * reach); // – eqs 4.E54, 4.E62
  const height = heightAt(hill, b * (other + hill.shift));
  return Math.max(0, hill.shift === 0 ? height : height / heightAt(hill, b * hill.shift));
}

function heightAt({ shape, curvature }: Hill, bx: number): number {
  const bent = bx - curvature * (bx - Math.atan(bx));
  if (shape === 1) return 1 / Math.sqrt(1 + bent * bent); // cos(atan x)
  return Math.cos(shape * Math.atan(bent));
}

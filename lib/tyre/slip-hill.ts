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

/** The club tyre at 200 kPa once more, from the printed formulas – Pacejka 2012, ch. 4.3. */

const nominal = 3000; // N
const radius = 0.29; // m

export interface TyreForces {
  readonly along: number; // N, forward
  readonly across: number; // N, to the left
  readonly turning: number; // N·m, above 0 to the left
}

/** One tyre under a load (N) that leans to the left (rad): its forces at slips. */
export interface Tyre {
  readonly mostSlip: number;
  readonly push: (slip: number, tangent: number) => number;
  readonly forces: (slip: number, slipAngle: number) => TyreForces;
}

const bent = (x: number, e: number) => x - e * (x - Math.atan(x));
const hill = (x: number, c: number, e: number) =>
  Math.max(0, Math.cos(c * Math.atan(bent(x, Math.min(1, e)))));
const cosineOf = (tangent: number) => 1 / Math.hypot(1, tangent);

/** Side force against the tangent of the slip angle – eqs 4.E19 to 4.E30. */
function sideways(load: number, lean: number) {
  const more = (load - nominal) / nominal;
  const D = load * (1.15 - 0.15 * more) * (1 - 3.2 * lean ** 2);
  const stiffness = 21 * nominal * Math.sin(2 * Math.atan(load / (1.8 * nominal)));
  const K = stiffness * (1 - 0.4 * Math.abs(lean));
  const thrust = load * (-0.5 - 0.1 * more) * lean;
  const byLean = load * (-1 - 0.2 * more) * lean;
  const force = (tangent: number) => {
    const x = tangent + (byLean - thrust) / K;
    const E = Math.min(1, (-0.8 - 0.3 * more) * (1 - 3 * lean * Math.sign(x)));
    return D * Math.sin(1.5 * Math.atan(bent((K / (1.5 * D)) * x, E))) + thrust;
  };
  return { force, K, shift: byLean / K };
}

/** Push against slip – eqs 4.E9 to 4.E18 – and where it is greatest. */
function lengthways(load: number, lean: number) {
  const more = (load - nominal) / nominal;
  const D = load * (1.22 - 0.12 * more) * (1 - 8 * lean ** 2);
  const K = load * (24 + 12 * more) * Math.exp(-0.4 * more);
  const [B, E] = [K / (1.6 * D), Math.min(1, 0.1 + 0.2 * more)];
  const force = (slip: number) => D * Math.sin(1.6 * Math.atan(bent(B * slip, E)));
  let [low, high] = [0, 2];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (bent(B * middle, E) < Math.tan(Math.PI / 3.2)) low = middle;
    else high = middle;
  }
  return { force, K, mostSlip: low };
}

export function tyreUnder(onIt: number, leansLeft: number): Tyre | undefined {
  const load = Math.min(9000, onIt);
  if (load < 1e-3) return undefined;
  const lean = Math.sin(-Math.max(-0.12, Math.min(0.12, leansLeft))); // as the book counts it
  const more = (load - nominal) / nominal;
  const [side, upright, length] = [sideways(load, lean), sideways(load, 0), lengthways(load, lean)];
  const push = (slip: number, tangent: number) =>
    length.force(slip) * hill(13 * cosineOf(10 * slip) * tangent, 1, -0.4 - 0.4 * more); // 4.E50
  const forces = (slip: number, slipAngle: number): TyreForces => {
    const tangent = Math.tan(Math.max(-0.96, Math.min(0.96, slipAngle)));
    const left = hill(11 * cosineOf(8 * tangent) * slip, 1.05, 0.3); // 4.E58
    const [along, across] = [push(slip, tangent), left * side.force(tangent)];
    const sliding = (length.K / side.K) * slip; // 4.E77
    const trail =
      ((load * radius) / nominal) *
      (0.095 - 0.005 * more) *
      Math.cos(
        1.2 *
          Math.atan(
            bent((10 - 1.5 * more) * Math.hypot(tangent, sliding), Math.min(1, -1.5 + 0.5 * more)),
          ),
      );
    const residual =
      (load * radius * -0.1 * lean) / Math.hypot(1, 12 * Math.hypot(tangent + side.shift, sliding));
    const turning =
      cosineOf(tangent) * (residual - trail * left * upright.force(tangent)) +
      radius * 0.03 * (across / nominal) * along; // 4.E71
    return { along, across, turning };
  };
  return { mostSlip: length.mostSlip, push, forces };
}

import type { Pins } from "../../site/chapter/pins.js";

// The demo car, from its description: kg, m, N/m, m/s²
const g = 9.80665;
const ay = 8;
const wheelbase = 2.4;
const frontTrack = 1.44;
const rearTrack = 1.45;
const sprung = 810 + 80 + 30; // body, driver, fuel
const behindFront = (810 * 1.07 + 80 * 1.35 + 30 * 2.2) / sprung;
const height = (810 * 0.54 + 80 * 0.48 + 30 * 0.4) / sprung;
const sprungRear = (sprung * behindFront) / wheelbase;
const sprungFront = sprung - sprungRear;
const frontMass = sprungFront + 75;
const rearMass = sprungRear + 85;
const frontWheelRate = 60e3 * 0.65 ** 2;
const rearWheelRate = 50e3 * 0.75 ** 2;
const frontBarRates = [0, 14e3, 22e3, 32e3, 46e3];
const frontBar = (position: number) => (frontBarRates[position - 1] ?? 0) * (0.6 * frontTrack) ** 2;
const rearBar = 5e3 * (0.6 * rearTrack) ** 2;
const stiffestRearBar = 36e3 * (0.6 * rearTrack) ** 2;
const frontSprings = 0.5 * frontWheelRate * frontTrack ** 2;
const rearSprings = 0.5 * rearWheelRate * rearTrack ** 2;
// The club tyre at its load at rest: Fz = 3000·(q·x + 20·x²), x = squash / 0.29 m, q so that it is
// 215 kN/m at 3000 N; dFz/dx = 3000·√(q² + 80·Fz/3000) – Pacejka 2012, eqs A3.3 and A3.4
const tyreRate = (load: number) =>
  (3000 / 0.29) * Math.sqrt(((215e3 * 0.29) / 3000) ** 2 - 80 + (80 * load) / 3000);
const frontTyres = 0.5 * tyreRate((frontMass * g) / 2) * frontTrack ** 2;
const rearTyres = 0.5 * tyreRate((rearMass * g) / 2) * rearTrack ** 2;
const perDegree = 180 / Math.PI; // N·m/rad in one N·m/°

// Roll: springs K, tyres T, and weights and side forces on body angle p, axle angles f and r, each
// axle's wheels leaning by (1 − s)·p + s·f. Three balances of moments, solved by determinants.
const inSeries = (a: number, b: number) => (a * b) / (a + b);
const frontAxle = (bar: number) => inSeries(frontSprings + bar, frontTyres);
const degree = Math.PI / 180;
const frontKeeps = 22 * degree * (frontTrack / 2); // half the track over the swing arm 1/(22°/m)
const rearKeeps = 18 * degree * (rearTrack / 2);
const [frontWheels, rearWheels] = [75 * 0.29, 85 * 0.29]; // kg·m

/** One axle: N·m/rad of its own, of the body on it, between both; kg·m on axle and on body. */
function ends(
  springs: number,
  tyres: number,
  mass: number,
  rollCentre: number,
  wheels: number,
  s: number,
) {
  const K = springs + mass * g * rollCentre; // independent links: weight presses them too
  return {
    axle: K + tyres - g * (mass * rollCentre + s * s * wheels),
    body: K - g * (mass * (height - rollCentre) + (1 - s) ** 2 * wheels),
    between: K + g * s * (1 - s) * wheels,
    onAxle: mass * rollCentre + s * wheels,
    onBody: mass * (height - rollCentre) + (1 - s) * wheels,
  };
}

function inTurn(front: number, rear: number, a: number) {
  const F = ends(frontSprings + front, frontTyres, sprungFront, 0.05, frontWheels, frontKeeps);
  const R = ends(rearSprings + rear, rearTyres, sprungRear, 0.09, rearWheels, rearKeeps);
  const [body, onBody] = [F.body + R.body, (F.onBody + R.onBody) * a];
  // | body −f −r; −f Fa 0; −r 0 Ra | · (lean, atFront, atRear) = (onBody, F.onAxle·a, R.onAxle·a)
  const [f, r, pf, pr] = [F.between, R.between, F.onAxle * a, R.onAxle * a];
  const D = body * F.axle * R.axle - f * f * R.axle - r * r * F.axle;
  const lean = (onBody * F.axle * R.axle + f * pf * R.axle + r * pr * F.axle) / D;
  const onFront = (body * pf * R.axle + f * (onBody * R.axle + r * pr) - r * r * pf) / D;
  const onRear = (body * pr * F.axle + r * (onBody * F.axle + f * pf) - f * f * pr) / D;
  const [atFront, atRear] = [(frontTyres * onFront) / frontTrack, (rearTyres * onRear) / rearTrack];
  return { lean, front: atFront, rear: atRear, total: atFront + atRear };
}

// The club tyre, upright at 200 kPa: D = Fz·(1.15 − 0.15·(Fz − 3000)/3000) = 1.30·Fz − 5e-5·Fz²
const [mu, s] = [1.3, 5e-5];

/** Root of m·a = μ0·W − s·W²/2 − 2s·(c·a)², with c the transfer of the axle for each m/s². */
function limit(mass: number, transferForEach: number) {
  const W = mass * g;
  const [A, C] = [2 * s * transferForEach ** 2, mu * W - (s * W ** 2) / 2];
  return (-mass + Math.sqrt(mass ** 2 + 4 * A * C)) / (2 * A);
}
const frontLimit = (front: number, rear: number) => limit(frontMass, inTurn(front, rear, 1).front);
const rearLimit = (front: number, rear: number) => limit(rearMass, inTurn(front, rear, 1).rear);
const margin = (position: number) => ({
  value: rearLimit(frontBar(position), rearBar) - frontLimit(frontBar(position), rearBar),
  from: `limits of both axles as roots of their quadratics, front bar in position ${position}`,
});

const now = inTurn(frontBar(3), rearBar, ay);
const bare = inTurn(0, 0, ay);
const weightShare = frontMass / (frontMass + rearMass);
const share = (front: number) => {
  const { front: atFront, total } = inTurn(front, rearBar, ay);
  return atFront / total;
};
const stiffest = 800 * perDegree;
const wanted = share(0) + 0.75 * (share(stiffest) - share(0));

/** Front bar for a wanted front share: by halving, since the share rises with it. */
function barForShare(w: number) {
  let [low, high] = [0, stiffest];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (share(middle) < w) low = middle;
    else high = middle;
  }
  return low;
}

export const pins: Pins = {
  "front-springs": { value: frontSprings, from: "½·ks·i²·t²: ½ × 60e3 × 0.65² × 1.44²" },
  "front-axle": {
    value: frontAxle(frontBar(3)),
    from: "springs and bar in series with the tyres at their load at rest",
  },
  lean: { value: now.lean, from: "balance of moments on body and both axles" },
  "no-bars": { value: now.total / bare.total - 1, from: "the same car with both bars at zero" },
  "front-transfer": {
    value: now.front,
    from: "what the front tyres are squashed by, times their stiffness",
  },
  "front-share": { value: now.front / now.total, from: "front transfer over both" },
  "grip-price": { value: 2 * s * now.front ** 2, from: "2·s·ΔF² (chapter 2)" },
  "bar-softest": margin(1),
  "bar-softer": margin(2),
  "bar-now": margin(3),
  "bar-stiffer": margin(4),
  "bar-stiffest": margin(5),
  "points-above": {
    value: now.front / now.total - weightShare,
    from: "shares of transfer and weight",
  },
  "one-wheel": { value: frontWheelRate + 22e3 * 0.6 ** 2, from: "ks·i² + kb·ib²" },
  "inside-driven": {
    value: (rearMass * g) / 2 - inTurn(frontBar(3), stiffestRearBar, ay).rear,
    from: "half the rear weight less its transfer with the rear bar in position 4",
  },
  "ex-wheel-rate": { value: 28125, from: "50e3 × 0.75²" },
  "ex-bar-part": {
    value: frontBar(3) / (frontBar(3) + frontSprings),
    from: "bar over springs and bar",
  },
  "ex-inside-rear": {
    value: (rearMass * g) / 2 - now.rear,
    from: "half the rear weight less its transfer",
  },
  "ex-rear-bar-off": {
    value: frontLimit(frontBar(3), 0) - frontLimit(frontBar(3), rearBar),
    from: "front limit as the root of its quadratic, with and without the rear bar",
  },
  "ex-lift": {
    value: (rearMass * g) / 2 / inTurn(0, 700 * perDegree, 1).rear,
    from: "half the rear weight over its transfer for each m/s²",
  },
  "ex-wanted-share": { value: barForShare(wanted), from: "front bar by halving" },
};

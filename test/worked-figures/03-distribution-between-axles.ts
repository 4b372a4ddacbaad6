import type { Pins } from "./pins.js";

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
const tyreRate = 215e3;
const frontWheelRate = 60e3 * 0.65 ** 2;
const rearWheelRate = 50e3 * 0.75 ** 2;
const frontBarRates = [0, 14e3, 22e3, 32e3, 46e3];
const frontBar = (position: number) => (frontBarRates[position - 1] ?? 0) * (0.6 * frontTrack) ** 2;
const rearBar = 5e3 * (0.6 * rearTrack) ** 2;
const stiffestRearBar = 36e3 * (0.6 * rearTrack) ** 2;
const frontSprings = 0.5 * frontWheelRate * frontTrack ** 2;
const rearSprings = 0.5 * rearWheelRate * rearTrack ** 2;
const frontTyres = 0.5 * tyreRate * frontTrack ** 2;
const rearTyres = 0.5 * tyreRate * rearTrack ** 2;
const perDegree = 180 / Math.PI; // N·m/rad in one N·m/°

// Roll stiffness of an axle, roll, transfer: the formulas of the chapter
const inSeries = (a: number, b: number) => (a * b) / (a + b);
const frontAxle = (bar: number) => inSeries(frontSprings + bar, frontTyres);
const rearAxle = (bar: number) => inSeries(rearSprings + bar, rearTyres);
const frontLinks = sprungFront * 0.05 + 75 * 0.29; // N·m of links and wheels for each m/s²
const rearLinks = sprungRear * 0.09 + 85 * 0.29;
const arm = sprungFront * (height - 0.05) + sprungRear * (height - 0.09); // ms·d, kg·m

function inTurn(front: number, rear: number, a: number) {
  const [Kf, Kr] = [frontAxle(front), rearAxle(rear)];
  const lean = (arm * a) / (Kf + Kr - arm * g);
  const atFront = (Kf * lean + frontLinks * a) / frontTrack;
  const atRear = (Kr * lean + rearLinks * a) / rearTrack;
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

/** Front bar for a wanted front share: (1 − w)·ΔFf = w·ΔFr is linear in the front axle's stiffness. */
function barForShare(w: number) {
  const Kr = rearAxle(rearBar);
  const rest = Kr - arm * g;
  const [f, r] = [(1 - w) / frontTrack, w / rearTrack];
  const stiffness =
    (r * (Kr * arm + rearLinks * rest) - f * frontLinks * rest) /
    (f * (arm + frontLinks) - r * rearLinks);
  return (stiffness * frontTyres) / (frontTyres - stiffness) - frontSprings;
}

export const pins: Pins = {
  "front-springs": { value: frontSprings, from: "½·ks·i²·t²: ½ × 60e3 × 0.65² × 1.44²" },
  "front-axle": { value: frontAxle(frontBar(3)), from: "springs and bar in series with the tyres" },
  lean: { value: now.lean, from: "ms·ay·d / (ΣK − ms·g·d)" },
  "no-bars": { value: now.total / bare.total - 1, from: "the same car with both bars at zero" },
  "front-transfer": { value: now.front, from: "links, wheels and Kf·φ over the track" },
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
  "ex-wanted-share": { value: barForShare(wanted), from: "share linear in the axle's stiffness" },
};

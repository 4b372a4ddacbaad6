import type { Pins } from "./pins.js";

// The demo car, from its description: kg, m, N/m, N·s/m, kg·m²
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
const mass = frontMass + rearMass;
const tyreRate = 215e3;
const perDegree = 180 / Math.PI;

// Roll stiffness: springs and bar in series with the tyres
const inSeries = (a: number, b: number) => (a * b) / (a + b);
const pair = (rate: number, track: number) => 0.5 * rate * track ** 2;
const frontSprings = pair(60e3 * 0.65 ** 2, frontTrack);
const frontBar = 22e3 * (0.6 * frontTrack) ** 2;
const frontTyres = pair(tyreRate, frontTrack);
const frontStiffness = inSeries(frontSprings + frontBar, frontTyres);
const rearStiffness = inSeries(
  pair(50e3 * 0.75 ** 2, rearTrack) + 5e3 * (0.6 * rearTrack) ** 2,
  pair(tyreRate, rearTrack),
);
const frontArm = height - 0.05;
const rearArm = height - 0.09;
const lever = sprungFront * frontArm + sprungRear * rearArm;

// The steady turn
const lean = (lever * ay) / (frontStiffness + rearStiffness - lever * g);
const atOnce = (sprungPart: number, rollCentre: number, wheels: number) =>
  ay * (sprungPart * rollCentre + wheels * 0.29);
const frontAtOnce = atOnce(sprungFront, 0.05, 75);
const rearAtOnce = atOnce(sprungRear, 0.09, 85);

// Roll damping ½·(cb + cr)/2·i²·t², and the body as one mass on its axis
const frontDamping = pair(((3200 + 5600) / 2) * 0.65 ** 2, frontTrack);
const rearDamping = pair(((2800 + 4800) / 2) * 0.75 ** 2, rearTrack);
const bodyInertia = 350 - (75 + 85) * ((frontTrack + rearTrack) / 4) ** 2; // without the wheels
const inertia = bodyInertia + lever ** 2 / sprung; // ms·d², with d the mean arm
const stiffnessIn = (front: number) => front + rearStiffness - lever * g;
const frequency = Math.sqrt(stiffnessIn(frontStiffness) / inertia) / (2 * Math.PI);
const ratio = (front: number) =>
  (frontDamping + rearDamping) / (2 * Math.sqrt(stiffnessIn(front) * inertia));
const withMoreBar = inSeries(frontSprings + frontBar + 130 * perDegree, frontTyres);

// Dampers of the front axle at 12°/s
const rollRate = 12 / perDegree;
const wheelSpeed = (rollRate * frontTrack) / 2;
const force = (rate: number) => rate * 0.65 ** 2 * wheelSpeed;
const dampingShare = frontDamping / (frontDamping + rearDamping);
const stiffnessShare = frontStiffness / (frontStiffness + rearStiffness);

// Yaw: cornering stiffness of the club tyre at nominal pressure – Pacejka 2012, eq. 4.E25
const corneringStiffness = (load: number) =>
  2 * 21 * 3000 * Math.sin(2 * Math.atan(load / 2 / (1.8 * 3000)));
const [Cf, Cr] = [corneringStiffness(frontMass * g), corneringStiffness(rearMass * g)];
const [lf, lr] = [(wheelbase * rearMass) / mass, (wheelbase * frontMass) / mass];

/** ωn² = Cf·Cr·L²/(m·Iz·v²) + (lr·Cr − lf·Cf)/Iz – Abe, Vehicle Handling Dynamics, ch. 3. */
function yawFrequency(speed: number) {
  const turning = (Cf * Cr * wheelbase ** 2) / (mass * 1400 * speed ** 2);
  return Math.sqrt(turning + (lr * Cr - lf * Cf) / 1400) / (2 * Math.PI);
}

export const pins: Pins = {
  "front-at-once": {
    value: frontAtOnce / (frontAtOnce + frontStiffness * lean),
    from: "links and wheels over links, wheels and Kf·φ",
  },
  "rear-at-once": {
    value: rearAtOnce / (rearAtOnce + rearStiffness * lean),
    from: "links and wheels over links, wheels and Kr·φ",
  },
  "roll-frequency": { value: frequency, from: "√((ΣK − ms·g·d)/I)/2π" },
  "roll-damping": { value: ratio(frontStiffness), from: "ΣC/(2·√(I·(ΣK − ms·g·d)))" },
  "stiffness-share": { value: stiffnessShare, from: "Kf/(Kf + Kr)" },
  "damping-share": { value: dampingShare, from: "Cf/(Cf + Cr)" },
  pressed: { value: force(3200), from: "cb·i²·φ̇·t/2" },
  relieved: { value: force(5600), from: "cr·i²·φ̇·t/2" },
  moved: { value: (frontDamping * rollRate) / frontTrack, from: "C·φ̇/t" },
  "one-click": { value: force(400) / 2, from: "half of what the click does on one wheel" },
  "yaw-frequency": { value: yawFrequency(60 / 3.6), from: "Abe ch. 3, with the car's numbers" },
  "yaw-frequency-fast": { value: yawFrequency(180 / 3.6), from: "Abe ch. 3, at 180 km/h" },
  "printed-peak": {
    value: 0.27151,
    from: "Abe, Vehicle Handling Dynamics, example 3.6: printed to five digits",
    within: 2e-5,
  },
  "damping-after-bar": {
    value: ratio(withMoreBar),
    from: "the damping ratio with 130 N·m/° more front bar",
  },
  "ex-overshoot": {
    value: 0.27151 / 0.21547 - 1,
    from: "Abe, example 3.6: peak 0.27151 and steady 0.21547 rad/s, printed to five digits",
    within: 2e-4,
  },
  "ex-faster": { value: yawFrequency(60 / 3.6) / 1.5, from: "1/v" },
  "ex-slow-corner": {
    value: (frontDamping * lean) / 2 / frontTrack,
    from: "C·(φ/2 s)/t",
  },
  "ex-swap": { value: 2 * force(400), from: "a click less in rebound, a click more in bump" },
  "ex-equal-shares": {
    value: (frontStiffness / rearStiffness) * (rearDamping / frontDamping),
    from: "(Kf/Kr)/(Cf/Cr)",
  },
};

import type { Pins } from "../../site/chapter/pins.js";
import { type AxleByHand, asItIs, type CarByHand, carByHand, g } from "./demo-car-by-hand.js";
import { type AxleStands, bodyInRoll, movedBy } from "./roll-by-hand.js";
import { stance } from "./whole-demo-car.js";

// The demo car, from its description: kg, m, N/m, N·s/m, kg·m²
const ay = 7.5;
const wheelbase = 2.4;
const frontTrack = 1.44;
const rearTrack = 1.45;
const sprung = 810 + 80 + 30; // body, driver, fuel
const behindFront = (810 * 1.07 + 80 * 1.35 + 30 * 2.2) / sprung;
const sprungRear = (sprung * behindFront) / wheelbase;
const sprungFront = sprung - sprungRear;
const frontMass = sprungFront + 75;
const rearMass = sprungRear + 85;
const mass = frontMass + rearMass;
const perDegree = 180 / Math.PI;

const pair = (rate: number, track: number) => 0.5 * rate * track ** 2;
const own = carByHand(asItIs);
const frontStiffness = pair(60e3 * 0.65 ** 2, frontTrack) + 22e3 * (0.6 * frontTrack) ** 2;
const rearStiffness = pair(50e3 * 0.75 ** 2, rearTrack) + 5e3 * (0.6 * rearTrack) ** 2;

// The steady turn, on four springs and four tyres
const { front: standsFront, rear: standsRear } = stance({}, ay);
const atOnce = (a: AxleByHand) => ay * (a.sprung * a.rollCentre + a.ownShare * a.unsprung * 0.29);
const part = (a: AxleByHand, stands: AxleStands) =>
  atOnce(a) / (movedBy(stands, a.leftExcess) * a.track);

// The body as one mass on its axis, ΣK and ΣC as it feels them over the tyres
const bodyInertia = 350 - (75 + 85) * ((frontTrack + rearTrack) / 4) ** 2; // without the wheels
const swings = (a: AxleByHand) =>
  a.sprung * a.arm ** 2 + a.unsprung * ((1 - a.ownShare) * 0.29) ** 2;
const inertia = bodyInertia + swings(own.front) + swings(own.rear);
const rolling = (car: CarByHand) => {
  const { stiffness, damping } = bodyInRoll(car);
  return {
    frequency: Math.sqrt(stiffness / inertia) / (2 * Math.PI),
    ratio: damping / (2 * Math.sqrt(stiffness * inertia)),
  };
};
const moreBar = { ...own.front, springs: own.front.springs + 130 * perDegree };
const [frontDamping, rearDamping] = [own.front.damping, own.rear.damping];

// Dampers of the front axle at 12°/s
const rollRate = 12 / perDegree;
const wheelSpeed = (rollRate * frontTrack) / 2;
const force = (rate: number) => rate * 0.65 ** 2 * wheelSpeed;
const dampingShare = frontDamping / (frontDamping + rearDamping);
const stiffnessShare = frontStiffness / (frontStiffness + rearStiffness);

// Yaw: cornering stiffness and trail of the club tyre at nominal pressure – Pacejka 2012, eqs 4.E25, 4.E42
const corneringStiffness = (load: number) =>
  2 * 21 * 3000 * Math.sin(2 * Math.atan(load / 2 / (1.8 * 3000)));
const trail = (load: number) =>
  ((load / 2) * 0.29 * (0.095 - (0.005 * (load / 2 - 3000)) / 3000)) / 3000;
/** N/rad on wheels that give way by so many °/kN: F = C·(α − c·F). */
const onSoftWheels = (load: number, degreesPerKilonewton: number) => {
  const stiff = corneringStiffness(load);
  return stiff / (1 + (stiff * degreesPerKilonewton) / perDegree / 1000);
};
const [Cf, Cr] = [onSoftWheels(frontMass * g, 0.2), onSoftWheels(rearMass * g, 0.02)];
const [lf, lr] = [(wheelbase * rearMass) / mass, (wheelbase * frontMass) / mass];
const [armFront, armRear] = [lf - trail(frontMass * g), lr + trail(rearMass * g)];

/** ωn² of side-slip and yaw, side forces acting a trail behind the wheels – Abe, Vehicle Handling Dynamics, ch. 3. */
function yawFrequency(speed: number) {
  const slip = (Cf + Cr) / (mass * speed);
  const turned = 1 + (lf * Cf - lr * Cr) / (mass * speed ** 2);
  const yawBySlip = (armFront * Cf - armRear * Cr) / 1400;
  const yawByRate = (armFront * lf * Cf + armRear * lr * Cr) / (1400 * speed);
  return Math.sqrt(slip * yawByRate - turned * yawBySlip) / (2 * Math.PI);
}

export const pins: Pins = {
  "front-at-once": {
    value: part(own.front, standsFront),
    from: "links and wheels over all that the tyres move",
  },
  "rear-at-once": {
    value: part(own.rear, standsRear),
    from: "links and wheels over all that the tyres move",
  },
  "roll-frequency": { value: rolling(own).frequency, from: "√((ΣK − ms·g·d)/I)/2π" },
  "roll-damping": { value: rolling(own).ratio, from: "ΣC/(2·√(I·(ΣK − ms·g·d)))" },
  "stiffness-share": { value: stiffnessShare, from: "Kf/(Kf + Kr) of springs and bars" },
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
    value: rolling({ ...own, front: moreBar }).ratio,
    from: "the damping ratio with 130 N·m/° more front bar",
  },
  "ex-overshoot": {
    value: 0.27151 / 0.21547 - 1,
    from: "Abe, example 3.6: peak 0.27151 and steady 0.21547 rad/s, printed to five digits",
    within: 2e-4,
  },
  "ex-faster": { value: yawFrequency(60 / 3.6) / 1.5, from: "1/v" },
  "ex-slow-corner": {
    value: (frontDamping * standsFront.between) / 2 / frontTrack,
    from: "C·(φ/2 s)/t",
  },
  "ex-swap": { value: 2 * force(400), from: "a click less in rebound, a click more in bump" },
  "ex-equal-shares": {
    value: (frontStiffness / rearStiffness) * (rearDamping / frontDamping),
    from: "(Kf/Kr)/(Cf/Cr)",
  },
};

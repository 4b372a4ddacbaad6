/** The demo car typed once more from its description: kg, m, N/m, N·s/m, rad. */

export const g = 9.80665;
export const wheelbase = 2.4;
const parts = [
  { mass: 810, behind: 1.07, left: -0.03, height: 0.54 },
  { mass: 80, behind: 1.35, left: 0.35, height: 0.48 },
  { mass: 30, behind: 2.2, left: 0, height: 0.4 },
];
const sumOf = (arm: "behind" | "left" | "height") =>
  parts.reduce((sum, part) => sum + part.mass * part[arm], 0);
const sprung = 810 + 80 + 30;
export const mass = sprung + 75 + 85;
const sprungRear = sumOf("behind") / wheelbase;
export const sprungFront = sprung - sprungRear;
const sprungHeight = sumOf("height") / sprung;
export const height = (sumOf("height") + (75 + 85) * 0.29) / mass;
export const frontMass = sprungFront + 75;
export const rearMass = sprungRear + 85;
const degree = Math.PI / 180;
const frontBars = [0, 14e3, 22e3, 32e3, 46e3];
const rearBars = [0, 5e3, 12e3, 36e3];

/** What is set on the car, and may be set otherwise. */
export interface SetUp {
  readonly frontBar: number; // position
  readonly rearBar: number;
  readonly brakes: number; // front share
  readonly rearRebound: number;
  readonly frontSpring: number;
  readonly rearSpring: number;
  readonly frontTravel: number; // free, each way
  readonly rearTravel: number;
}
export const asItIs: SetUp = {
  frontBar: 3,
  rearBar: 2,
  brakes: 0.66,
  rearRebound: 4800,
  frontSpring: 60e3,
  rearSpring: 50e3,
  frontTravel: 0.06,
  rearTravel: 0.065,
};

export interface AxleByHand {
  readonly mass: number;
  readonly sprung: number;
  readonly unsprung: number;
  readonly track: number;
  readonly rollCentre: number;
  readonly arm: number; // of the body above the roll centre
  readonly wheelRate: number;
  readonly springs: number; // N·m/rad of springs, bar and weight that leans on the links
  readonly tyres: number; // N·m/rad of the tyres
  readonly damping: number; // N·m·s/rad
  readonly ownShare: number; // of the wheels' own side force that stays at the axle
  readonly leftExcess: number; // N more on the left tyre than half, at rest
  readonly camber: number;
  readonly toe: number;
  readonly camberGain: number;
  readonly toeGain: number;
  readonly gives: number; // rad of compliance steer for each N
  readonly travel: number;
}
export interface CarByHand {
  readonly front: AxleByHand;
  readonly rear: AxleByHand;
  readonly brakes: number;
}

const pair = (rate: number, track: number) => 0.5 * rate * track ** 2;
/** Both axles stand with the same share of their weight on the left. */
const leftShare = sumOf("left") / (frontMass * 1.44 + rearMass * 1.45);

/** Rise of load with deflection of the club tyre, N/m – Pacejka 2012, eq. A3.3 with Q_FZ2 = 20. */
export function tyreRate(load: number): number {
  const linear = Math.sqrt(((215e3 * 0.29) / 3000) ** 2 - 4 * 20);
  return (3000 / 0.29) * Math.sqrt(linear ** 2 + (4 * 20 * load) / 3000);
}

export function carByHand(set: SetUp): CarByHand {
  const frontRate = set.frontSpring * 0.65 ** 2;
  const rearRate = set.rearSpring * 0.75 ** 2;
  const barOf = (rate: number, track: number) => rate * (0.6 * track) ** 2;
  return {
    brakes: set.brakes,
    front: {
      mass: frontMass,
      sprung: sprungFront,
      unsprung: 75,
      track: 1.44,
      rollCentre: 0.05,
      arm: sprungHeight - 0.05,
      wheelRate: frontRate,
      springs:
        pair(frontRate, 1.44) +
        barOf(frontBars[set.frontBar - 1] ?? 0, 1.44) +
        sprungFront * g * 0.05,
      tyres: pair(tyreRate((frontMass * g) / 2), 1.44),
      damping: pair(((3200 + 5600) / 2) * 0.65 ** 2, 1.44),
      ownShare: (22 * degree * 1.44) / 2,
      leftExcess: frontMass * g * leftShare,
      camber: -1.5 * degree,
      toe: 0,
      camberGain: -22 * degree,
      toeGain: -3 * degree,
      gives: (0.2 * degree) / 1000,
      travel: set.frontTravel,
    },
    rear: {
      mass: rearMass,
      sprung: sprungRear,
      unsprung: 85,
      track: 1.45,
      rollCentre: 0.09,
      arm: sprungHeight - 0.09,
      wheelRate: rearRate,
      springs:
        pair(rearRate, 1.45) + barOf(rearBars[set.rearBar - 1] ?? 0, 1.45) + sprungRear * g * 0.09,
      tyres: pair(tyreRate((rearMass * g) / 2), 1.45),
      damping: pair(((2800 + set.rearRebound) / 2) * 0.75 ** 2, 1.45),
      ownShare: (18 * degree * 1.45) / 2,
      leftExcess: rearMass * g * leftShare,
      camber: -1.25 * degree,
      toe: 0.1 * degree,
      camberGain: -18 * degree,
      toeGain: 2 * degree,
      gives: (0.02 * degree) / 1000,
      travel: set.rearTravel,
    },
  };
}

/** The same car in a right turn: its driver sits on the outside. */
export function mirrored(car: CarByHand): CarByHand {
  const other = (axle: AxleByHand) => ({ ...axle, leftExcess: -axle.leftExcess });
  return { ...car, front: other(car.front), rear: other(car.rear) };
}

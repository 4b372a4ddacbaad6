import { clubTyre } from "../../../lib/tyre/club-tyre.js";
import { referenceTyre } from "../../../lib/tyre/magic-formula-61.js";
import type { MagicFormula61Coefficients } from "../../../lib/tyre/magic-formula-61-coefficients.js";
import { randomNumbers } from "../random-numbers.js";

type Between = (min: number, max: number) => number;
interface Both {
  readonly left: number;
  readonly right: number;
}

export type Differential =
  | { readonly kind: "open" }
  | { readonly kind: "limited-slip"; readonly power: number; readonly overrun: number }
  | { readonly kind: "locked" };

/** One axle as plain data; units and signs as in docs/model.md. */
export interface PlainAxle {
  readonly track: number;
  readonly rollStiffness: number;
  readonly tyreRollStiffness: number;
  readonly ownForceShare: number;
  readonly rollCentreHeight: number;
  readonly unsprungMass: number;
  readonly unsprungHeight: number;
  readonly tyre: MagicFormula61Coefficients;
  readonly pressure: Both;
  readonly leftExcessLoad: number;
  readonly camber: Both;
  readonly toe: Both;
  readonly independent: boolean;
  readonly camberGain: number;
  readonly toeGain: number;
  readonly rollSteer: number;
  readonly suspensionRollShare: number;
  readonly wheelRate: number;
  readonly rollDamping: number;
  readonly downforceFactor: number;
  readonly complianceSteer: number;
  readonly differential: Differential;
  readonly stops?: {
    readonly bumpLeft: Both;
    readonly droopLeft: Both;
    readonly bumpStop: number;
    readonly droopStop: number;
  };
}

/** A whole car as plain data. */
export interface PlainCar {
  readonly sprungMass: number;
  readonly sprungHeight: number;
  readonly sprungFrontShare: number;
  readonly torsionStiffness?: number;
  readonly wheelbase: number;
  readonly brakeFrontShare: number;
  readonly driveFrontShare: number;
  readonly dragFactor: number;
  readonly yawInertia: number;
  readonly rollInertia: number;
  readonly front: PlainAxle;
  readonly rear: PlainAxle;
}

/** What one kind of car may measure, each number from the first to the second. */
interface Kind {
  readonly sprungMass: readonly [number, number];
  readonly sprungHeight: readonly [number, number];
  readonly wheelRate: readonly [number, number];
  readonly barShare: readonly [number, number];
  readonly downforce: readonly [number, number];
  readonly camber: readonly [number, number];
  readonly compliance: number;
}

const kinds = {
  club: {
    sprungMass: [650, 1100],
    sprungHeight: [0.44, 0.58],
    wheelRate: [20e3, 45e3],
    barShare: [0.1, 1],
    downforce: [0, 0],
    camber: [-3, -0.5],
    compliance: 0.8e-6,
  },
  road: {
    sprungMass: [950, 1450],
    sprungHeight: [0.52, 0.62],
    wheelRate: [17e3, 32e3],
    barShare: [0.2, 1],
    downforce: [-0.1, 0.1],
    camber: [-1.5, 0],
    compliance: 1.5e-6,
  },
  race: {
    sprungMass: [550, 1000],
    sprungHeight: [0.3, 0.44],
    wheelRate: [45e3, 140e3],
    barShare: [0, 0.8],
    downforce: [0.2, 1.2],
    camber: [-3.5, -1],
    compliance: 0.3e-6,
  },
} satisfies Record<string, Kind>;

const degree = Math.PI / 180;
const pick = <T>(between: Between, list: readonly T[]): T =>
  list[Math.min(list.length - 1, Math.floor(between(0, list.length)))] as T;
const either = (between: Between, mean: number, apart: number): Both => {
  const half = between(-apart, apart);
  return { left: mean + half, right: mean - half };
};

/** Random cars that could stand in a paddock, always the same for a seed. */
export function randomCars(seed: number, count: number): PlainCar[] {
  const between = randomNumbers(seed);
  return Array.from({ length: count }, () => randomCar(between));
}

function randomCar(between: Between): PlainCar {
  const kind = kinds[pick(between, ["club", "road", "race"] as const)];
  const wheelbase = between(2.2, 2.75);
  const sprungMass = between(...kind.sprungMass);
  const driveFrontShare = pick(between, [0, 0, 0, 1, 1, between(0.3, 0.6)]);
  const tyre = pick(between, [clubTyre, clubTyre, referenceTyre]).coefficients;
  const stiff = between(0, 1) < 0.65;
  const front = randomAxle(between, kind, tyre, "front", driveFrontShare);
  const rear = randomAxle(between, kind, tyre, "rear", 1 - driveFrontShare);
  const mass = sprungMass + front.unsprungMass + rear.unsprungMass;
  return {
    sprungMass,
    sprungHeight: between(...kind.sprungHeight),
    sprungFrontShare: driveFrontShare === 1 ? between(0.54, 0.63) : between(0.42, 0.55),
    ...(stiff ? {} : { torsionStiffness: between(2e5, 2e6) }),
    wheelbase,
    brakeFrontShare: between(0.58, 0.74),
    driveFrontShare,
    dragFactor: between(0.25, 0.6),
    yawInertia: mass * (wheelbase / 2) ** 2 * between(0.8, 1.1),
    rollInertia: mass * between(0.3, 0.45),
    front,
    rear,
  };
}

function randomAxle(
  between: Between,
  kind: Kind,
  tyre: MagicFormula61Coefficients,
  end: "front" | "rear",
  driveShare: number,
): PlainAxle {
  const track = between(1.36, 1.56);
  const wheelRate = between(...kind.wheelRate);
  const springs = (wheelRate * track ** 2) / 2;
  const rollStiffness = springs * (1 + between(...kind.barShare) * (end === "front" ? 1 : 0.5));
  const tyreRollStiffness = (between(180e3, 270e3) * track ** 2) / 2;
  const independent = end === "front" || between(0, 1) < 0.75;
  const camberGain = independent ? between(-30, -5) * degree : 0;
  return {
    track,
    rollStiffness,
    tyreRollStiffness,
    ownForceShare: independent ? (-camberGain * track) / 2 : 1,
    rollCentreHeight: independent ? between(0, 0.11) : between(0.15, 0.3),
    unsprungMass: independent ? between(55, 85) : between(90, 130),
    unsprungHeight: between(0.27, 0.31),
    tyre,
    pressure: either(between, tyre.NOMPRES * between(0.88, 1.12), 8e3),
    leftExcessLoad: between(-180, 180),
    camber: independent
      ? either(between, between(...kind.camber) * degree, 0.4 * degree)
      : { left: 0, right: 0 },
    toe: either(between, between(-0.15, 0.2) * degree, 0.05 * degree),
    independent,
    camberGain,
    toeGain: independent ? between(-3, 3) * degree : 0,
    rollSteer: independent ? 0 : between(-0.08, 0.08),
    suspensionRollShare: tyreRollStiffness / (tyreRollStiffness + rollStiffness),
    wheelRate,
    rollDamping: Math.sqrt(wheelRate / 25e3) * between(800, 3000),
    downforceFactor: between(...kind.downforce),
    complianceSteer:
      between(end === "front" ? 0 : -0.3, 1) * kind.compliance * (end === "front" ? 1 : 0.6),
    differential: driveShare > 0 ? randomDifferential(between) : { kind: "open" },
    ...(between(0, 1) < 0.4 ? { stops: randomStops(between, wheelRate) } : {}),
  };
}

function randomDifferential(between: Between): Differential {
  const power = between(0.15, 0.6);
  const overrun = between(0.1, 0.5);
  return pick<Differential>(between, [
    { kind: "open" },
    { kind: "limited-slip", power, overrun },
    { kind: "limited-slip", power, overrun: overrun / 2 },
    { kind: "locked" },
  ]);
}

/** Free travels that a stiff car has not used and a soft one has. */
function randomStops(between: Between, wheelRate: number): NonNullable<PlainAxle["stops"]> {
  return {
    bumpLeft: either(between, between(0.012, 0.05), 0.004),
    droopLeft: either(between, between(0.02, 0.07), 0.004),
    bumpStop: wheelRate * between(40, 250),
    droopStop: wheelRate * between(100, 500),
  };
}

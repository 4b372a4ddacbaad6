import {
  type BothCorners,
  barRollStiffnessOf,
  type Car,
  type CarFigures,
  centreOfGravityHeight,
  cornersOf,
  decimalsIn,
  differentialDoubts,
  eachAxle,
  easedIn,
  endsWithoutLeanCost,
  figuresOf,
  GRAVITY,
  type HandlingCar,
  handlingCarOf,
  type Margin,
  marginsOf,
  nearTippingIn,
  onStops,
  type PhaseBalances,
  type PhaseName,
  parameters,
  phaseNames,
  phases,
  type Quantity,
  type Rest,
  readingAgainst,
  restOf,
  rideRateOf,
  rollStiffnessOf,
  toShown,
  totalMassOf,
  tyreDoubtInWords,
  tyreDoubts,
  type UnitSystem,
  type Wheels,
  wheelRateOf,
  whyNotRanked,
  yawAccelerationMargin,
} from "@rollbook/lib";
import {
  differentialNotes,
  easedNotes,
  leanNote,
  nearTippingNotes,
  onStopNotes,
  pressureNote,
  type Write,
  yawNote,
} from "../../../report/balance-notes.js";
import { words } from "../words.js";

/** What a car comes to, in the reader's words and units. */
export interface Summary {
  readonly corners: Wheels<string>;
  readonly weights: readonly Told[];
  /** Name, front, rear. */
  readonly axles: readonly (readonly [string, string, string])[];
  readonly turn: readonly Told[];
  readonly balance: readonly Told[];
  /** Sentences about where it tips over, or nearly. */
  readonly bewares: readonly string[];
  /** Sentences about what its figures leave out, and what the car asks of its tyres beyond their data. */
  readonly notes: readonly string[];
  readonly limits: readonly ToldLimit[];
}

export type Told = readonly [name: string, value: string];

/** One limit of the class, and how far each wheel or the car is inside it. */
export interface ToldLimit {
  readonly name: string;
  readonly at: readonly ToldMargin[];
}

export interface ToldMargin {
  readonly where: string;
  readonly value: string;
  readonly verdict: "inside" | "outside" | "cannot tell";
  readonly told: string;
}

/** The speed at which limit and balance are told. */
const speed = 90 / 3.6; // m/s

/**
 * What a car comes to: at rest, in stiffness, in a turn, at its limit, and against its class.
 *
 * @throws RangeError when the car cannot stand on its springs
 */
export function summaryOf(car: Car, units: UnitSystem, write: Write): Summary {
  const rest = restOf(car);
  const handling = handlingCarOf(car, car, rest);
  const figures = figuresOf(car, car, speed, rest, handling);
  const corners = cornersOf(handling, speed);
  const tipsAbove = phaseNames.filter((name) => corners.left[name].tips);
  const doubts = tyreDoubts(car, speed, handling).map((doubt) => tyreDoubtInWords(doubt, units));
  return {
    ...atRest(car, rest, handling, write),
    axles: stiffness(car, figures, write),
    ...inTurn(corners.left, figures, write),
    bewares: nearTippingNotes(nearTippingIn(handling, speed, corners), tipsAbove, write),
    notes: [...notesOn(car, handling, corners, write), ...doubts],
    limits: toldLimits(marginsOf(car, car, rest), units, write),
  };
}

function atRest(
  car: Car,
  { load, frontShare, leftShare, crossShare }: Rest,
  handling: HandlingCar,
  write: Write,
): Pick<Summary, "corners" | "weights"> {
  const { mass } = totalMassOf(car);
  const height = centreOfGravityHeight(handling); // seats turned since it was measured lift it
  const onScale = (force: number) => write("mass", force / GRAVITY, 0);
  return {
    corners: eachAxle(load, ({ left, right }) => ({ left: onScale(left), right: onScale(right) })),
    weights: [
      [words.total, write("mass", mass, 0)],
      [words.frontShare, write("share", frontShare, 1)],
      [words.leftShare, write("share", leftShare, 1)],
      [words.cross, write("share", crossShare, 1)],
      [words.centre, write("length", height, 3)],
    ],
  };
}

function stiffness(car: Car, { rideFrequency }: CarFigures, write: Write): Summary["axles"] {
  const row = (
    name: string,
    quantity: Quantity,
    decimals: number,
    of: (end: "front" | "rear") => number,
  ) =>
    [name, write(quantity, of("front"), decimals), write(quantity, of("rear"), decimals)] as const;
  return [
    row(words.wheelRate, "stiffness", 1, (end) => wheelRateOf(car[end])),
    row(words.rideRate, "stiffness", 1, (end) => rideRateOf(car[end])),
    row(words.bounce, "frequency", 2, (end) => rideFrequency[end]),
    row(words.barInRoll, "rollStiffness", 0, (end) => barRollStiffnessOf(car[end])),
    row(words.inRoll, "rollStiffness", 0, (end) => rollStiffnessOf(car[end])),
  ];
}

/** What its figures at the limit take for granted, and where its travel ends. */
function notesOn(car: Car, handling: HandlingCar, corners: BothCorners, write: Write): string[] {
  const { left } = corners;
  const yaw = phaseNames
    .filter((name) => !left[name].tips)
    .map((name) => {
      const { lateralJerk } = phases[name];
      return [name, yawAccelerationMargin(handling, left[name], lateralJerk)] as const;
    });
  const unknown = (["front", "rear"] as const).filter(
    (end) => whyNotRanked(car, { lever: "tyrePressure", end }) !== undefined,
  );
  return [
    ...easedNotes(easedIn(corners), write),
    ...onStopNotes(onStops(handling, corners)),
    ...yawNote(Object.fromEntries(yaw), write),
    ...differentialNotes(differentialDoubts(car, handling, speed, left), write),
    ...pressureNote(unknown),
    ...leanNote(endsWithoutLeanCost(car)),
  ];
}

function inTurn(
  balances: PhaseBalances,
  { rollGradient, frontTransferShare, frontWeightShare }: CarFigures,
  write: Write,
): Pick<Summary, "turn" | "balance"> {
  const told = (name: PhaseName): Told => {
    const { lateralAcceleration, first, understeerMargin, tips } = balances[name];
    const acceleration = (value: number) => write("acceleration", value, 2); // as the map does
    const limit = words.limit(acceleration(lateralAcceleration));
    const more = acceleration(Math.abs(understeerMargin));
    return [words.phase[name], `${limit}: ${tips ? words.tips : words.first[first](more)}`];
  };
  const weight = write("share", frontWeightShare, 1);
  const share = `${write("share", frontTransferShare, 1)} ${words.against(weight)}`;
  return {
    turn: [
      [words.rollGradient, write("rollGradient", rollGradient, 2)],
      [words.transferShare, share],
    ],
    balance: phaseNames.map(told),
  };
}

/** The margins under the limits that they are about. */
function toldLimits(margins: readonly Margin[], units: UnitSystem, write: Write): ToldLimit[] {
  const byLimit = new Map<string, ToldMargin[]>();
  for (const margin of margins) {
    const { name, quantity, decimals } = parameters[margin.parameter];
    const limit = `${name}, ${words[margin.kind]} ${write(quantity, margin.limit, decimals)}`;
    byLimit.set(limit, [...(byLimit.get(limit) ?? []), toldMargin(margin, units, write)]);
  }
  return [...byLimit].map(([name, at]) => ({ name, at }));
}

/** A margin as a display of this resolution can tell it. */
function toldMargin(
  { parameter, where, value, limit, kind, margin }: Margin,
  units: UnitSystem,
  write: Write,
): ToldMargin {
  const { quantity, decimals } = parameters[parameter];
  const digits = decimalsIn(quantity, decimals, units);
  const onDisplay = Number(toShown(quantity, value, units).toFixed(digits));
  const limitShown = Number(toShown(quantity, limit, units).toPrecision(12));
  const { verdict } = readingAgainst(onDisplay, 10 ** -digits, limitShown, kind);
  const size = write(quantity, Math.abs(margin), decimals);
  const told = { inside: words.inside, outside: words.outside, "cannot tell": words.cannotTell };
  return {
    where: where === "car" ? "" : where,
    value: write(quantity, value, decimals),
    verdict,
    told: told[verdict](size),
  };
}

/** The speed at which limit and balance are told, in the reader's unit. */
export const toldSpeed = (write: Write): string => write("speed", speed, 0);

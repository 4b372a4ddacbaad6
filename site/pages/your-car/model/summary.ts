import {
  type Banded,
  type BothCorners,
  barRollStiffnessOf,
  type Car,
  type CarFigures,
  centreOfGravityHeight,
  classFactsOf,
  cornersOf,
  differentialDoubts,
  eachAxle,
  easedIn,
  endsWithoutLeanCost,
  figuresOf,
  GRAVITY,
  type HandlingCar,
  type Margin,
  type MarginBands,
  marginsOf,
  meanShares,
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
  rideRateOf,
  rollStiffnessOf,
  type StandingCar,
  standingCar,
  totalMassOf,
  tyreDoubts,
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
} from "../../../say/balance-notes.js";
import { factName, fixedLevers, limitName } from "../../../say/class-rules.js";
import { digitsFor } from "../../../say/digits.js";
import { numberInWords } from "../../../say/number-names.js";
import { readerWith } from "../../../say/reader.js";
import { decimalsIn } from "../../../say/shown-range.js";
import { tyreDoubtInWords } from "../../../say/tyre-doubt.js";
import { formatNumber, toShown, type UnitSystem } from "../../../say/units.js";
import { summaryWords as words } from "../../../say/your-car/summary.js";
import { sureWords } from "../../../say/your-car/sure.js";

/** What a car comes to, in the reader's words and units. */
export interface Summary {
  readonly corners: Wheels<string>;
  readonly weights: readonly Told[];
  /** Name, front, rear. */
  readonly axles: readonly (readonly [string, string, string])[];
  readonly turn: readonly Told[];
  readonly balance: readonly Told[];
  /** The same with no more digits than bands have. */
  readonly balanceWithin: (bands: MarginBands) => readonly Told[];
  /** Sentences about where it tips over, or nearly. */
  readonly bewares: readonly string[];
  /** Sentences about what its figures leave out, and what the car asks of its tyres beyond their data. */
  readonly notes: readonly string[];
  readonly limits: readonly ToldLimit[];
  /** What the class does not allow to be moved. */
  readonly fixed: readonly string[];
}

export type Told = readonly [name: string, value: string];

/** One limit of the class, and how far each wheel or the car is inside it. */
interface ToldLimit {
  readonly name: string;
  readonly at: readonly ToldMargin[];
}

interface ToldMargin {
  readonly where: string;
  readonly value: string;
  readonly verdict: "inside" | "outside" | "cannot tell";
  readonly told: string;
}

/** The speed at which limit and balance are told. */
export const speed = 90 / 3.6; // m/s

/**
 * What a car comes to: at rest, in stiffness, in a turn, at its limit, and against its class.
 *
 * @throws Refusal when the car cannot stand on its springs
 */
export function summaryOf(car: Car, units: UnitSystem, write: Write): Summary {
  const standing = standingCar(car);
  const { rest, handling } = standing;
  const figures = figuresOf(standing, speed);
  const corners = cornersOf(handling, speed);
  const tipsAbove = phaseNames.filter((name) => corners.left[name].tips);
  const doubts = tyreDoubts(standing, speed).map((doubt) =>
    tyreDoubtInWords(doubt, readerWith(units)),
  );
  return {
    ...atRest(car, rest, handling, write),
    axles: stiffness(car, figures, write),
    turn: inTurn(figures, write),
    balance: toldBalance(corners.left, write),
    balanceWithin: (bands) => toldBalance(corners.left, write, bands),
    bewares: nearTippingNotes(nearTippingIn(handling, speed, corners), tipsAbove, write),
    notes: [...notesOn(car, handling, corners, write), ...doubts],
    limits: [...toldLimits(marginsOf(standing), units, write), ...toldTyres(standing)],
    fixed: fixedOf(car),
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
      [words.centre, write("carLength", height, 3)],
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
  { rollGradient, frontTransferShare, frontWeightShare }: CarFigures,
  write: Write,
): Summary["turn"] {
  const weight = write("share", frontWeightShare, 1);
  const share = `${write("share", frontTransferShare, 1)} ${words.against(weight)}`;
  return [
    [words.rollGradient, write("rollGradient", rollGradient, 2)],
    [words.transferShare, share],
  ];
}

const DECIMALS = 2; // of an acceleration in m/s², as on the map

function toldBalance(balances: PhaseBalances, write: Write, bands?: MarginBands): readonly Told[] {
  const told = (name: PhaseName): Told => {
    const { lateralAcceleration, first, understeerMargin, tips } = balances[name];
    const acceleration = (value: number, within?: Banded) =>
      write("acceleration", value, within ? digitsOf(within) : DECIMALS);
    const limit = words.limit(acceleration(lateralAcceleration, bands?.[name].lateralAcceleration));
    const more = acceleration(Math.abs(understeerMargin), bands?.[name].understeerMargin);
    return [words.phase[name], `${limit}: ${tips ? words.tips : words.first[first](more)}`];
  };
  return phaseNames.map(told);
}

const digitsOf = ({ band }: Banded): number => digitsFor(band, "acceleration", DECIMALS);

/** How sure limit and balance are in one part of a corner. */
export interface ToldSureness {
  readonly phase: string;
  /** "8.9 to 10.3" */
  readonly limit: string;
  readonly margin: string;
  readonly verdict: string;
}

/** How sure limit and balance are in each part of a corner: bands in the reader's unit, without it, and words. */
export function toldSureness(bands: MarginBands, units: UnitSystem): ToldSureness[] {
  const number = ({ band }: Banded, value: number) => {
    const digits = digitsFor(band, "acceleration", DECIMALS, units);
    return formatNumber(toShown("acceleration", value, units), digits);
  };
  const range = (one: Banded) =>
    sureWords.range(number(one, one.band.low.value), number(one, one.band.high.value));
  return phaseNames.map((name) => {
    const { lateralAcceleration, understeerMargin, tips } = bands[name];
    return {
      phase: words.phase[name],
      limit: range(lateralAcceleration),
      margin: tips > 0.5 ? "–" : range(understeerMargin),
      verdict: tips > 0.5 ? "" : sureWords[understeerMargin.sign.verdict],
    };
  });
}

const LEAST_SHARE = 0.05; // less is not worth a measurement

/** Whose doubt widens the bands of the margin most, by name; the first three over all parts of a corner. */
export function widestDoubts(bands: MarginBands): string[] {
  return meanShares(phaseNames.map((name) => bands[name].widest))
    .slice(0, 3)
    .filter(({ share }) => share >= LEAST_SHARE)
    .map(({ path, share }) => sureWords.doubt(numberInWords(path), 10 * Math.round(10 * share)));
}

/** The margins under the limits that they are about. */
function toldLimits(margins: readonly Margin[], units: UnitSystem, write: Write): ToldLimit[] {
  const byLimit = new Map<string, ToldMargin[]>();
  for (const margin of margins) {
    const name = capital(limitName(margin, write));
    byLimit.set(name, [...(byLimit.get(name) ?? []), toldMargin(margin, units, write)]);
  }
  return [...byLimit].map(([name, at]) => ({ name, at }));
}

/** The control tyre of the class, at each axle. */
function toldTyres(standing: StandingCar): ToldLimit[] {
  return classFactsOf(standing).flatMap((fact) => {
    if (fact.code !== "tyre") return [];
    const { where, value, held } = fact;
    const verdict = held ? ("inside" as const) : ("outside" as const);
    const at = [{ where, value, verdict, told: held ? words.rightTyre : words.otherTyre }];
    return [{ name: `${capital(factName(fact, String))}, ${where}`, at }];
  });
}

const fixedOf = ({ classRules = [] }: Car): string[] =>
  classRules.flatMap((rule) => (rule.kind === "fixed" ? [capital(`${fixedLevers(rule)}.`)] : []));

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

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

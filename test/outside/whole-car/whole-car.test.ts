import { describe, expect, it } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { workshopChanges } from "./changes.js";
import {
  type IndependentCase,
  type IndependentResult,
  independently,
  ownChecks,
  type PlainDriving,
} from "./independent.js";
import { type PlainCar, randomCars } from "./random-cars.js";

/** The long run takes every radius and change; the daily one goes round them. */
const long = process.env.LONG_RUNS !== undefined;
const cars = randomCars(1, 20);
const radii = [20, 50, 120];
const phases = {
  braking: { longitudinalAcceleration: -4, lateralJerk: 0 },
  "turn-in": { longitudinalAcceleration: -1, lateralJerk: 12 },
  middle: { longitudinalAcceleration: 0, lateralJerk: 0 },
  power: { longitudinalAcceleration: 2, lateralJerk: 0 },
};
type Phase = keyof typeof phases;
const names = Object.keys(phases) as Phase[];
const closeMargin: Record<Phase, number> = {
  braking: 0.1,
  "turn-in": 0.05,
  middle: 0.05,
  power: 0.1,
};

interface Named {
  readonly name: string;
  readonly phase: Phase;
  readonly car: PlainCar;
  readonly driving: { cornerRadius: number; longitudinalAcceleration: number; lateralJerk: number };
}

const inPhase = (phase: Phase, cornerRadius: number) => ({ ...phases[phase], cornerRadius });

const asCase = ({ car, driving }: { car: PlainCar; driving: PlainDriving }): IndependentCase => ({
  car,
  driving,
  want: ["margin", "hardest"],
});

const finely = (item: Named): IndependentCase => ({ ...asCase(item), finely: true });

/** What two solutions do not agree on, one line each, so that one run shows all of it. */
const disagreements = <T>(
  list: readonly T[],
  fault: (item: T, index: number) => string | undefined,
) => list.map(fault).filter((line) => line !== undefined);

describe("the independent solution of the whole car", () => {
  it("has the published values and the identities of mechanics", { timeout: 120_000 }, () => {
    const checks = ownChecks(referenceTyreCoefficients, cars.slice(0, long ? 20 : 1));
    expect(checks.length).toBeGreaterThan(long ? 400 : 40);
    const wrong = checks.filter(({ found, expected, within }) =>
      within === null ? !(found <= expected) : !(Math.abs(found - expected) <= within),
    );
    expect(wrong).toEqual([]);
  });
});

describe("the whole car in balance", () => {
  it("agrees with the independent solution in every phase", { timeout: 600_000 }, () => {
    const cases = cars.flatMap((car, number) =>
      names.flatMap((phase, at) =>
        (long ? radii : [radii[(number + at) % 3] as number]).map((radius): Named => {
          const name = `car ${number}, ${phase}, ${radius} m`;
          return { name, phase, car, driving: inPhase(phase, radius) };
        }),
      ),
    );
    const results = independently(cases.map(asCase));
    expect(disagreements(cases, (item, i) => disagreement(item, results[i]))).toEqual([]);
  });

  it("moves each way that the independent solution moves", { timeout: 3_600_000 }, () => {
    const starts = cars.slice(0, long ? 20 : 4).flatMap((car, number) =>
      names.map((phase, at): Named => {
        const driving = inPhase(phase, radii[(number + at) % 3] as number);
        return { name: `car ${number}, ${phase}, ${driving.cornerRadius} m`, phase, car, driving };
      }),
    );
    const cases = starts.map((before, at) => ({
      before,
      after: workshopChanges
        .filter((_, i) => long || (i + at) % 5 === 0)
        .map(({ name, of }) => ({
          ...before,
          name: `${before.name}: ${name}`,
          car: of(before.car),
        })),
    }));
    const results = independently(
      cases.flatMap(({ before, after }) => [before, ...after].map(asCase)),
    );
    const doubted = cases.flatMap(({ before, after }) => {
      const [one, ...others] = results.splice(0, 1 + after.length);
      return after.flatMap((item, i) =>
        wrongWay(before, item, one, others[i]) === undefined ? [] : [{ before, item }],
      );
    });
    // at a fork the other's longer steps may go over to another branch: it is asked once more, finely
    const again = independently(
      doubted.flatMap(({ before, item }) => [finely(before), finely(item)]),
    );
    const wrong = disagreements(doubted, ({ before, item }, i) =>
      wrongWay(before, item, again[2 * i], again[2 * i + 1]),
    );
    expect(wrong).toEqual([]);
  });

  it("is what a moving car shows in a slowly tightening turn", { timeout: 600_000 }, () => {
    const speeds = long ? [18, 25, 35] : [25];
    const cases = cars
      .slice(0, long ? 20 : 12)
      .flatMap((car, number) =>
        speeds.map((speed) => ({ name: `car ${number}, ${speed} m/s`, car, driving: { speed } })),
      );
    const moved = independently(cases.map((item) => ({ ...item, want: ["moving"] as const })));
    const balances = cases.map(({ car, driving }) =>
      carBalance(car, { ...driving, longitudinalAcceleration: 0 }),
    );
    const far = disagreements(cases, ({ name }, i) => {
      const { lateralAcceleration, first } = (moved[i] as IndependentResult).moving;
      const found = balances[i]?.lateralAcceleration ?? Number.NaN;
      const close = first === "front" ? 0.005 : 0.025;
      const off = found / lateralAcceleration - 1;
      return Math.abs(off) <= close ? undefined : `${name}: ${(100 * off).toFixed(2)} % off`;
    });
    expect(far).toEqual([]);
    const clear = cases.flatMap((_, i) => {
      const margin = balances[i]?.understeerMargin ?? Number.NaN;
      if (Math.abs(margin) < 0.1) return [];
      return [(margin > 0 ? "front" : "rear") === moved[i]?.moving.first];
    });
    expect(clear.length).toBeGreaterThan(cases.length / 2);
    expect(clear.filter(Boolean).length).toBeGreaterThanOrEqual(0.95 * clear.length);
  });
});

/** In one line where hardest turn or margin differ by more than is allowed. */
function disagreement({ name, phase, car, driving }: Named, other?: IndependentResult) {
  const found = carBalance(car, driving);
  if (!other?.hardest || !other.margin)
    return found.given ? `${name}: no such acceleration, says the other` : undefined;
  if (!found.given) return `${name}: no such acceleration, says the library`;
  const turn = found.lateralAcceleration / other.hardest.lateralAcceleration - 1;
  const margin = found.understeerMargin - other.margin.margin;
  if (found.tips !== other.hardest.tips) return `${name}: tips ${found.tips}`;
  if (Math.abs(turn) > 0.005) return `${name}: hardest turn ${(100 * turn).toFixed(2)} % off`;
  if (!found.tips && Math.abs(margin) > closeMargin[phase])
    return `${name}: margin ${found.understeerMargin.toFixed(3)}, the other ${other.margin.margin.toFixed(3)}`;
  return undefined;
}

/** In one line where a change of 0.05 m/s² or more goes the other way. */
function wrongWay(
  before: Named,
  after: Named,
  one: IndependentResult | undefined,
  two: IndependentResult | undefined,
) {
  if (!one?.hardest || !one.margin || !two?.hardest || !two.margin) return undefined;
  const [from, to] = [before, after].map(({ car, driving }) => carBalance(car, driving));
  if (!from || !to) return undefined;
  const margin = to.understeerMargin - from.understeerMargin;
  const turn = to.lateralAcceleration - from.lateralAcceleration;
  const theirs = two.margin.margin - one.margin.margin;
  const theirTurn = two.hardest.lateralAcceleration - one.hardest.lateralAcceleration;
  if (Math.abs(theirs) >= 0.05 && theirs * margin <= 0)
    return `${after.name}: margin ${margin.toFixed(3)}, the other ${theirs.toFixed(3)}`;
  if (Math.abs(theirTurn) >= 0.05 && theirTurn * turn <= 0)
    return `${after.name}: turn ${turn.toFixed(3)}, the other ${theirTurn.toFixed(3)}`;
  return undefined;
}

import { rangeSentence } from "../../check.js";
import { orUndefined } from "../../refusal.js";
import {
  type CoefficientRange,
  coefficientNames,
  coefficientRange,
  measuredNames,
  measuredRange,
  neededCoefficients,
  type TyreData,
  tyreOfData,
} from "../../tyre/tyre-data.js";
import { cut } from "./in-short.js";

/** What is wrong with the coefficients of a tyre, one sentence each; those that are missing are named. */
export function tyreDataFaults(data: TyreData, path = ""): string[] {
  const at = (name: string) => (path === "" ? name : `${path}.${name}`);
  const missing = Object.keys(neededCoefficients).filter((name) => !Object.hasOwn(data, name));
  const ranges = Object.entries(data).flatMap(([name, value]) => {
    const range = coefficientRange(name);
    return range === undefined || isWithin(value, range)
      ? []
      : [rangeSentence(at(cut(name)), value, range.min, range.max, range.unit)];
  });
  const faults = [...(missing.length > 0 ? [missingSentence(missing, path)] : []), ...ranges];
  return faults.length > 0 ? faults : [...orderFaults(data, at), ...formulaFaults(data, path)];
}

const isWithin = (value: number, { min, max }: CoefficientRange) => value >= min && value <= max;

function missingSentence(missing: readonly string[], path: string): string {
  const what = path === "" ? "" : `${path}: `;
  return `${what}missing, and a tyre cannot do without: ${missing.join(", ")}.`;
}

function orderFaults(data: TyreData, at: (name: string) => string): string[] {
  return Object.values(measuredNames).flatMap(([least, most]) => {
    const [from = 0, to = 0] = [data[least], data[most]];
    const { unit = "" } = coefficientRange(least) ?? {};
    return from <= to
      ? []
      : [`${at(least)} is ${from} ${unit} but must be at most ${most}, ${to} ${unit}.`];
  });
}

/** Inside the range that it was measured in a tyre pushes against slip, with a force that is a number. */
function formulaFaults(data: TyreData, path: string): string[] {
  const tyre = tyreOfData(data);
  const { load, pressure, inclination } = measuredRange(data);
  const loads = [0.02, 0.25, 0.5, 1].map((share) => Math.max(load.minimum, share * load.maximum));
  for (const one of loads)
    for (const air of [pressure.minimum, data.NOMPRES ?? 0, pressure.maximum])
      for (const lean of [inclination.minimum, 0, inclination.maximum]) {
        const state = { load: one, pressure: air, inclination: lean };
        if (orUndefined(() => isTyre(tyre, state))) continue;
        const where = path === "" ? "The tyre" : `${path}: the tyre`;
        return [
          `${where} gives no force against slip at ${one.toPrecision(4)} N, ${air} Pa and ${lean} rad of lean, which it says it was measured at.`,
        ];
      }
  return [];
}

interface State {
  readonly load: number;
  readonly pressure: number;
  readonly inclination: number;
}

function isTyre(tyre: ReturnType<typeof tyreOfData>, state: State): boolean {
  const numbers = [
    tyre.corneringStiffness(state),
    tyre.sideFriction(state),
    tyre.verticalStiffness(state),
    tyre.combinedForce({ ...state, slip: 0.1, slipAngle: 0 }).longitudinal,
  ];
  const more = [
    tyre.sideForce({ ...state, slipAngle: 0.1 }),
    tyre.aligningMoment({ ...state, slip: 0.05, slipAngle: 0.1 }),
    tyre.contactPatch(state).area,
  ];
  return numbers.every((one) => one > 0 && one < 1e9) && more.every(Number.isFinite);
}

/** Names that a table gives and the workbook does not use. */
export const unusedCoefficients = (data: TyreData): string[] =>
  Object.keys(data).filter((name) => coefficientRange(name) === undefined);

/** Names that may be left out and are: they count as 0. */
export const leftOutCoefficients = (data: TyreData): string[] =>
  coefficientNames.filter((name) => !Object.hasOwn(data, name));

import { requireInRange } from "../../check.js";
import type { SpaceAxle } from "../../linkage/axle-in-space.js";
import { distributeLoadTransfer } from "../../load/distribution.js";
import { parameters } from "../../parameters.js";
import { barRateOf, isBeamAxle } from "../axle.js";
import { carInRoll } from "../axle-loads.js";
import type { AntiRollBar, Axle, AxleTyre, Car, Differential } from "../car.js";
import { sprungMassOf } from "../masses.js";
import { bestPressureRange, dataTyreOf, OWN_TYRE } from "../tyres.js";
import { geometryShape } from "./car-shape.js";
import { knownFaultsOf } from "./known.js";
import { geometryOfLinkage } from "./linkage-geometry.js";
import { ruleFaultsOf } from "./rule-faults.js";
import { tyreDataFaults } from "./tyre-data-faults.js";
import { validatorOf } from "./validate.js";

/** What is wrong with a car whose fields are each in their range, one sentence each. */
export function inconsistenciesOf(car: Car): string[] {
  const ends = [...axleFaults(car.front, "front"), ...axleFaults(car.rear, "rear")];
  if (ends.length > 0) return ends;
  return [
    ...adjusterFaults(car.adjusters, "adjusters"),
    ...ruleFaultsOf(car.classRules, "classRules"),
    ...knownFaultsOf({ ...car }),
    ...standingFaultsOf(car),
  ];
}

function axleFaults(axle: Axle, end: string): string[] {
  const { bar, linkage, adjusters } = axle;
  return [
    ...beamFaults(axle, end),
    ...differentialFaults(axle.differential, `${end}.differential`),
    ...tyreFaults(axle.tyre, `${end}.tyre`),
    ...(bar === undefined ? [] : barFaults(bar, `${end}.bar`)),
    ...(linkage === undefined ? [] : linkageFaults(linkage, `${end}.linkage: `)),
    ...adjusterFaults(adjusters, `${end}.adjusters`),
  ];
}

/** Springs with a spacing of their own make a beam axle: joints and roll steer must fit that. */
function beamFaults(axle: Axle, end: string): string[] {
  const { spring, geometry, linkage } = axle;
  const { min, max } = parameters.springSpacing;
  if (linkage?.kind === "beam axle" && spring.spacing === undefined)
    return [
      `${end}.spring.spacing is missing but must be from ${min} to ${max} m ` +
        'with a linkage of kind "beam axle".',
    ];
  if (linkage?.kind === "independent" && spring.spacing !== undefined)
    return [
      `${end}.spring.spacing is ${spring.spacing} m but must be left out ` +
        'with a linkage of kind "independent".',
    ];
  if (geometry.rollSteer === undefined || isBeamAxle(axle)) return [];
  return [
    `${end}.geometry.rollSteer is ${geometry.rollSteer} but must be left out ` +
      "without spring.spacing: only a beam axle has one.",
  ];
}

/** A limited-slip differential says how much it locks; the other kinds have nothing to say there. */
function differentialFaults(differential: Differential | undefined, path: string): string[] {
  if (differential === undefined) return [];
  return (["power", "overrun"] as const).flatMap((way) => {
    const lock = differential[way];
    if (differential.kind === "limited-slip")
      return lock === undefined
        ? [`${path}.${way} is missing but must be from 0 to 1 with kind "limited-slip".`]
        : [];
    if (lock === undefined) return [];
    return [`${path}.${way} is ${lock} but must be left out with kind "${differential.kind}".`];
  });
}

/** A tyre of one's own cannot do without its data; of another they are kept and not used. */
function tyreFaults(tyre: AxleTyre, path: string): string[] {
  const { name, data } = tyre;
  const faults =
    data === undefined || name !== OWN_TYRE ? [] : tyreDataFaults(data, `${path}.data`);
  if (name === OWN_TYRE && data === undefined)
    faults.push(`${path}.name is "${OWN_TYRE}" but the file has no data of that tyre.`);
  return faults.length > 0 ? faults : bestPressureFaults(tyre, `${path}.bestPressure`);
}

/** A best pressure is one that the tyre's data reach, of a tyre that has one. */
function bestPressureFaults(tyre: AxleTyre, path: string): string[] {
  const { name, bestPressure } = tyre;
  if (bestPressure === undefined) return [];
  const range = bestPressureRange(dataTyreOf(tyre));
  if (range === undefined)
    return [
      `${path} is ${bestPressure} Pa but must be left out with the ${name} tyre: its data have none.`,
    ];
  const { minimum, maximum } = range;
  return thrown(() => requireInRange(path, bestPressure, minimum, maximum, "Pa"), "");
}

const faultsOfGeometry = validatorOf(geometryShape);

/** Joints must make an axle, one whose numbers the file can hold when it is written again. */
function linkageFaults(linkage: SpaceAxle, before: string): string[] {
  return told(() => faultsOfGeometry(geometryOfLinkage(linkage)), before);
}

function barFaults(bar: AntiRollBar, path: string): string[] {
  const places = bar.positions.map((_, i) => i + 1);
  const each = places.flatMap((position) => barRateFaults({ ...bar, position }, path));
  return bar.position <= places.length
    ? each
    : [...each, ...thrown(() => barRateOf(bar), `${path}: `)];
}

const STIFFEST_BAR = 1e7; // N/m, fifty times what a file may give as a rate

function barRateFaults(bar: AntiRollBar, path: string): string[] {
  const rate = () =>
    requireInRange("its rate, from tube and arm,", barRateOf(bar), 0, STIFFEST_BAR, "N/m");
  return thrown(rate, `${path}: `);
}

function adjusterFaults(adjusters: Car["adjusters"] | Axle["adjusters"], path: string): string[] {
  return Object.entries(adjusters ?? {})
    .filter(([, range]) => range?.min > range?.max) // fields that are not known may be anything
    .map(([lever]) => `${path}.${lever}.min must not be greater than its max.`);
}

const metres = (value: number) => Number(value.toFixed(3));

/** What keeps a car from standing on its wheels and springs, one sentence each. */
export function standingFaultsOf(car: Car): string[] {
  const { behindFrontAxle } = sprungMassOf(car);
  if (!(behindFrontAxle >= 0 && behindFrontAxle <= car.wheelbase))
    return [
      `The centre of gravity of all on the springs is ${metres(behindFrontAxle)} m behind the front ` +
        `axle but must be from 0 to ${car.wheelbase} m: see behindFrontAxle of body, driver, passenger, ` +
        "fuel and ballast.",
    ];
  return thrown(() => distributeLoadTransfer(carInRoll(car), 0), "The car as a whole: ");
}

/** The sentence of an error, if there is one. */
function thrown(work: () => unknown, before: string): string[] {
  return told(() => {
    work();
    return [];
  }, before);
}

/** What the work finds wrong, or the sentence of its error. */
function told(work: () => readonly string[], before: string): string[] {
  try {
    return work().map((fault) => before + fault);
  } catch (error) {
    return [before + (error instanceof Error ? error.message : String(error))];
  }
}

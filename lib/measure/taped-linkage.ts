import { type FrontViewLinkage, mapFrontView } from "../linkage/front-view.js";
import { frontViewAxle } from "../linkage/front-view-axle.js";
import { moveFrontView } from "../linkage/move-front-view.js";
import { normalFrom, randomFrom, seedFrom } from "../random.js";
import { orUndefined, Refusal } from "../refusal.js";
import type { Measured } from "./measured.js";

/** What joints measured by tape say of an axle on independent wheels. */
export interface TapedLinkage {
  /** m above the ground */
  readonly rollCentreHeight: Measured;
  /** m of roll centre height for each m that both wheels rise */
  readonly rollCentreMigration: Measured;
  /** rad of camber for each m that a wheel rises; above 0 out */
  readonly camberGain: Measured;
  /** Share of the tries in which the links could not be put together so, 0–1. */
  readonly lost: number;
}

const STEP = 2e-3; // m of travel, for slopes
const MOST_LOST = 0.2;

/**
 * Roll centre and camber gain from joints measured by tape, with the spread that the tape gives them,
 * by Monte Carlo through the real linkage: every joint off at random, up and sideways, each for itself.
 * The patch stays on the ground, since heights are measured from it.
 *
 * @param joints - left side, heights from the ground, sideways from the middle plane of the car, m
 * @param tape - m, standard uncertainty of one coordinate, above 0
 * @throws Refusal when the joints as read are no linkage, or one try in five is none
 * @see JCGM 101:2008 (GUM Supplement 1), 7
 */
export function linkageByTape(
  joints: FrontViewLinkage,
  tape: number,
  { tries = 400, seed = 1 }: { readonly tries?: number; readonly seed?: number } = {},
): TapedLinkage {
  const own = guidanceOf(joints);
  const random = randomFrom(seedFrom(`tape ${seed}`));
  const sampled = Array.from({ length: tries }, () =>
    orUndefined(() => guidanceOf(jolted(joints, tape, random))),
  ).filter((one) => one !== undefined);
  const lost = 1 - sampled.length / tries;
  if (lost > MOST_LOST)
    throw new Refusal("not-determined", "The joints are too near each other for this tape.");
  const told = (name: keyof typeof own): Measured => {
    const squares = sampled.map((one) => (one[name] - own[name]) ** 2);
    return { value: own[name], spread: Math.sqrt(sum(squares) / squares.length) };
  };
  return {
    rollCentreHeight: told("rollCentreHeight"),
    rollCentreMigration: told("rollCentreMigration"),
    camberGain: told("camberGain"),
    lost,
  };
}

const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);

function jolted(joints: FrontViewLinkage, tape: number, random: () => number): FrontViewLinkage {
  return mapFrontView(joints, ({ y, z }, name) => {
    const [aside, up] = [normalFrom(random), normalFrom(random)];
    return { y: y + tape * aside, z: name === "contactPatch" ? z : z + tape * up };
  });
}

function guidanceOf(joints: FrontViewLinkage) {
  const heightAt = (heave: number) => frontViewAxle(joints, { heave }).rollCentre.height;
  const [up, down] = [STEP, -STEP].map((travel) => moveFrontView(joints, travel).camberChange);
  return {
    rollCentreHeight: heightAt(0),
    rollCentreMigration: (heightAt(-STEP) - heightAt(STEP)) / (2 * STEP),
    camberGain: ((up ?? 0) - (down ?? 0)) / (2 * STEP),
  };
}

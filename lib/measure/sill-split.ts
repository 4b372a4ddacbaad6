import type { Car } from "../car/car.js";
import type { Sides, Wheels } from "../load/wheels.js";
import { Refusal } from "../refusal.js";
import { restOf } from "../statics/rest.js";
import type { Measured } from "./measured.js";
import { type Propagated, through } from "./through.js";

/**
 * Share of the roll stiffness that the front holds, 0–1, from four scales without and with a weight on
 * one sill half way between the axles: what moves across at each end, times half its track.
 *
 * No side force acts, so links move nothing: it is the share of springs, bars and tyres, with the
 * weight that leans on each end.
 *
 * @param before - kg under each wheel without the weight
 * @param after - kg under each wheel with it
 * @throws Refusal where nothing more than the readings are off moved across
 */
export function rollSplitBySill(
  car: Car,
  before: Wheels<Measured>,
  after: Wheels<Measured>,
): Propagated {
  const inputs = { ...named("without", before), ...named("with", after) };
  const told = through(inputs, (read) => {
    const across = (end: "Front" | "Rear", track: number) => {
      const more = (side: "Left" | "Right") =>
        read[`with${end}${side}`] - read[`without${end}${side}`];
      return ((more("Right") - more("Left")) * track) / 2; // kg·m
    };
    const [front, rear] = [across("Front", car.front.track), across("Rear", car.rear.track)];
    return { across: front + rear, share: front / (front + rear) };
  });
  if (!(Math.abs(told.across.value) > 2 * told.across.spread))
    throw new Refusal("not-determined", "No more moved across than the scales are off.");
  return told.share;
}

type Name<When extends string> = `${When}${"Front" | "Rear"}${"Left" | "Right"}`;

function named<When extends string>(
  when: When,
  { front, rear }: Wheels<Measured>,
): Record<Name<When>, Measured> {
  const sides = (end: string, { left, right }: Sides<Measured>) => [
    [`${when}${end}Left`, left],
    [`${when}${end}Right`, right],
  ];
  return Object.fromEntries([...sides("Front", front), ...sides("Rear", rear)]);
}

/** What the model says of the same. */
export function rollSplitOf(car: Car): number {
  const { body } = car;
  const arm = 1e-3; // m by which the body is off
  const weighed = { ...car, body: { ...body, leftOfCentre: body.leftOfCentre + arm } };
  const [before, after] = [restOf(car).load, restOf(weighed, car).load];
  const across = (end: "front" | "rear") => {
    const more = (side: "left" | "right") => after[end][side] - before[end][side];
    return (more("left") - more("right")) * car[end].track;
  };
  return across("front") / (across("front") + across("rear"));
}

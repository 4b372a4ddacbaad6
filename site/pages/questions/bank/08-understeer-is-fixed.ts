import {
  type Car,
  carBalance,
  handlingCarOf,
  type PhaseName,
  phases,
  Refusal,
} from "@rollbook/lib";
import type { IdeaName } from "./ideas.js";
import type { Choice, Draw, Misconception } from "./question.js";
import { otherEnd } from "./set-up.js";
import type { Tell } from "./tell.js";

const speed = 25; // m/s
const alike = 0.1; // m/s²

/** Which end lets go first in the middle of a corner, and how that moves in another part of it. */
function inOtherPhase(car: Car, name: PhaseName, tell: Tell) {
  const handling = handlingCarOf(car);
  const middle = carBalance(handling, { speed, ...phases.middle });
  const other = carBalance(handling, { speed, ...phases[name] });
  if (middle.first === "both") throw new Refusal("does-not-suit", "both its ends let go together.");
  const ahead = (margin: number) => (middle.first === "front" ? margin : -margin);
  const said = (margin: number) =>
    `the ${margin > 0 ? "front" : "rear"} lets go first, ${tell.acceleration(Math.abs(margin))} before the other end`;
  const [before, after] = [ahead(middle.understeerMargin), ahead(other.understeerMargin)];
  return {
    end: middle.first,
    before,
    push: phases[name].longitudinalAcceleration ?? 0,
    limits: `In the middle ${said(middle.understeerMargin)}; ${name} ${said(other.understeerMargin)}.`,
    towardsFront: other.understeerMargin > middle.understeerMargin,
    even: Math.abs(after) <= alike,
    same: after > alike && Math.abs(after - before) <= alike,
    more: after > alike && after - before > alike,
    swapped: after < -alike,
  };
}

const known = { front: "an understeering car", rear: "an oversteering car" } as const;

/** An answer that is right for some cars and a wrong idea for the others. */
function answer(
  text: string,
  isSo: boolean,
  idea: IdeaName,
  limits: string,
  why: string,
  not: string,
): Choice {
  const because = `${limits} ${isSo ? why : not}`;
  return isSo ? { text, isSo, because } : { text, isSo, because, idea };
}

const first: Draw = (car, tell) => {
  const { end, before, push, limits, towardsFront, ...found } = inOtherPhase(
    car,
    "braking in",
    tell,
  );
  const why = towardsFront
    ? "The front brakes use up more than the load that arrives in front brings, and the harder working outside wheels turn the nose out."
    : "Braking takes load off the rear, and its tyres turn with what is left.";
  return {
    ask: `In the middle of a steady corner the ${end} of this car lets go first, ${tell.acceleration(before)} before the other end. Nothing on the car is changed. Which end lets go first when you still brake, at ${tell.acceleration(-push, 0)}, while you turn in?`,
    choices: [
      {
        text: `The ${end}, by about as much: it is ${known[end]}.`,
        isSo: found.same,
        because: `${limits} Balance belongs to a car, a corner and what the driver does, not to the car alone.`,
        idea: "understeer-is-fixed",
      },
      answer(
        "Neither clearly: the ends come out nearly even.",
        found.even,
        "pushing-takes-alike",
        limits,
        `${why} Here that makes the ends even.`,
        `They do not. ${why}`,
      ),
      answer(
        `The ${end}, by more than before.`,
        found.more,
        "loaded-end-slides",
        limits,
        why,
        `Count both things that braking does: it moves load to the front, and it uses grip at both ends. ${why}`,
      ),
      answer(
        `The ${otherEnd(end)}.`,
        found.swapped,
        "brakes-change-ends",
        limits,
        `${why} The same car understeers in one part of a corner and oversteers in another, so a report says where and when.`,
        why,
      ),
    ],
  };
};

const twin: Draw = (car, tell) => {
  const { end, before, push, limits, towardsFront, ...found } = inOtherPhase(car, "power on", tell);
  const why = towardsFront
    ? "Power takes load off the front, and its tyres turn with what is left."
    : "The rear spends more grip on pushing than the load that arrives there brings, most of all at the light inside wheel.";
  return {
    ask: `A steady corner again: in the middle the ${end} of this car lets go first, ${tell.acceleration(before)} before the other end. Now the driver picks up the throttle, and it gains speed at ${tell.acceleration(push, 0)}. What does the limit look like?`,
    choices: [
      answer(
        `The ${end} still lets go first, by clearly more.`,
        found.more,
        "loaded-end-slides",
        limits,
        why,
        `Power moves load to the rear and uses up grip at the driven end. ${why}`,
      ),
      {
        text: `As before: the ${end}, by about ${tell.acceleration(before)}.`,
        isSo: found.same,
        because: `${limits} A car has no one balance that it carries through a whole corner. ${why}`,
        idea: "understeer-is-fixed",
      },
      answer(
        `Now the ${otherEnd(end)} lets go first.`,
        found.swapped,
        "power-frees-it",
        limits,
        why,
        `With this little power it does not. ${why}`,
      ),
      answer(
        "Both ends let go at nearly the same turn.",
        found.even,
        "pushing-takes-alike",
        limits,
        `${why} Here that makes the ends even.`,
        `One end is driven, and load moves from front to rear: nothing about it is alike. ${why}`,
      ),
    ],
  };
};

export const understeerIsFixed: Misconception = {
  idea: "understeer-is-fixed",
  chapter: "07-how-fast-the-load-arrives",
  first,
  twin,
};

import { understeerIsFixed as facts, otherEnd } from "@rollbook/lib";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

type Found = Pick<ReturnType<typeof facts.first>, "margin" | "phase">;

function limitsOf({ margin, phase }: Found, tell: Tell): string {
  const said = (ahead: number) =>
    `the ${ahead > 0 ? "front" : "rear"} lets go first, ${tell.acceleration(Math.abs(ahead))} before the other end`;
  return `In the middle ${said(margin.middle)}; ${phase} ${said(margin.other)}.`;
}

const known = { front: "an understeering car", rear: "an oversteering car" } as const;

const onBrakes = (towardsFront: boolean) =>
  towardsFront
    ? "The front brakes use up more than the load that arrives in front brings, and the harder working outside wheels turn the nose out."
    : "Braking takes load off the rear, and its tyres turn with what is left.";

const onPower = (towardsFront: boolean) =>
  towardsFront
    ? "Power takes load off the front, and its tyres turn with what is left."
    : "The rear spends more grip on pushing than the load that arrives there brings, most of all at the light inside wheel.";

export const understeerIsFixed = inWords(facts, {
  first: (found, tell) => {
    const { end, before, push, even, more, swapped } = found;
    const limits = limitsOf(found, tell);
    const why = onBrakes(found.towardsFront);
    return {
      ask: `In the middle of a steady corner the ${end} of this car lets go first, ${tell.acceleration(before)} before the other end. Nothing on the car is changed. Which end lets go first when you still brake, at ${tell.acceleration(-push, 0)}, while you turn in?`,
      choices: {
        same: {
          text: `The ${end}, by about as much: it is ${known[end]}.`,
          because: `${limits} Balance belongs to a car, a corner and what the driver does, not to the car alone.`,
        },
        even: {
          text: "Neither clearly: the ends come out nearly even.",
          because: `${limits} ${even ? `${why} Here that makes the ends even.` : `They do not. ${why}`}`,
        },
        more: {
          text: `The ${end}, by more than before.`,
          because: `${limits} ${more ? why : `Count both things that braking does: it moves load to the front, and it uses grip at both ends. ${why}`}`,
        },
        swapped: {
          text: `The ${otherEnd(end)}.`,
          because: `${limits} ${why}${swapped ? " The same car understeers in one part of a corner and oversteers in another, so a report says where and when." : ""}`,
        },
      },
    };
  },
  twin: (found, tell) => {
    const { end, before, push, even, more, swapped } = found;
    const limits = limitsOf(found, tell);
    const why = onPower(found.towardsFront);
    return {
      ask: `A steady corner again: in the middle the ${end} of this car lets go first, ${tell.acceleration(before)} before the other end. Now the driver picks up the throttle, and it gains speed at ${tell.acceleration(push, 0)}. What does the limit look like?`,
      choices: {
        more: {
          text: `The ${end} still lets go first, by clearly more.`,
          because: `${limits} ${more ? why : `Power moves load to the rear and uses up grip at the driven end. ${why}`}`,
        },
        same: {
          text: `As before: the ${end}, by about ${tell.acceleration(before)}.`,
          because: `${limits} A car has no one balance that it carries through a whole corner. ${why}`,
        },
        swapped: {
          text: `Now the ${otherEnd(end)} lets go first.`,
          because: `${limits} ${swapped ? why : `With this little power it does not. ${why}`}`,
        },
        even: {
          text: "Both ends let go at nearly the same turn.",
          because: `${limits} ${even ? `${why} Here that makes the ends even.` : `One end is driven, and load moves from front to rear: nothing about it is alike. ${why}`}`,
        },
      },
    };
  },
});

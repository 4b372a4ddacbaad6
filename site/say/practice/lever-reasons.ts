import type { End } from "@rollbook/lib";

const sooner = (end: End, is: boolean): string => `the ${end} slides ${is ? "sooner" : "later"}`;

/** More of the load transfer at an end, or less, and what comes of it. */
function transfer(end: End, more: boolean): string {
  const grip = more
    ? "twice the load is less than twice the grip, so the pair holds less"
    : "the two share their load more evenly, so the pair holds more";
  return `moves ${more ? "more" : "less"} load from the inner to the outer ${end} tyre; ${grip} and ${sooner(end, more)}. On the brakes the harder working outside wheels can outweigh that.`;
}

const damper = (end: End, more: boolean): string =>
  `${more ? "Stiffer" : "Softer"} ${end} dampers carry ${more ? "more" : "less"} of the load transfer at their end while the body still rolls, and none once its lean stands still: hardly anything of balance, but how the car arrives.`;

const mass = (more: boolean): string =>
  `${more ? "More" : "Less"} mass changes both what the tyres nearest to it carry and what they have to hold in the turn; grip does not grow in proportion to load, so the ends no longer share as before.`;

/** Why each lever moves balance, in one sentence, apart from code so that it can be translated. */
export const leverReasons = {
  barPosition: (end: End, more: boolean) =>
    `A ${more ? "stiffer" : "softer"} ${end} bar ${transfer(end, more)}`,
  springRate: (end: End, more: boolean) =>
    `A ${more ? "stiffer" : "softer"} pair of ${end} springs, as a bar does, ${transfer(end, more)}`,
  seatTurns: (end: End, more: boolean) =>
    `With the ${end === "front" ? "nose" : "tail"} ${more ? "higher" : "lower"} the ${end} wheels stand ${more ? "further out of" : "further up in"} their travel: camber and roll centre change there, and with them grip and the share of the load transfer.`,
  tyrePressure: (end: End, more: boolean) =>
    `${more ? "More" : "Less"} air in the ${end} tyres moves them towards their best pressure or away from it: nearer to it that end holds more, further from it less.`,
  camber: (end: End, more: boolean) =>
    `The outer ${end} tyre leans out as the body rolls, and camber stands it up again: ${more ? "with less of it" : "with more of it"} its lean in the turn comes nearer to where it grips best, or goes past it.`,
  toe: (end: End, more: boolean) =>
    `${more ? "More" : "Less"} toe-in sets the slip angles of the two ${end} tyres against each other anew, so that they reach their peaks at other moments.`,
  rollCentreHeight: (end: End, more: boolean) =>
    `A ${more ? "higher" : "lower"} ${end} roll centre sends ${more ? "more" : "less"} through the links and so ${transfer(end, more)}`,
  damperBump: damper,
  damperRebound: damper,
  brakeFrontShare: (more: boolean) =>
    `A tyre that brakes harder has less left to turn with: with ${more ? "more" : "less"} of the braking in front, ${sooner("front", more)} while you brake.`,
  driver: mass,
  passenger: mass,
  fuel: mass,
  ballast: mass,
};

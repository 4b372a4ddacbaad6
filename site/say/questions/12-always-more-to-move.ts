import { alwaysMoreToMove as facts, otherEnd } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const alwaysMoreToMove = inWords(facts, {
  first: ({ axle, bar, extra, lift, moved }, tell) => {
    const both = `That axle moves ${tell.newtons(moved.before)} before and ${tell.newtons(moved.after)} after`;
    return {
      ask: `With no front bar and ${tell.rollStiffness(bar)} behind, this car lifts its inside ${axle} wheel at ${tell.turn(lift)}. In a turn a little harder than that the wheel is in the air. You now make the ${axle} bar stiffer still, by ${tell.rollStiffness(extra)}. What does the outside ${axle} tyre carry in that same turn?`,
      choices: {
        more: {
          text: "More: the stiffer axle takes more of the transfer.",
          because: `${both}: all that its inside tyre ever had. There is nothing left to take.`,
        },
        pressed: {
          text: "Less: the bar presses the lifted wheel back on to the road.",
          because: `${both}. A bar pulls its inside wheel up, never down; a softer one would bring it down.`,
        },
        same: {
          text: "The same.",
          because: `${both}. It had moved all it has. Whatever else crosses in this turn crosses at the ${otherEnd(axle)}.`,
        },
        handed: {
          text: `Less: so stiff an axle hands load to the ${otherEnd(axle)}.`,
          because: `${both}. Stiffness takes load on; it never hands it away.`,
        },
      },
    };
  },
  twin: ({ axle, turn, more }, tell) => {
    const other = otherEnd(axle);
    const shares = `Of ${tell.newtons(more.own + more.other)} more, the ${axle} moves ${tell.newtons(more.own)} and the ${other} ${tell.newtons(more.other)}`;
    return {
      ask: `Photographs show the same car, set up like that, with its inside ${axle} wheel in the air at ${tell.turn(turn.before)}. It goes faster, until it turns at ${tell.turn(turn.after)}, and the wheel stays up. Which axle moves the load that crosses in addition?`,
      choices: {
        other: {
          text: `The ${other} alone.`,
          because: `${shares}. The axle in the air has moved all it had.`,
        },
        own: {
          text: `The ${axle}, for the most part: it is the stiff one.`,
          because: `${shares}. An axle can only move what its inside tyre still carries, and this one carries nothing.`,
        },
        shared: {
          text: "Both, in the shares they had before.",
          because: `${shares}. Stiffness shares the transfer only as long as all four wheels are down.`,
        },
        neither: {
          text: "Neither: with a wheel in the air no more load can move.",
          because: `${shares}. The turn asks for it, and as long as the other inside tyre carries something it can be moved.`,
        },
      },
    };
  },
});

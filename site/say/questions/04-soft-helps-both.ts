import { softHelpsBoth as facts } from "@rollbook/lib";
import { gripChanges } from "./grip-of-ends.js";
import { inWords } from "./in-words.js";

export const softHelpsBoth = inWords(facts, {
  first: (grip, tell) => {
    const changes = gripChanges(grip, tell);
    return {
      ask: `You fit front springs that are softer by a fifth and leave the rear alone. What happens to the grip of the two axles in a long steady corner, at ${tell.turn(grip.turn)}?`,
      choices: {
        traded: {
          text: "The front grips better, the rear less.",
          because: `${changes} The soft end moves less load between its tyres; the total has to go somewhere, so the other end moves more. Few newtons, but they decide which end slides first.`,
        },
        both: {
          text: "Both grip better: a softer car lets its tyres work.",
          because: `${changes} A softer front does keep its own tyres more evenly loaded, and the rear pays for it in the same corner.`,
        },
        ownOnly: {
          text: "The front grips better, the rear stays as it was.",
          because: `${changes} The turn settles the sum of what both axles move: nobody can touch one of them alone.`,
        },
        otherWay: {
          text: "The front grips less: nothing holds it up. The rear gains.",
          because: `${changes} Holding a body up is pressing on one tyre and lifting the other, and that costs grip.`,
        },
      },
    };
  },
  twin: (grip, tell) => {
    const changes = gripChanges(grip, tell);
    return {
      ask: `A member has had enough of a nervous rear and fits rear springs that are softer by three tenths; the front stays. At ${tell.turn(grip.turn)} in a steady corner, which tyres can give more side force than before, and which less?`,
      choices: {
        otherWay: {
          text: "The rear ones less: the rear falls over. The front ones more.",
          because: `${changes} A soft end leans no further than the rest of the body, and it moves less load from tyre to tyre.`,
        },
        ownOnly: {
          text: "The rear ones more, the front ones as much as before.",
          because: `${changes} What the rear no longer moves, the front must move.`,
        },
        both: {
          text: "All of them more.",
          because: `${changes} Grip that moves to one end has come from the other.`,
        },
        traded: {
          text: "The rear ones more, the front ones less.",
          because: `${changes} Softening an end is handing its load transfer to the other one.`,
        },
      },
    };
  },
});

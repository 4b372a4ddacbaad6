import { barHelpsOwnEnd as facts } from "@rollbook/lib";
import { gripChanges } from "./grip-of-ends.js";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

const doneTo = ({ end, stiffness, hadBar }: ReturnType<typeof facts.first>, tell: Tell) =>
  hadBar
    ? `make the ${end} bar stiffer by ${tell.rollStiffness(stiffness)}`
    : `fit a ${end} bar of ${tell.rollStiffness(stiffness)}`;

export const barHelpsOwnEnd = inWords(facts, {
  first: (grip, tell) => {
    const changes = gripChanges(grip, tell);
    return {
      ask: `Suppose that the rear slides first in a long steady corner. To hold it, you ${doneTo(grip, tell)}. What happens to the grip of the two axles, at ${tell.turn(grip.turn)}?`,
      choices: {
        ownGains: {
          text: "The rear grips better: the bar holds it up. The front is none the better.",
          because: `${changes} A bar carries no weight: what it lifts off its inside tyre it puts on its outside one. The rear slides sooner.`,
        },
        both: {
          text: "Both grip better: the car stands flatter.",
          because: `${changes} It does stand flatter. But flat is not grip; how evenly the tyres are loaded is.`,
        },
        traded: {
          text: "The rear grips less, the front better.",
          because: `${changes} A bar costs grip at its own end and gives it to the other one.`,
        },
        ownLoses: {
          text: "The rear grips less, the front stays: it has its own bar.",
          because: `${changes} The axles share one sum, so what the rear takes over the front is spared.`,
        },
      },
    };
  },
  twin: (grip, tell) => {
    const changes = gripChanges(grip, tell);
    return {
      ask: `The nose runs wide and leans hard on its outside tyre. A neighbour says: ${doneTo(grip, tell)}, that holds the nose up. You do it, and nothing else. What has each axle gained or lost at ${tell.turn(grip.turn)}?`,
      choices: {
        traded: {
          text: "The front has lost grip, the rear has gained some.",
          because: `${changes} It now runs wider still, with a flatter nose.`,
        },
        ownLoses: {
          text: "The front has lost grip, the rear has what it had.",
          because: `${changes} One sum is shared by two axles.`,
        },
        both: {
          text: "Both have gained: less roll, more grip.",
          because: `${changes} Less roll may keep the wheels more upright, but the load that this end moves has grown.`,
        },
        ownGains: {
          text: "The front has gained: its outside tyre is spared.",
          because: `${changes} The bar presses its outside tyre harder; that is how it holds the nose up.`,
        },
      },
    };
  },
});

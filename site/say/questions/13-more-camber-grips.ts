import { moreCamberGrips as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

type Forces = ReturnType<typeof facts.first>["forces"];

function pushes(forces: Forces, tell: Tell): string {
  const each = forces.map(({ lean, grip }) => `${tell.newtons(grip)} at ${tell.degrees(lean)}`);
  return `It can push with ${each.join(", ")}.`;
}

export const moreCamberGrips = inWords(facts, {
  first: ({ load, best, most, forces }, tell) => {
    const all = pushes(forces, tell);
    return {
      ask: `In a corner the outside front tyre of this car carries ${tell.newtons(load)}. With the camber you set how far it leans into the corner, against the road. At which lean can it push hardest?`,
      choices: {
        upright: {
          text: "Upright, 0°: its whole tread lies flat.",
          because: `${all} A pushing tyre bends under its rim; a little lean makes good for that.`,
        },
        most: {
          text: `At the most of these, ${tell.degrees(most)}: more lean, more push.`,
          because: `${all} Beyond the best lean the inner shoulder carries alone. And under braking, when the wheels do not lean into anything, all of it costs.`,
        },
        between: {
          text: `In between, near ${tell.degrees(best)}.`,
          because: `${all} Camber has a top, like pressure. Which camber at rest gives that lean in the corner depends on roll and links.`,
        },
        noOdds: {
          text: "It makes no odds: the load and the rubber are the same.",
          because: `${all} Lean decides which part of the tread carries.`,
        },
      },
    };
  },
  twin: ({ best, step, more, gained, forces }, tell) => {
    const all = pushes(forces, tell);
    return {
      ask: `More camber paid last time: with the outside front tyre leaning ${tell.degrees(best)} into the corner instead of ${tell.degrees(best - step)}, it can push with ${tell.newtons(gained)} more. What do another ${tell.degrees(more)} bring?`,
      choices: {
        asMuch: {
          text: "About as much again for each degree.",
          because: `${all} What paid once need not pay twice: nobody sees from one step where the top is.`,
        },
        less: {
          text: "They take some away again.",
          because: `${all} The last step ended at the top; from there every way leads down.`,
        },
        fading: {
          text: "Somewhat less each time, but always a little more.",
          because: `${all} The curve does flatten; but it flattens towards a top and then falls.`,
        },
        nothing: {
          text: "Nothing, for better or worse.",
          because: `${all} Near the top little happens, but further off it shows.`,
        },
      },
    };
  },
});

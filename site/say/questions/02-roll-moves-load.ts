import { rollMovesLoad as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const rollMovesLoad = inWords(facts, {
  first: ({ turn, total, lean, rigid }, tell) => {
    const both = `On solid blocks it is ${tell.newtons(rigid)}, on springs ${tell.newtons(total)}`;
    return {
      ask: `At ${tell.turn(turn)} this car leans ${tell.degrees(lean)} and ${tell.newtons(total)} goes to its outside tyres. A second car has the same mass, height and track, but solid blocks for springs, and it does not lean at all. How much load goes to its outside tyres?`,
      choices: {
        none: {
          text: "None: it does not lean.",
          because: `${both}. The side force acts on the ground, the mass resists at its height, and that pair tips the car whether or not anything gives.`,
        },
        same: {
          text: "Nearly as much.",
          because: `${both}. The difference is what the leaning body adds by hanging out.`,
        },
        less: {
          text: "Some, but clearly less: only what its tyres let it lean.",
          because: `${both}. Load moves in proportion to the side force, not to the lean.`,
        },
        more: {
          text: "Clearly more: nothing gives.",
          because: `${both}. Stiffness does not make load; mass, turn, height and track do.`,
        },
      },
    };
  },
  twin: ({ turn, kart, moved, halfWeight }, tell) => {
    const sum = `${tell.kilograms(kart.mass)} × ${tell.acceleration(turn, 0)} × ${tell.metres(kart.centreOfGravityHeight)} ÷ ${tell.metres(kart.track)}`;
    return {
      ask: `A kart has no springs. With its driver it has ${tell.kilograms(kart.mass)}, its centre of gravity stands ${tell.metres(kart.centreOfGravityHeight)} above the road, its track is ${tell.metres(kart.track)}. It turns at ${tell.turn(turn)}. How much load goes to its outside tyres?`,
      choices: {
        all: {
          text: `${tell.newtons(halfWeight)}, all that the inside tyres had: it is as stiff as can be.`,
          because: `Being stiff does not lift a wheel; the moment does, and it is not yet that large: ${tell.newtons(moved)}.`,
        },
        none: {
          text: "None: without springs nothing rolls.",
          because: `Nothing rolls, and ${tell.newtons(moved)} moves all the same. Ask anyone who has lifted an inside rear wheel in a kart.`,
        },
        moment: {
          text: `${tell.newtons(moved)}: mass, turn and height, over track.`,
          because: `${sum}. No spring is in that sum.`,
        },
        little: {
          text: "Hardly any: only its tyres and its frame give a little.",
          because: `How much gives does not matter. It moves ${tell.newtons(moved)}, ${tell.percent(moved / halfWeight, 0)} of all that its inside tyres carry.`,
        },
      },
    };
  },
});

import { stifferMovesMore as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";

export const stifferMovesMore = inWords(facts, {
  first: ({ turn, total, lean, byDampers }, tell) => {
    const loads = `${tell.newtons(total.before)} before, ${tell.newtons(total.after)} after`;
    const leans = `from ${tell.degrees(lean.before)} to ${tell.degrees(lean.after)}`;
    return {
      ask: `You fit springs half as stiff again at all four corners and take the same corner at the same speed, ${tell.turn(turn)}. How much load now goes from the inside tyres to the outside ones, front and rear together?`,
      choices: {
        more: {
          text: "Clearly more: stiffer springs push the outside tyres harder.",
          because: `A stiffer spring pushes harder for each degree of lean, but the body then leans less, ${leans}. The push comes out the same: ${loads}.`,
        },
        less: {
          text: "Clearly less: the car rolls less.",
          because: `It does roll less, ${leans}. The load hardly noticed: ${loads}. Roll is what load transfer does to a soft car, not what moves the load.`,
        },
        same: {
          text: "Nearly as much as before.",
          because: `Mass, turn, height and track are what they were, and they settle it: ${loads}. The springs settle how far the body leans, ${leans}.`,
        },
        dampers: {
          text: "That is for the dampers to decide.",
          because: `A damper pushes only while it moves. Once the body has settled in its lean, it adds ${tell.newtons(byDampers)}.`,
        },
      },
    };
  },
  twin: ({ turn, total, lean }, tell) => {
    const loads = `from ${tell.newtons(total.before)} to ${tell.newtons(total.after)}`;
    const leans = `from ${tell.degrees(lean.before)} to ${tell.degrees(lean.after)}`;
    return {
      ask: `For a wet afternoon the anti-roll bars come off. Suppose the same corner is taken at the same ${tell.turn(turn)}. What becomes of the load that goes to the outside tyres, front and rear together?`,
      choices: {
        less: {
          text: "It is clearly less: the soft car no longer presses on its outside tyres.",
          because: `Springs and body do what the bars did before, at a greater lean, ${leans}. The load goes ${loads}.`,
        },
        same: {
          text: "It stays nearly the same.",
          because: `It goes ${loads}; the lean goes ${leans}. What the bars moved, the springs now move.`,
        },
        more: {
          text: "It is clearly more: the car rolls further.",
          because: `The lean goes ${leans}, the load only ${loads}. The little that it grows is the body’s weight hanging out further.`,
        },
        none: {
          text: "Hardly any load moves now: it was the bars that moved it.",
          because: `Bars were never needed for it: cars without any still load their outside tyres. Here it goes ${loads}.`,
        },
      },
    };
  },
});

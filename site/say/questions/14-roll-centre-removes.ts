import { rollCentreRemoves as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

type Moved = Pick<ReturnType<typeof facts.first>, "front" | "rear" | "total">;

function loadsOf({ front, rear, total }: Moved, tell: Tell): string {
  const pair = ({ before, after }: Moved["total"]) =>
    `${tell.newtons(before)} to ${tell.newtons(after)}`;
  return `The front goes from ${pair(front)}, the rear from ${pair(rear)}, both together from ${pair(total)}`;
}

export const rollCentreRemoves = inWords(facts, {
  first: (moved, tell) => {
    const loads = loadsOf(moved, tell);
    return {
      ask: `New links raise the front roll centre of this car by ${tell.millimetres(moved.by)}; body, springs and bars stay as they are. In the same corner, at ${tell.turn(moved.turn)}, what changes in the load that goes to the outside tyres?`,
      choices: {
        less: {
          text: "The front moves less: what the links hold does not reach its tyres.",
          because: `${loads}. What the links hold they hold against the tyres; no link can push on the air.`,
        },
        nothing: {
          text: "Nothing, neither front nor rear: springs and bars are the same.",
          because: `${loads}. Springs and bars share out only what the links leave them.`,
        },
        ownOnly: {
          text: "The front moves more, and the rear as much as before.",
          because: `${loads}. With more through the front links the body leans less, so the rear springs move less.`,
        },
        traded: {
          text: "The front moves more, the rear less; the sum hardly changes.",
          because: `${loads}. A higher roll centre stiffens its end without a spring: it takes more of the same sum.`,
        },
      },
    };
  },
  twin: (moved, tell) => {
    const { turn, lean, links } = moved;
    const loads = loadsOf(moved, tell);
    const leans = `The lean goes from ${tell.degrees(lean.before)} to ${tell.degrees(lean.after)}.`;
    return {
      ask: `In this car the links carry ${tell.newtons(links)} of the load that moves at ${tell.turn(turn)}. Other links put both roll centres on the ground, where links carry nothing of the body. What happens to the load that goes to the outside tyres?`,
      choices: {
        nothing: {
          text: "Nothing changes at all, not even the lean.",
          because: `${leans} ${loads}. The springs now have to do what the links did.`,
        },
        removed: {
          text: `It falls by those ${tell.newtons(links)}.`,
          because: `${loads}. ${leans} What the links no longer carry, springs and bars must.`,
        },
        same: {
          text: "It stays nearly the same; springs and bars carry more of it.",
          because: `${loads}. ${leans} The roll centre chooses the road, not the amount.`,
        },
        more: {
          text: "It clearly grows: the body leans further.",
          because: `${leans} ${loads}. What little it grows is the body’s weight hanging out further.`,
        },
      },
    };
  },
});

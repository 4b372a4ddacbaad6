import { pressureOneWay as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

type Tyres = Pick<ReturnType<typeof facts.first>, "best" | "soft" | "hard">;

function changesOf({ best, soft, hard }: Tyres, tell: Tell): string {
  const said = ({ pressure, grip }: Tyres["soft"]) =>
    `from ${tell.pressure(pressure.before)} to ${tell.pressure(pressure.after)} it goes from ${tell.newtons(grip.before)} to ${tell.newtons(grip.after)}`;
  return `This tyre grips best near ${tell.pressure(best)}: ${said(soft)}, ${said(hard)}.`;
}

export const pressureOneWay = inWords(facts, {
  first: (tyres, tell) => {
    const { load, by, soft, hard } = tyres;
    const changes = changesOf(tyres, tell);
    return {
      ask: `Two tyres like the front ones of this car, each under ${tell.newtons(load)}. Warm, one stands at ${tell.pressure(soft.pressure.before)}, the other at ${tell.pressure(hard.pressure.before)}. You let ${tell.pressure(-by)} out of each. What happens to their grip?`,
      choices: {
        bothMore: {
          text: "Both grip better: more print on the road.",
          because: `${changes} A bigger print is no use by itself; it counts how evenly the load lies on it.`,
        },
        neither: {
          text: "Neither changes: it is the same rubber under the same load.",
          because: `${changes} The air decides how the load is spread over the rubber.`,
        },
        onlyHard: {
          text: "The harder one grips better, the softer one less.",
          because: `${changes} The same step leads up one side of the hill and down the other.`,
        },
        bothLess: {
          text: "Both grip less: they go soft.",
          because: `${changes} A hard tyre may feel quick in your hands, but feel is not grip.`,
        },
      },
    };
  },
  twin: (tyres, tell) => {
    const { load, by, soft, hard } = tyres;
    const changes = changesOf(tyres, tell);
    return {
      ask: `Sun is coming. Two members pump ${tell.pressure(by)} into the same kind of tyre, each under ${tell.newtons(load)}: one had ${tell.pressure(soft.pressure.before)}, warm, the other ${tell.pressure(hard.pressure.before)}. Whose tyre grips better now?`,
      choices: {
        bothMore: {
          text: "Both: a stiffer tyre holds its shape.",
          because: `${changes} Beyond the top the middle of the tread carries alone.`,
        },
        bothLess: {
          text: "Neither: more air is less print, and less print is less grip.",
          because: `${changes} The print shrinks for both, and one of them gains.`,
        },
        neither: {
          text: "Nobody’s: pressure changes feel and wear, not grip.",
          because: `${changes} Feel changes too, and it tells you little about either.`,
        },
        onlySoft: {
          text: `That of the one who had ${tell.pressure(soft.pressure.before)}.`,
          because: `${changes} Before you turn a valve, find out on which side of the top you stand.`,
        },
      },
    };
  },
});

import { feltSoItWorked as facts } from "@rollbook/lib";
import { inWords } from "./in-words.js";
import type { Tell } from "./tell.js";

type Found = Pick<ReturnType<typeof facts.first>, "air" | "alone" | "both" | "limit">;

const airOf = ({ air }: Found, tell: Tell) =>
  `${tell.pressure(Math.abs(air))} ${air < 0 ? "less" : "more"} in its tyres`;

function effectsOf({ limit, alone, both }: Found, tell: Tell): string {
  const signed = (value: number) =>
    `${value < 0 ? "−" : "+"}${tell.acceleration(Math.abs(value), 3)}`;
  return `By the model the car’s limit, ${tell.acceleration(limit)}, moves by ${signed(alone.springs)} with the springs alone, by ${signed(alone.air)} with the air alone, and by ${signed(both)} with both.`;
}

export const feltSoItWorked = inWords(facts, {
  first: (found, tell) => {
    const effects = effectsOf(found, tell);
    return {
      ask: `The ${found.end} of this car lets go first. At lunch that end gets springs that are softer by three tenths and, to save a run, ${airOf(found, tell)} as well. In the afternoon the car reaches further, ${tell.acceleration(found.both)} more, and it feels better. What is now known about the change of air?`,
      choices: {
        helped: {
          text: "It helps: the car got better.",
          because: `${effects} The feeling was right, and it belongs to both changes together. One of them did the work of two.`,
        },
        unknown: {
          text: "Nothing: one run, two changes.",
          because: `${effects} To know, make one change, run, put it back, run again.`,
        },
        noHarm: {
          text: "At least it did no harm: that would have been felt.",
          because: `${effects} A smaller harm hides behind a larger help.`,
        },
        little: {
          text: "Too little to matter: the springs were the bigger change.",
          because: `${effects} How big a change looks says nothing of what it does.`,
        },
      },
    };
  },
  twin: (found, tell) => {
    const effects = effectsOf(found, tell);
    return {
      ask: `Another day, the other way about: the ${found.end} gets springs that are softer by 7 % and ${airOf(found, tell)}. The car reaches less far than before, by ${tell.acceleration(-found.both)}, and it feels worse. What is now known about the softer springs?`,
      choices: {
        harmed: {
          text: "They are wrong for this car: it got worse.",
          because: `${effects} The afternoon judged the two together, and the springs were judged for what the air did.`,
        },
        nothing: {
          text: "They do next to nothing: the air decided.",
          because: `${effects} A smaller help hides behind a larger harm, just as well as the other way about.`,
        },
        unknown: {
          text: "Either they helped or they did harm: the run cannot tell.",
          because: `${effects} Put one of the two back and run again; then it can.`,
        },
        half: {
          text: "Two changes, one result: each did half of the harm.",
          because: `${effects} Effects do not share themselves out evenly, and these two do not even point the same way.`,
        },
      },
    };
  },
});

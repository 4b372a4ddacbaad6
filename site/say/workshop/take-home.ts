import type { Expectation, Showed } from "@rollbook/lib";
import { report } from "./report.js";

/** What each driver takes home, on paper. */
export const takeHome = {
  title: (driver: string, day: string) => `${driver}: ${day}`,
  none: "Nobody has filed an expectation or a report of this day yet.",
  run: (run: number, car: string) => (car === "" ? `Run ${run}` : `Run ${run}, ${car}`),
  changed: (changes: string) => `Changed: ${changes}.`,
  nothing: "Nothing was changed.",
  expected: (expects: Expectation, reason: string, sure: string) =>
    `You expected that ${clause[expects]}${sure === "" ? "" : `, ${sure}`}: “${reason}”`,
  expectedNothing: "You filed no expectation.",
  model: (way: Expectation) => `The model says of those places: ${report.expects[way]}.`,
  measured: "Measured, of all who drove:",
  columns: {
    corner: "Where",
    phase: "When",
    said: "You said",
    felt: "Felt, points",
    model: "Model",
  },
  table: "Felt beside the model",
  showed: {
    "nothing-to-compare":
      "There is no run before in this car to lay it beside: it is where you began.",
    "left-out": "This run does not count.",
    "other-road":
      "The road was another one, wet or dry, than in the run before: what you felt may be the water.",
    "other-car": "You drove another car before: what you felt may be the car.",
    confounded: "Several things were changed at once: nobody can say which of them you felt.",
    "nothing-changed":
      "Nothing was changed: this is how much your feeling moves by itself. Trust a change only if you feel more than that.",
    "as-predicted": "In most places you felt what the model says.",
    otherwise:
      "In most places you felt something else than the model says. Neither is wrong until it is driven again: line, tyres and traffic count too.",
    "nothing-felt":
      "In most places you felt no difference. It may be too small to feel, or the line hid it: ask for twice as much.",
    mixed:
      "Some places were as the model says and some were not: too few of either to say more. More laps, or a larger change, tell.",
  } satisfies Record<Showed, string>,
  showedTitle: "What it showed",
  last: "The model is steady and on a smooth road. The maker’s manual, the class rules and licensed people come first.",
} as const;

const clause: Readonly<Record<Expectation, string>> = {
  "front slides first": "the front slides earlier",
  "no change": "it makes no difference",
  "rear slides first": "the rear slides earlier",
};

import { PROMPT, sections } from "./shape.js";

/** What stands under each heading of a new chapter until its author writes there. */
const prompts: Readonly<Record<(typeof sections)[number], string>> = {
  Puzzle: "something from a club day that surprises.",
  Predict:
    "one question, then a `predict` cell; wrong choices are what people really think, each with its reason.",
  "What happens":
    "the first live figure, with `after` and two or three `looks`; under it a paragraph that opens with **Find out.**",
  Why: "the derivation, in words first, then symbols between dollars, one step a cell, each symbol with its unit when it appears.",
  "In numbers": "four or more worked numbers for the current car.",
  "What shifts it": "two or three more live figures, each with its **Find out.**",
  "Try it on the car":
    "one change, smallest step first, how to undo it, what to feel for and where; then the caution.",
  "What else that change moves":
    "ride height, camber, toe, cross weight, travel, frequency, and what to put back.",
  "Where this picture ends": "what the model leaves out.",
  Summary: "three to five sentences.",
  Exercises: "four or more `exercise` cells, from easy to hard, most with a likely slip.",
};

const caution =
  "> **Caution.** Work under a car and springs under load can hurt people: the maker's manual, the class rules, local codes and licensed people come first.";

const tools = `import { rigidCarOf } from "@rollbook/lib";
import { currentCar, worked } from "@rollbook/cells";

const car = currentCar();`;

const firstNumber = `worked({ id: "mass", label: "Mass of the car", value: rigidCarOf(car).mass, quantity: "mass", decimals: 0 });`;

interface RawCell {
  readonly cell_type: "code" | "markdown";
  readonly id: string;
  readonly metadata: object;
  readonly source: readonly string[];
  readonly outputs?: readonly [];
  readonly execution_count?: null;
}

const lines = (text: string): string[] => text.split(/(?<=\n)/);

const prose = (id: string, text: string): RawCell => ({
  ...{ cell_type: "markdown", id, metadata: {} },
  source: lines(text),
});

const code = (id: string, text: string): RawCell => ({
  ...{ cell_type: "code", execution_count: null, id, metadata: {}, outputs: [] },
  source: lines(text),
});

function sectionCells(section: (typeof sections)[number], slug: string): RawCell[] {
  const text = prose(slug, `## ${section}\n\n${PROMPT} ${prompts[section]}`);
  if (section === "In numbers") return [text, code("mass", firstNumber)];
  return section === "Try it on the car" ? [text, prose("caution", caution)] : [text];
}

/** A notebook with the sections of a chapter and a first number. */
export function notebookFor(title: string, slugOf: (text: string) => string): string {
  const cells = [
    prose(
      "title",
      `# ${title}\n\n${PROMPT} the one idea, in one paragraph; the contents page shows it.`,
    ),
    code("tools", tools),
    ...sections.flatMap((section) => sectionCells(section, slugOf(section))),
  ];
  const kernelspec = { display_name: "TypeScript", language: "typescript", name: "tslab" };
  const language_info = { file_extension: ".ts", mimetype: "text/typescript", name: "typescript" };
  const metadata = { kernelspec, language_info };
  return `${JSON.stringify({ cells, metadata, nbformat: 4, nbformat_minor: 5 }, null, 1)}\n`;
}

/** Its pins: the first number, worked out by hand. */
export const pinsFor = (importing: string): string => `${importing}
export const pins${importing && ": Pins"} = {
  mass: { value: 810 + 80 + 30 + 75 + 85, from: "the demo car's body, driver, fuel and wheels, kg" },
};
`;

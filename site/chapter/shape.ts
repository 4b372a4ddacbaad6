import { CourseError, codeCells, type Notebook, placeIn } from "../build/notebook.js";
import { inList } from "../say/in-list.js";

/** The sections of a chapter in their order, each a heading of the second level. */
export const sections = [
  "Puzzle",
  "Predict",
  "What happens",
  "Why",
  "In numbers",
  "What shifts it",
  "Try it on the car",
  "What else that change moves",
  "Where this picture ends",
  "Summary",
  "Exercises",
] as const;

/** What a chapter shows at least, and where it stands. */
const shown = [
  { call: "predict", things: "predictions", where: ["Predict"], least: 1 },
  { call: "figure", things: "figures", where: ["What happens", "What shifts it"], least: 3 },
  { call: "worked", things: "worked numbers", where: ["In numbers"], least: 4 },
  { call: "exercise", things: "exercises", where: ["Exercises"], least: 4 },
] as const;

const LENGTH = { least: 30, most: 66 }; // cells; chapter 9 has luck and how sure too

const words = ["none", "one", "two", "three", "four"];
const inWords = (count: number): string => words[count] ?? String(count);

const sourcesOf = (notebook: Notebook, kind: "code" | "markdown") =>
  notebook.cells.filter((cell) => cell.kind === kind);

export const headingsOf = (notebook: Notebook): string[] =>
  sourcesOf(notebook, "markdown").flatMap(({ source }) =>
    [...source.matchAll(/^## (?:Deeper: )?(.+)$/gm)].map(([, text = ""]) => text),
  );

function sectionFaults(notebook: Notebook): string[] {
  const headings = headingsOf(notebook);
  const missing = sections.filter((section) => !headings.includes(section));
  const others = headings.filter((heading) => !sections.some((section) => section === heading));
  const twice = headings.filter((heading, i) => headings.indexOf(heading) !== i);
  const faults = [
    ...missing.map((section) => `There is no *${section}*${afterWhat(section)}.`),
    ...others.map((heading) => `*${heading}* is no section of a chapter; inside one, use ###.`),
    ...twice.map((heading) => `*${heading}* stands twice.`),
  ];
  const inOrder = headings.join() === sections.join();
  if (faults.length > 0 || inOrder) return faults;
  const early = headings.findIndex((heading, i) => heading !== sections[i]);
  return [`*${headings[early]}* comes too early; readers look for *${sections[early]}* there.`];
}

function afterWhat(section: (typeof sections)[number]): string {
  const before = sections[sections.indexOf(section) - 1];
  return before ? `; it follows *${before}*` : "; it comes first, after the one idea";
}

function countFaults(notebook: Notebook): string[] {
  const all = codeCells(notebook)
    .map(({ source }) => source)
    .join("\n");
  return shown.flatMap(({ call, things, where, least }) => {
    const count = all.match(new RegExp(`^${call}\\(`, "gm"))?.length ?? 0;
    if (count >= least) return [];
    const places = inList(where.map((section) => `*${section}*`));
    return [`In ${places}: ${inWords(least)} or more ${things}, found ${inWords(count)}.`];
  });
}

function lengthFaults({ cells }: Notebook): string[] {
  const { length } = cells;
  if (length >= LENGTH.least && length <= LENGTH.most) return [];
  return [
    `It has ${length} cells; a chapter has ${LENGTH.least} to ${LENGTH.most}, one thought a cell.`,
  ];
}

function cautionFaults(notebook: Notebook): string[] {
  const warned = sourcesOf(notebook, "markdown").some(({ source }) =>
    /^> \*\*Caution/m.test(source),
  );
  return warned
    ? []
    : [
        "In *Try it on the car*: nothing warns; open a quotation with **Caution.** before anyone is sent to a car.",
      ];
}

function importFaults(notebook: Notebook): string[] {
  return codeCells(notebook)
    .slice(1)
    .filter(({ source }) => /^import /m.test(source))
    .map(({ id }) => `${placeIn(notebook, id)}: imports stand in the first code cell alone.`);
}

const withUnit = /\d[\d.,]*\s?(N|kN|kg|mm|m|kPa|bar|psi|km\/h|m\/s²|Hz|N\/mm|Nm|°)(?![\w/])/;
const excused = /common practice, no source|\(\D*\d{4}\)/;

/** Figures with units are the kernel's to write. */
function unitFaults(notebook: Notebook): string[] {
  return sourcesOf(notebook, "markdown").flatMap(({ id, source }) =>
    source.split("\n").flatMap((line, i) => {
      const [figure] = withUnit.exec(line) ?? [];
      if (figure === undefined || excused.test(line)) return [];
      return [
        `${placeIn(notebook, id, i + 1)}: "${figure}" is a figure in prose; let a cell write it, or say "common practice, no source".`,
      ];
    }),
  );
}

/** How a prompt of a new chapter begins; none may be left. */
export const PROMPT = "*To write:*";

function promptFaults({ cells }: Notebook): string[] {
  const left = cells.flatMap(({ id, source }) => (source.includes(PROMPT) ? [id] : []));
  return left.length > 0 ? [`Still to be written: ${inList(left)}.`] : [];
}

/** What of a chapter is not as readers know chapters, a sentence each. */
export const shapeFaults = (notebook: Notebook): string[] => [
  ...promptFaults(notebook),
  ...sectionFaults(notebook),
  ...countFaults(notebook),
  ...lengthFaults(notebook),
  ...cautionFaults(notebook),
  ...importFaults(notebook),
  ...unitFaults(notebook),
];

/** Cells that are kept with results, which would hide what an author changed. */
export function resultFaults(notebook: Notebook, text: string): string[] {
  const { cells } = JSON.parse(text) as {
    cells: { id: string; outputs?: unknown[]; execution_count?: number | null }[];
  };
  return cells
    .filter(
      ({ outputs = [], execution_count }) =>
        outputs.length > 0 || (execution_count ?? null) !== null,
    )
    .map(
      ({ id }) => `${placeIn(notebook, id)}: it is kept with results; clear all outputs and save.`,
    );
}

/** Cells whose source shows the answer of what they ask, in front ends that show it. */
export function answerFaults(notebook: Notebook, text: string): string[] {
  const { cells } = JSON.parse(text) as {
    cells: { id: string; metadata?: { jupyter?: { source_hidden?: boolean }; tags?: string[] } }[];
  };
  const isHidden = (id: string): boolean => {
    const { jupyter, tags = [] } = cells.find((cell) => cell.id === id)?.metadata ?? {};
    return jupyter?.source_hidden === true && tags.includes("hide-input");
  };
  return codeCells(notebook)
    .filter(({ id, source }) => /^(predict|exercise)\(/m.test(source) && !isHidden(id))
    .map(
      ({ id }) =>
        `${placeIn(notebook, id)}: its source holds an answer; give it the metadata "jupyter": {"source_hidden": true}, "tags": ["hide-input"].`,
    );
}

/** The chapter of a number, such as "10". */
export function chapterOf(notebooks: readonly Notebook[], number: string): Notebook {
  const found = notebooks.find(({ name }) => name.startsWith(`${number.padStart(2, "0")}-`));
  if (found) return found;
  const numbers = notebooks.map(({ name }) => name.slice(0, 2));
  throw new CourseError(`There is no chapter ${number}; there are ${inList(numbers)}.`);
}

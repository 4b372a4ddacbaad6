import { join } from "../build/join.js";
import { codeCells, type Notebook, placeIn } from "../build/notebook.js";
import { importedIn, namesIn, productsIn } from "./cell-code.js";

/** Names that a formula of a car's handling is made of, in words or as its symbols. */
const physical =
  /(mass|weight|gravity|height|track|wheelbase|stiffness|rate|load|force|acceleration|speed|radius|pressure|angle|moment|transfer|share|arm|ratio|damping)$|^[a-z]$/i;

const FEW = 3; // fewer factors are a change of scale, or a half

/** Products of three or more such names: a formula that belongs into the library. */
export function physicsFaults(notebook: Notebook): string[] {
  return codeCells(notebook).flatMap(({ id, source }) =>
    productsIn(source).flatMap(({ text, line, factors }) => {
      const names = [...new Set(factors.filter((name) => physical.test(name)))];
      if (names.length < FEW) return [];
      return [
        `${placeIn(notebook, id, line)}: "${text}" is physics; call the library for it, or add it there.`,
      ];
    }),
  );
}

/** Names that are imported and never used. */
export function unusedFaults(notebook: Notebook): string[] {
  const used = namesIn(join(notebook).source);
  return codeCells(notebook).flatMap(({ id, source }) =>
    importedIn(source)
      .filter(({ text }) => !used.has(text))
      .map(
        ({ text, line }) => `${placeIn(notebook, id, line)}: ${text} is imported and never used.`,
      ),
  );
}

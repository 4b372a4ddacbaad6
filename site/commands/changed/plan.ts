import { readdirSync } from "node:fs";
import { basename } from "node:path";
import { inRoot } from "../../build/paths.js";
import { candidatesFor } from "./candidates.js";
import { choose } from "./choose.js";
import { filesChangedSince } from "./git.js";

const most = 40; // s on two quiet cores

export interface Plan {
  readonly changed: readonly string[];
  readonly files: readonly string[];
  /** Pages to which tests of all pages keep. */
  readonly pages: readonly string[];
  readonly left: readonly string[];
}

const pageNames = (): string[] => [
  "index",
  ...readdirSync(inRoot("notebooks"))
    .filter((file) => file.endsWith(".ipynb"))
    .map((file) => basename(file, ".ipynb")),
  ...readdirSync(inRoot("site/pages"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name),
];

/** What to run for the files that differ from a commit. */
export async function planFor(
  commit: string,
  secondsKept: Readonly<Record<string, number>>,
): Promise<Plan> {
  const changed = filesChangedSince(commit);
  const { candidates, shown } = await candidatesFor(changed, pageNames(), secondsKept);
  const { chosen, left } = choose(candidates, most);
  const names = (list: typeof chosen) => list.map(({ file }) => file);
  return { changed, files: names(chosen), pages: shown, left: names(left) };
}

import { existsSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { looksAt } from "../../../test/site/browser/covers.js";
import { usualSeconds } from "../../../test/usual-seconds.js";
import { inRoot } from "../../build/paths.js";
import type { Candidate } from "./choose.js";
import { filesBelow, importsOf } from "./graph.js";
import { pagesOf, scriptOf } from "./pages-of.js";

const inBrowser = /^test\/site\/browser\/.*\.test\.ts$/;

/** Guesses for a file that has not run on this machine yet, s. */
const guess = (file: string): number => usualSeconds[file] ?? (inBrowser.test(file) ? 15 : 2);

/** Files that no import leads to, such as documents and notebooks, concern the tests that name them. */
const names = (test: string, file: string): boolean =>
  !/\.tsx?$/.test(file) && readFileSync(inRoot(test), "utf8").includes(basename(file));

const courseFolders = /^test\/(notebooks|worked-figures)\//;

/** Everything that a change concerns: test files, and pages to which tests of all pages can keep. */
export async function candidatesFor(
  changed: readonly string[],
  pages: readonly string[],
  kept: Readonly<Record<string, number>>,
): Promise<{ candidates: Candidate[]; shown: string[] }> {
  const tests = filesBelow("test", ".test.ts");
  const scripts = [...new Set(pages.map(scriptOf))].filter((file) => existsSync(inRoot(file)));
  const graph = await importsOf([...tests, ...scripts]);
  const shownIn = pagesOf(changed, graph, pages);
  const distanceOf = (test: string): number =>
    Math.min(
      ...changed.flatMap((file) => {
        const away = graph.get(test)?.get(file);
        const notebook = file.endsWith(".ipynb") && courseFolders.test(test);
        return [away, names(test, file) || notebook ? 1 : undefined].filter((n) => n !== undefined);
      }),
      ...[...shownIn]
        .filter(([page]) => inBrowser.test(test) && looksAt(basename(test), page))
        .map(([, distance]) => distance + 1),
    );
  const share = shownIn.size / pages.length;
  const candidates = tests
    .map((file) => ({ file, distance: distanceOf(file), seconds: kept[file] ?? guess(file) }))
    .filter(({ distance }) => Number.isFinite(distance))
    .map((one) => (ofAllPages(one.file) ? { ...one, seconds: one.seconds * share } : one));
  return { candidates, shown: [...shownIn.keys()] };
}

/** Whether a test goes through all pages or chapters, and keeps to some when told. */
const ofAllPages = (file: string): boolean =>
  inBrowser.test(file) && readFileSync(inRoot(file), "utf8").includes("(each");

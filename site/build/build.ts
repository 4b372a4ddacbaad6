import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { type Api, currentApi } from "../api/kept.js";
import type { Outputs, Progress } from "../kernel/run.js";
import { pages } from "../pages/pages.js";
import { bundleCourse, bundleFrame, type Taking } from "./bundle.js";
import { cachedOutputs } from "./cache.js";
import { type Chapter, chapterOf, codePage } from "./chapter.js";
import { chapterPage } from "./chapter-page.js";
import { contentsPage } from "./contents-page.js";
import { formulaStyles, shortStyles } from "./fonts.js";
import { join } from "./join.js";
import { kept } from "./kept.js";
import { listingPage } from "./listing-page.js";
import { notFoundPage } from "./not-found.js";
import { CourseError, type Notebook, readNotebook } from "./notebook.js";
import { writeOffline } from "./offline.js";
import { keepToOwn } from "./own-chapters.js";
import { inRoot } from "./paths.js";
import { writePreviews } from "./preview.js";
import { writeSearchIndex } from "./search-index.js";
import { notices } from "./shipped.js";
import { writePageScripts, writeSitePages } from "./site-pages.js";
import { typecheck, writeJoined } from "./typecheck.js";
import { writeWorkbench } from "./workbench.js";

export interface BuildOptions {
  readonly notebooks?: string;
  readonly out?: string;
  /** Below the repository, so that imports resolve. */
  readonly joined?: string;
  /** Where the course will be found, with a slash at its end. */
  readonly url?: string;
  /** Where chapters are that an outside course does not have, with a slash at its end. */
  readonly rest?: string;
  readonly progress?: Progress;
}

export function readNotebooks(folder = inRoot("notebooks")): Notebook[] {
  const names = readdirSync(folder).filter((file) => file.endsWith(".ipynb"));
  if (names.length === 0) throw new CourseError(`${folder}: no notebooks`);
  return names.sort().map((file) => readNotebook(`${folder}/${file}`));
}

function writeChapters(
  notebooks: readonly Notebook[],
  chapters: readonly Chapter[],
  sandboxHash: string,
  api: Api | undefined,
  out: string,
): void {
  const welcome = readFileSync(inRoot("site/welcome.md"), "utf8");
  writeFileSync(`${out}/index.html`, contentsPage(chapters, welcome));
  notebooks.forEach((notebook, index) => {
    const chapter = chapters[index] as Chapter;
    const beside = [chapters[index - 1]?.title, chapters[index + 1]?.title];
    const from = JSON.stringify([chapter, beside, chapters.map(({ name }) => name)]);
    const page = kept(`page of ${notebook.name}`, from, () => chapterPage(chapters, index));
    writeFileSync(`${out}/${notebook.name}.html`, page);
    writeFileSync(`${out}/${codePage(notebook)}`, listingPage(notebook, chapter, sandboxHash, api));
  });
}

/** Writes the style sheet that all pages share, with the letters of the formulas in these pages. */
async function writeStyles(out: string): Promise<void> {
  const names = readdirSync(out).filter((file) => /(?<!\.code)\.html$/.test(file));
  const bodyOf = (file: string) =>
    readFileSync(`${out}/${file}`, "utf8").replace(/^[\s\S]*<body>|<\/body>[\s\S]*$/g, "");
  const formulas = await formulaStyles(new Map(names.map((file) => [file, bodyOf(file)])));
  const styles = readFileSync(inRoot("site/styles/course.css"), "utf8");
  writeFileSync(`${out}/course.css`, formulas + (await shortStyles(styles)));
}

/** Puts a finished folder in place of the old one; until then the old one stays whole. */
function replace(finished: string, out: string): void {
  const old = `${out}.old`;
  rmSync(old, { recursive: true, force: true });
  if (existsSync(out)) renameSync(out, old);
  renameSync(finished, out);
  rmSync(old, { recursive: true, force: true });
}

/** The scripts of a course, and what its pages say of them. */
interface Scripts {
  readonly sandboxHash: string;
  readonly taking: Taking;
  readonly files: ReadonlyMap<string, Buffer>;
}

async function bundled(
  notebooks: readonly Notebook[],
  joined: string,
  out: string,
): Promise<Scripts> {
  await typecheck(notebooks, joined);
  await bundleFrame(`${out}/frame.js`);
  await bundleCourse(notebooks, joined, out);
  const sandboxHash = await writeWorkbench(out);
  const taking = await writePageScripts(out);
  const files = readdirSync(out).map((file) => [file, readFileSync(`${out}/${file}`)] as const);
  return { sandboxHash, taking, files: new Map(files) };
}

/** Writes the scripts of a course into a folder that is still empty, once the types of its cells are checked. */
async function writeScripts(
  notebooks: readonly Notebook[],
  joined: string,
  out: string,
): Promise<Scripts> {
  const cells = JSON.stringify(notebooks.map((notebook) => [notebook.name, join(notebook)]));
  const scripts = await kept("scripts", cells, () => bundled(notebooks, joined, out));
  for (const [file, content] of scripts.files)
    if (!existsSync(`${out}/${file}`)) writeFileSync(`${out}/${file}`, content);
  return scripts;
}

/** Writes every page with what all of them share. */
async function writePages(
  notebooks: readonly Notebook[],
  outputs: ReadonlyMap<string, Outputs>,
  { sandboxHash, taking }: Scripts,
  api: Api | undefined,
  out: string,
  url: string,
): Promise<void> {
  const chapters = notebooks.map((notebook) => {
    const shown = outputs.get(notebook.name) ?? {};
    const from = JSON.stringify([notebook, shown]);
    return kept(`chapter ${notebook.name}`, from, () => chapterOf(notebook, shown));
  });
  writeChapters(notebooks, chapters, sandboxHash, api, out);
  writeSitePages(out, taking, chapters);
  await writeStyles(out);
  writeSearchIndex(out, chapters, pages);
  writeFileSync(`${out}/404.html`, notFoundPage(url));
  writePreviews(out, url);
}

/** Runs the notebooks and writes the course; any fault leaves the last good course in place. */
export async function buildCourse(options: BuildOptions = {}): Promise<Map<string, Outputs>> {
  const {
    notebooks: folder = inRoot("notebooks"),
    out = inRoot("dist"),
    url = "",
    rest = "",
    progress = () => {},
  } = options;
  const joined = options.joined ?? inRoot(".cache/joined");
  const notebooks = readNotebooks(folder);
  writeJoined(notebooks, joined);
  const next = `${out}.next`;
  rmSync(next, { recursive: true, force: true });
  mkdirSync(next, { recursive: true });
  try {
    const scripts = await writeScripts(notebooks, joined, next);
    const outputs = await cachedOutputs(notebooks, { progress, typesChecked: true });
    const api = kept("library pages", "", currentApi);
    await writePages(notebooks, outputs, scripts, api, next, url);
    if (folder !== inRoot("notebooks"))
      keepToOwn(
        next,
        notebooks.map(({ name }) => name),
        rest,
      );
    for (const { name } of notebooks) {
      cpSync(`${folder}/${name}.ipynb`, `${next}/${name}.ipynb`);
    }
    cpSync(inRoot("LICENSE"), `${next}/LICENSE`);
    writeFileSync(`${next}/NOTICES.txt`, notices());
    await writeOffline(next);
    api?.copyTo(next);
    replace(next, out);
    return outputs;
  } finally {
    rmSync(next, { recursive: true, force: true });
  }
}

import { readdirSync } from "node:fs";
import { basename } from "node:path";
import { buffer } from "node:stream/consumers";
import { chromium, type Disposable, type Download, type Page } from "playwright-core";
import { afterEach, expect, inject } from "vitest";
import { inRoot } from "../../../site/build/paths.js";
import { pages as sitePages } from "../../../site/pages/pages.js";
import { looksAt } from "./covers.js";
import { fileEvery } from "./file-every.js";
import { type Lasting, lentPages, type Seen } from "./lent-pages.js";
import { pictureText } from "./picture-text.js";

export const chapters = readdirSync(inRoot("notebooks"))
  .filter((file) => file.endsWith(".ipynb"))
  .map((file) => basename(file, ".ipynb"))
  .sort();
const pages = ["index", ...chapters, ...sitePages.map(({ name }) => name)];

const { PAGES } = process.env; // where `npm test -- --changed` looks at some pages alone
const wanted = (page: string): boolean => PAGES === undefined || PAGES.split(",").includes(page);

/** Chapters and pages for a test that goes through all of them. */
export const eachChapter = chapters.filter(wanted);
export const eachPage = pages.filter(wanted);

/**
 * For a test of what works without network. Elsewhere no worker is let in: it would put the whole
 * course by for each new page, and answer requests that a test answers itself.
 */
export const withWorker: Lasting = { serviceWorkers: "allow" };

/** How a page is opened. */
export interface Opening extends Seen, Lasting {
  /** Nothing is heard of workers that it starts: for a test that does not look at what they find. */
  readonly silentWorkers?: boolean;
  /** What the device keeps already, by name. */
  readonly keeps?: Readonly<Record<string, string>>;
}

/** Runs in the page, before its own scripts. */
function keep(items: Readonly<Record<string, string>>): void {
  for (const [name, value] of Object.entries(items)) localStorage.setItem(name, value);
}

function silence(): void {
  class Silent extends EventTarget {
    postMessage() {}
    terminate() {}
  }
  Object.assign(globalThis, { Worker: Silent });
}

/** Only a failing test waits so long, ms; a busy machine may be ten times as slow as a quiet one. */
const patience = 120_000;

/** A page under watch: what it logged as an error and what it asked of other hosts. */
export interface WatchedPage {
  readonly page: Page;
  readonly errors: string[];
  readonly foreign: string[];
}

/** Fails a test file that went to a page of the course of which covers.ts does not know. */
function watchPlaces(page: Page, undeclared: Set<string>): void {
  const file = basename(expect.getState().testPath ?? "");
  page.on("framenavigated", (frame) => {
    const [, name = ""] = /([^/]*?)(?:\.html)?(?:[?#].*)?$/.exec(frame.url()) ?? [];
    const known = pages.includes(name.replace(/\.code$/, ""));
    if (known && !looksAt(file, name)) undeclared.add(`${file} looks at ${name}`);
  });
}

let lending: Promise<ReturnType<typeof lentPages>> | undefined;

/** The pages of the browser that all tests share; a worker connects to it once. */
const pagesToLend = () => {
  lending ??= chromium.connect(inject("browser")).then(lentPages);
  return lending;
};

/** Listens to what a page logs and asks for. */
function listenTo(page: Page, origin: string): WatchedPage {
  const errors: string[] = [];
  const foreign: string[] = [];
  page.on("console", (message) => {
    const text = message.text();
    if (text.endsWith("blocked by Playwright")) return; // its own word on workers
    if (message.type() === "error" || message.type() === "warning") errors.push(text);
  });
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(data|file):/.test(url)) foreign.push(url);
  });
  return { page, errors, foreign };
}

/** The shared browser and the served course, for the tests of one file. A page comes to each test as if it were new. */
export function useBrowser() {
  const origin = inject("origin");
  const undeclared = new Set<string>();
  const scripts: Disposable[] = [];
  afterEach(async ({ task }) => {
    await Promise.all(scripts.splice(0).map((script) => script.dispose()));
    await (await pagesToLend()).takeBack(task.result?.state !== "fail");
    const missing = [...undeclared];
    undeclared.clear();
    expect(missing, "in covers.ts").toEqual([]);
  });

  async function open(name: string, opening: Opening = {}): Promise<WatchedPage> {
    const { silentWorkers = false, keeps, ...look } = opening;
    const [file, hash = ""] = name.split(/(?=#)/);
    const address = name.includes(":") ? name : `${origin}/${file}.html${hash}`;
    const page = await (await pagesToLend()).lend(address, look);
    page.setDefaultTimeout(patience);
    watchPlaces(page, undeclared);
    const watched = listenTo(page, origin);
    if (silentWorkers) scripts.push(await page.addInitScript(silence));
    const keeping = keeps && (await page.addInitScript(keep, keeps));
    await page.goto(address);
    await keeping?.dispose(); // what it keeps from now on is its own affair
    return watched;
  }
  return {
    open,
    /** Where the course is served. */
    origin: () => origin,
    fileUrl: (name: string) => `file://${process.env.DIST ?? inRoot("dist")}/${name}.html`,
  };
}

/** What a page saved as a file. */
export const savedText = async (download: Download): Promise<string> =>
  (await buffer(await download.createReadStream())).toString();

/** Chooses the units of the course in its menu. */
export async function chooseUnits(page: Page, units: "metric" | "us"): Promise<void> {
  await page.locator(".masthead .menu > summary").click();
  const choice = page.getByRole("combobox", { name: "Units" });
  await Promise.all([page.waitForEvent("load"), choice.selectOption(units)]);
}

/** Files every prediction of the page, so that all sliders open; that a hand can do it is tested once, with the questions. */
export const fileAllPredictions = (page: Page): Promise<void> => page.evaluate(fileEvery, false);

/** What a figure shows: each mark with its attributes in a fixed order, and its sentence. */
export const shownBy = (page: Page, id: string): Promise<string> =>
  page.locator(`#${id}`).evaluate(pictureText);

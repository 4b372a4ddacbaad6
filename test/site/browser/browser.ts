import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import sirv from "sirv";
import { afterAll, afterEach, beforeAll } from "vitest";
import { readNotebooks } from "../../../site/build/build.js";
import { inRoot } from "../../../site/build/paths.js";
import { chromiumPath } from "../../../site/commands/needs.js";
import { pages as sitePages } from "../../../site/pages/pages.js";

export const chapters = readNotebooks().map(({ name }) => name);
export const pages = ["index", ...chapters, ...sitePages.map(({ name }) => name)];

/** For a test that answers a request itself: a service worker that has the file would answer first. */
export const noWorker: BrowserContextOptions = { serviceWorkers: "block" };

/** A page under watch: what it logged as an error and what it asked of other hosts. */
export interface WatchedPage {
  readonly page: Page;
  readonly errors: string[];
  readonly foreign: string[];
}

/** A browser and a server of dist/ for the tests of one file. */
export function useBrowser() {
  let browser: Browser;
  let server: Server;
  let origin = "";
  beforeAll(async () => {
    server = createServer(sirv(process.env.DIST ?? inRoot("dist"), { dev: true }));
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
    browser = await chromium.launch({
      executablePath: chromiumPath() ?? "chromium",
      args: ["--no-sandbox"],
    });
  });
  afterEach(() => Promise.all(browser.contexts().map((context) => context.close())));
  afterAll(async () => {
    await browser.close();
    server.close();
  });

  async function open(name: string, options: BrowserContextOptions = {}): Promise<WatchedPage> {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 900 },
      ...options,
    });
    const page = await context.newPage();
    const errors: string[] = [];
    const foreign: string[] = [];
    page.on("console", (message) => {
      const text = message.text();
      if (text.endsWith("blocked by Playwright")) return; // its own word on noWorker
      if (message.type() === "error" || message.type() === "warning") errors.push(text);
    });
    page.on("pageerror", (error) => errors.push(error.message));
    page.on("request", (request) => {
      const url = request.url();
      if (!url.startsWith(origin) && !/^(data|file):/.test(url)) foreign.push(url);
    });
    await page.goto(name.includes(":") ? name : `${origin}/${name}.html`);
    return { page, errors, foreign };
  }
  return {
    open,
    fileUrl: (name: string) => `file://${process.env.DIST ?? inRoot("dist")}/${name}.html`,
  };
}

/** Files every prediction of the page, so that all sliders open. */
export async function fileAllPredictions(page: Page): Promise<void> {
  const open = page.locator("form.filing:visible");
  while ((await open.count()) > 0) {
    const form = open.first();
    await form.locator("input[type=radio]").first().check();
    await form.locator("input[name$=reason]").fill("it feels so");
    await form.locator(".inline input[type=radio]").first().check();
    await form.locator("button[type=submit]").click();
  }
}

/** What a figure shows: each mark with its attributes in a fixed order, and its sentence. */
export const shownBy = (page: Page, id: string): Promise<string> =>
  page.locator(`#${id}`).evaluate((figure) =>
    [...figure.querySelectorAll("[data-layer] *, .says")]
      .map(({ tagName, attributes, textContent }) => {
        const said = [...attributes].map(({ name, value }) => `${name}="${value}"`).sort();
        return tagName === "P" ? textContent : [tagName, ...said, textContent].join(" ");
      })
      .join("\n"),
  );

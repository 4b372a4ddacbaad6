import puppeteer, { type Browser, type Page } from "puppeteer-core";
import { afterAll, afterEach, beforeAll, inject } from "vitest";
import { firefoxPath } from "../../../site/commands/needs.js";
import { fileEvery } from "./file-every.js";
import { pictureText } from "./picture-text.js";

export const firefox = firefoxPath();

/** Firefox over WebDriver BiDi for the tests of one file; each page has a context of its own. */
export function useFirefox() {
  let browser: Browser;
  beforeAll(async () => {
    browser = await puppeteer.launch({ browser: "firefox", executablePath: firefox ?? "" });
  });
  afterEach(async () => {
    const own = browser.browserContexts().filter((one) => one !== browser.defaultBrowserContext());
    for (const context of own) await context.close();
  });
  afterAll(() => browser.close());

  /** A page of the served course, or of an address, and the errors that it logged. */
  return async function open(name: string): Promise<{ page: Page; errors: string[] }> {
    const context = await browser.createBrowserContext();
    const page = await context.newPage();
    page.setDefaultTimeout(120_000);
    await page.setViewport({ width: 1280, height: 900 });
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error") errors.push(message.text());
    });
    await page.goto(name.includes(":") ? name : `${inject("origin")}/${name}.html`);
    return { page, errors };
  };
}

/** Files every prediction of the page, so that all sliders open. */
export const fileAll = (page: Page): Promise<void> => page.evaluate(fileEvery);

/** What a figure shows. */
export const shown = (page: Page, id: string): Promise<string> => page.$eval(`#${id}`, pictureText);

/** The text of the first element that a selector finds. */
export const textOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, ({ textContent }) => textContent ?? "");

/** Waits until an element says this. */
export const says = (page: Page, selector: string, text: string) =>
  page.waitForFunction(
    (selector, text) => document.querySelector(selector)?.textContent?.includes(text),
    {},
    selector,
    text,
  );

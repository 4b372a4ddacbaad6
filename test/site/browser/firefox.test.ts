import { type Browser, launch, type Page } from "puppeteer-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from "vitest";
import { firefoxPath } from "../../../site/commands/needs.js";
import { chapters, eachChapter } from "./browser.js";
import { fileEvery } from "./file-every.js";
import { pictureText } from "./picture-text.js";
import { serveCopy } from "./served-folder.js";

declare global {
  interface Window {
    pictureText: typeof pictureText;
    shownBefore: string;
    letGo: Promise<Event>;
  }
}

const firefox = firefoxPath();
const patience = 120_000; // ms; only a failing test waits so long

let browser: Browser;
let page: Page;
let errors: string[] = [];

beforeAll(async () => {
  if (firefox === undefined) return;
  browser = await launch({
    browser: "firefox",
    executablePath: firefox,
    timeout: patience,
    protocolTimeout: patience,
  });
});
afterAll(() => browser?.close());

/** Each test is a reader of its own, with nothing kept. */
beforeEach(async () => {
  const context = await browser.createBrowserContext();
  page = await context.newPage();
  page.setDefaultTimeout(patience);
  errors = [];
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("console", (message) => {
    if (["error", "warn"].includes(message.type())) errors.push(message.text());
  });
});
afterEach(() => page.browserContext().close());

const open = (name: string) => page.goto(`${inject("origin")}/${name}.html`);
const textOf = (selector: string) => page.$eval(selector, ({ textContent }) => textContent ?? "");
const press = (selector: string) => page.locator(selector).click();
const pressNamed = (name: string) => press(`::-p-xpath(//button[starts-with(., "${name}")])`);

/** Takes hold of a slider, notes what its figure shows, and gives the key that moves it furthest. Runs in the page. */
function takeHold(id: string): "Home" | "End" {
  const slider = document.getElementById(id) as HTMLInputElement;
  window.shownBefore = window.pictureText(slider.closest(".figure") as Element);
  window.letGo = new Promise((release) =>
    slider.addEventListener("keyup", release, { once: true }),
  );
  slider.focus();
  return slider.value === slider.max ? "Home" : "End";
}

/** Whether the figure of a slider shows what was noted, once the key is let go. Runs in the page. */
async function isAsBefore(id: string): Promise<boolean> {
  await window.letGo;
  const figure = document.getElementById(id)?.closest(".figure") as Element;
  return window.pictureText(figure) === window.shownBefore;
}

/** Moves every slider by a key; those that left their figure as it was. Pictures are compared in the page: they are long to send. */
async function idleSliders(): Promise<string[]> {
  await page.evaluate(`window.pictureText = ${pictureText}`);
  const sliders = await page.evaluate(() =>
    [...document.querySelectorAll(".figure[data-live] input[type=range]")].map(({ id }) => id),
  );
  expect(sliders.length).toBeGreaterThan(0);
  const idle: string[] = [];
  for (const id of sliders) {
    await page.keyboard.press(await page.evaluate(takeHold, id));
    if (await page.evaluate(isAsBefore, id)) idle.push(id);
  }
  return idle;
}

/** Answers the question of a report with one of its chips. */
const tap = (question: string, answer: string) =>
  press(
    `::-p-xpath(//*[@id="ask-${question}"]//*[contains(@class, "chip")][normalize-space(.)="${answer}"])`,
  );

describe.skipIf(firefox === undefined)("in Firefox", () => {
  it.each(eachChapter)("every slider of %s moves its figure", async (chapter) => {
    await open(chapter);
    await page.evaluate(fileEvery, false);
    expect(await idleSliders()).toEqual([]);
    expect(errors).toEqual([]);
  });

  it("a car that is typed in is kept, and a chapter shows it", async () => {
    await open("your-car");
    await pressNamed("Start from a copy");
    await page.locator("#at-name").fill("Linnet");
    await pressNamed("Save, and let the course show it");
    await page.waitForFunction(() =>
      document.querySelector(".told .status")?.textContent?.includes("Linnet is saved"),
    );
    await open(chapters[1] ?? "");
    expect(await textOf("#whose")).toContain("Figures for Linnet");
    expect(errors).toEqual([]);
  });

  it("a report of the workshop is filed, and there after a reload", async () => {
    await open("workshop");
    await press("#open-example");
    await page.waitForSelector("#step-5-outcome .when");
    await press('nav.views a[href="#report"]');
    await page.locator("#who-name").fill("Farah");
    await press('::-p-xpath(//*[@id="who-run"]//*[contains(@class, "chip")][.="6"])');
    await press("#who-go");
    for (const [question, answer] of [
      ["corner", "Barn"],
      ["phase", "turn-in"],
      ["input", "steering"],
      ["balance", "+2"],
      ["often", "every lap"],
    ] as const)
      await tap(question, answer);
    await press("#file-report");
    await page.waitForSelector(".filed li");
    await page.waitForSelector("html[data-kept]");
    await page.reload();
    await page.waitForSelector(".filed li");
    expect(await textOf(".filed li")).toContain("Barn, turn-in: +2");
    expect(errors).toEqual([]);
  });

  it("the course is there without its host once its foot says ready", async () => {
    const course = await serveCopy("firefox");
    await page.goto(`${course.url}index.html`);
    await page.waitForFunction(() =>
      document.querySelector(".offline")?.textContent?.includes("Ready without network."),
    );
    await course.stop();
    await page.goto(`${course.url}${chapters[1]}.html`);
    await page.waitForSelector(".figure[data-live]");
    course.remove();
    expect(errors).toEqual([]);
  });
});

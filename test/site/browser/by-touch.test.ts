import type { Locator, Page } from "playwright-core";
import { expect, it } from "vitest";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true };

/** Files a prediction with taps, but for the half sentence. */
async function predict(question: Locator, choice: number) {
  await question.locator("label:has(input[type=radio])").nth(choice).tap();
  await question.locator("input[name$=reason]").fill("because it felt so");
  await question.locator("label", { hasText: "a guess" }).tap();
  await question.getByRole("button", { name: "File my prediction" }).tap();
}

/** Steps of a slider by its button, with taps. */
async function step(figure: Locator, name: string, way: "more" | "less", times = 1) {
  const button = figure.getByRole("button", { name: `${name}: one step ${way}` });
  for (let i = 0; i < times; i += 1) await button.tap();
}

async function say(figure: Locator, saw: string) {
  await figure.locator(".seeing textarea").fill(saw);
  await figure.locator(".seeing button").tap();
}

const isWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth > innerWidth);

it("a learner's first minute and first chapter are gone through with a thumb on a narrow phone", async () => {
  const { page, errors } = await open("index", phone);
  await page.getByRole("button", { name: "The rear" }).tap();
  expect(await page.locator(".outcome").textContent()).toContain("You say: The rear.");
  await page.locator('.path [data-chapter="00-start-here"] a').first().tap();
  await page.waitForURL(/00-start-here/);

  const figure = page.locator("#which-of-two");
  const explanation = page.locator(".cell:has(#which-of-two) .explanation");
  await predict(page.locator("#two-changes"), 0);
  const ticked = figure.locator(".looks li[data-done]");
  await step(figure, "Front pressure, warm", "more");
  expect(await ticked.count()).toBe(1);
  await step(figure, "Front pressure, warm", "less");
  await step(figure, "Front bar, hole", "more");
  expect(await ticked.count()).toBe(2);
  expect(await explanation.isVisible()).toBe(false);
  await say(figure, "One of the two did nearly all of it.");
  expect(await explanation.isVisible()).toBe(true);

  const parts = page.locator("#parts-of-a-corner");
  await predict(page.locator("#dampers"), 2);
  await step(parts, "Front dampers stiffer by", "more", 5);
  await step(parts, "Front dampers stiffer by", "less", 10);
  await say(parts, "Dampers are silent in the middle.");
  expect(await page.locator(".cell:has(#parts-of-a-corner) .explanation").isVisible()).toBe(true);

  const exercise = page.locator("#ex-two");
  await exercise.locator("input").fill("0.06");
  await exercise.getByRole("button").first().tap();
  expect(await exercise.locator(".reply").textContent()).toMatch(/^Right/);
  expect(await isWide(page)).toBe(false);
  expect(errors).toEqual([]);
});

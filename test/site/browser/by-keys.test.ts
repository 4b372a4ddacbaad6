import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();
const phone = { viewport: { width: 360, height: 740 } };
const stopsBetween = 60; // that a reader has the patience for

/** Where the keyboard is: whether it is seen there, with a ring around it. */
const stop = (page: Page, selector: string) =>
  page.evaluate((wanted) => {
    const at = document.activeElement;
    if (!at || at === document.body) return { isHere: false, isSeen: true, name: "nowhere" };
    const { top, bottom, left, right } = at.getBoundingClientRect();
    const inSight = bottom > 0 && top < innerHeight && right > 0 && left < innerWidth;
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const isRinged = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
    const name = `${at.tagName} ${at.id} ${at.textContent?.trim().slice(0, 40)}`;
    return { isHere: at.matches(wanted), isSeen: inSight && isRinged, name };
  }, selector);

/** Goes on from stop to stop, each of them seen, until the keyboard stands where it is wanted. */
async function reach(page: Page, selector: string, key = "Tab"): Promise<void> {
  for (let i = 0; i < stopsBetween; i += 1) {
    await page.keyboard.press(key);
    const { isHere, isSeen, name } = await stop(page, selector);
    expect({ name, isSeen }).toEqual({ name, isSeen: true });
    if (isHere) return;
  }
  throw new Error(`${stopsBetween} stops, and none of them is ${selector}`);
}

async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** Files a prediction: an answer by arrow, a reason, a confidence; the keyboard then stands on what follows. */
async function predict(page: Page, question: string): Promise<void> {
  await reach(page, `#${question} input[type=radio]`);
  await press(page, "ArrowDown");
  await reach(page, `#${question} input[name$=reason]`);
  await page.keyboard.type("it felt so");
  await reach(page, `#${question} input[name$=confidence]`);
  await press(page, "Space");
  await reach(page, `#${question} button[type=submit]`);
  await press(page, "Enter");
  expect((await stop(page, `#${question} .outcome`)).isHere).toBe(true);
}

/** Says what was seen in a figure whose looks are done; the explanation then stands open. */
async function see(page: Page, figure: string): Promise<void> {
  await reach(page, `#${figure} .seeing textarea`);
  await page.keyboard.type("The sum stays as it was.");
  await reach(page, `#${figure} .seeing button`);
  await press(page, "Enter");
  expect((await stop(page, `#${figure} .saw`)).isHere).toBe(true);
  expect(await page.locator(`.cell:has(#${figure}) .explanation`).isVisible()).toBe(true);
}

const done = (page: Page, figure: string) =>
  page.locator(`#${figure} .looks li[data-done]`).count();

it("a chapter is played through by keyboard alone on a narrow screen, each stop of it in sight", async () => {
  const { page, errors } = await open("01-load-transfer", phone);
  await reach(page, "#depth button");
  await press(page, "Enter"); // the core only
  await reach(page, "#stiffer-bars input[type=radio]");
  await reach(page, "#stiffer-bars .sketch input[type=range]");
  await press(page, "ArrowRight", "ArrowRight");
  await reach(page, "#stiffer-bars input[type=radio]", "Shift+Tab");
  await press(page, "Shift+Tab");
  await predict(page, "stiffer-bars");

  const bars = "bars-and-total";
  await reach(page, `#${bars} input[type=range]`);
  await press(page, "Home");
  await reach(page, `#${bars}-rearBar-range`);
  await press(page, "Home");
  expect(await done(page, bars)).toBe(1);
  await press(page, "End");
  expect(await done(page, bars)).toBe(2);
  await reach(page, `#${bars}-frontBar-range`, "Shift+Tab");
  await press(page, "End");
  expect(await done(page, bars)).toBe(3);
  await see(page, bars);

  await reach(page, "#why-answer input[type=range]");
  const before = await page.locator("#why-answer .says").textContent();
  await press(page, "Home");
  expect(await page.locator("#why-answer .says").textContent()).not.toBe(before);
  await reach(page, ".warm-up[data-asks=own] summary");
  await reach(page, "#ex-harder input");
  await page.keyboard.type("1");
  await press(page, "Enter");
  expect(await page.locator("#ex-harder .reply").textContent()).not.toBe("");
  expect(errors).toEqual([]);
});

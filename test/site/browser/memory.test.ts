import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { quantile } from "../../../site/bench/row.js";
import { moveSliders, unlock } from "../../../site/bench/slider-moves.js";
import { chapters, useBrowser } from "./browser.js";

const { open } = useBrowser();

const moves = 160; // in one round
const movesInFrame = 20; // as a quick hand makes them on a busy machine

/** How many objects the page holds once the collector has been through it; what the engine keeps for itself is none. */
async function objectsOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  const { result } = await session.send("Runtime.evaluate", { expression: "Object.prototype" });
  const prototypeObjectId = result.objectId ?? "";
  const { objects } = await session.send("Runtime.queryObjects", { prototypeObjectId });
  const { result: count } = await session.send("Runtime.callFunctionOn", {
    objectId: objects.objectId ?? "",
    functionDeclaration: "function () { return this.length; }",
  });
  await session.detach();
  return count.value;
}

/**
 * By how many objects for each move a page grows: the middle of the slopes between any two rounds but
 * the first – Sen 1968, J. Am. Stat. Assoc. 63. What a page holds for a while and lets go of again is no
 * leak, in whichever rounds it comes and goes.
 */
async function leftBehind(page: Page): Promise<number> {
  await unlock(page);
  expect(await page.locator(".slider input[type=range]").count()).toBeGreaterThan(0);
  const counts: number[] = [];
  for (let round = 0; round < 6; round += 1) {
    await moveSliders(page, moves, movesInFrame);
    counts.push(await objectsOf(page));
  }
  const settled = counts.slice(1);
  const slopes = settled.flatMap((count, i) =>
    settled.slice(0, i).map((before, j) => (count - before) / ((i - j) * moves)),
  );
  return quantile(slopes, 0.5);
}

it.each([chapters[1] ?? "", "map"])(
  "%s leaves no object behind when sliders move",
  async (name) => {
    const { page } = await open(name);
    expect(await leftBehind(page)).toBeLessThan(0.1);
  },
);

it("would see one small object that each move left behind", async () => {
  const { page } = await open(chapters[1] ?? "");
  await page.evaluate(() => {
    const kept = Object.assign(window, { kept: [] as unknown[] }).kept;
    document.addEventListener("input", () => kept.push({}));
  });
  expect(await leftBehind(page)).toBeGreaterThan(0.9);
});

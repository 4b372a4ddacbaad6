import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { moveSliders, unlock } from "../../../site/bench/slider-moves.js";
import { chapters, useBrowser } from "./browser.js";

const { open } = useBrowser();

const moves = 200; // in one round
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

/** By how many objects for each move a page grows at least, the round of least growth left out: a leak shows in all, what a page lets go of in one. */
async function leftBehind(page: Page): Promise<number> {
  await unlock(page);
  expect(await page.locator(".slider input[type=range]").count()).toBeGreaterThan(0);
  const counts: number[] = [];
  for (let round = 0; round < 5; round += 1) {
    await moveSliders(page, moves, movesInFrame);
    counts.push(await objectsOf(page));
  }
  const growth = counts.slice(1).map((count, i) => count - (counts[i] ?? 0));
  return (growth.sort((a, b) => a - b)[1] ?? Number.NaN) / moves;
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

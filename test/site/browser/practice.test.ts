import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { axeFaultsInBoth } from "./axe.js";
import { useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();
const puzzle = "#?seed=9&level=1&radius=50&speed=80&grade=0&turn=left";

async function goTo(page: Page, hash: string): Promise<void> {
  await page.goto(page.url().replace(/#.*|$/s, hash));
}

async function driveBoth(page: Page): Promise<void> {
  await page.locator("#drive-known").click();
  await page.locator("#drive-changed").click();
  await page.locator("#report").waitFor();
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);

/** Chooses the answer that is so called by keys alone. */
async function chooseByKeys(page: Page, group: string, index: number): Promise<void> {
  await page.locator(`${group} input`).first().focus();
  await page.keyboard.press("Space");
  for (let i = 0; i < index; i++) await page.keyboard.press("ArrowRight");
}

async function press(page: Page, id: string): Promise<void> {
  await page.locator(id).focus();
  await page.keyboard.press("Enter");
}

describe("practice", () => {
  it("leads from a corner to a score by keys alone, and keeps the round", async () => {
    const { page, errors, foreign } = await open("practice");
    await goTo(page, puzzle);
    await press(page, "#drive-known");
    await page.locator("#traces").waitFor();
    expect(await focused(page)).toBe("drive-h");
    await press(page, "#drive-changed");
    await page.locator("#report").waitFor();
    expect(await page.locator("#traces .says").textContent()).toMatch(
      /changed car needs [\d.]+° at the steering wheel, the one you know [\d.]+°/,
    );
    expect(await page.locator("#traces svg.chart").count()).toBe(5);
    expect(await page.locator("#traces svg.drawing").count()).toBe(3);
    await page.locator("#traces .traces > summary").click();
    await page.locator("#traces svg.chart [data-frame] text").first().waitFor();

    await press(page, "#file-report");
    expect(await page.locator("#report [role=alert]").textContent()).toMatch(/^Still asked:When/);
    await chooseByKeys(page, "#ask-phase", 2);
    await chooseByKeys(page, "#ask-input", 3);
    await chooseByKeys(page, "#ask-balance", 4); // −3 … +3: a little towards the front
    await chooseByKeys(page, "#ask-sure", 2);
    await press(page, "#file-report");
    await page.locator("#cause").waitFor();
    expect(await focused(page)).toBe("cause-h");

    await press(page, "#file-cause");
    expect(await page.locator("#cause [role=alert]").textContent()).toBe("Choose one first.");
    const cause = page.getByLabel("front bar position 3 → 4");
    await cause.focus();
    await page.keyboard.press("Space");
    await press(page, "#file-cause");

    await press(page, "#drive-again");
    expect(await page.locator("#next [role=alert]:not([hidden])").textContent()).toContain(
      "Choose what",
    );
    await page.selectOption("#next-where", { label: "front bar position" });
    await page.selectOption("#next-by", { label: "−1" });
    await press(page, "#drive-again");
    await page.locator("#score").waitFor();
    expect(await focused(page)).toBe("score-h");
    expect(await page.locator(".total").textContent()).toMatch(/^(99|100) of 100$/); // felt steps are whole
    expect(await page.locator("#cause .scored").textContent()).toContain(
      "It was: front bar position 3 → 4.",
    );
    expect(await page.locator("#score .why").textContent()).toContain("so the pair holds less");
    expect(await page.locator("#score .why a").getAttribute("href")).toBe(
      "03-distribution-between-axles.html#axle-limits?frontBar=most",
    );

    await page.reload();
    await page.locator("#rounds summary").click();
    const round = page.locator("#rounds li a");
    expect(await round.textContent()).toMatch(
      /^Practice corner, All three, with all help: (99|100) of 100$/,
    );
    expect(await round.getAttribute("href")).toBe(puzzle);
    await page.locator("#forget").click();
    expect(await round.count()).toBe(0);
    await page.locator("#undo").click();
    expect(await round.count()).toBe(1);
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
  });

  it("is worked for who comes first, then asks for the last step, and opens a rung where the one before is sure", async () => {
    const { page, errors } = await open("practice");
    await page.locator("#begin").waitFor();
    const shut = () => page.locator("#level input:disabled").count();
    expect(await shut()).toBe(6);
    await page.locator("#begin").click();
    await driveBoth(page);
    await page.locator("#score").waitFor();
    expect(await page.locator(".total").textContent()).toBe("worked for you");
    expect(await page.locator(".shown-how").count()).toBe(3);
    expect(await page.locator("#practice .scored").count()).toBe(0);
    expect(await shut()).toBe(5);
    await page.locator("#next-rung").click();
    await page.locator("#drive-known").waitFor();
    await driveBoth(page);
    await page.locator("#next-where").waitFor();
    expect(await page.locator(".shown-how").count()).toBe(2);
    await page.locator("#open-all").click();
    expect(await shut()).toBe(0);
    expect(errors).toEqual([]);
  });

  it("takes for an answer that nothing can be told, and says at once what could be", async () => {
    const { page, errors } = await open("practice");
    await goTo(page, puzzle);
    await driveBoth(page);
    await page.locator("#cannot-tell").click();
    await page.locator("#score").waitFor();
    expect(await page.locator("#report .scored").textContent()).toMatch(
      /Report: 0 of 100.*You said: that you cannot tell\..*It was there to be told: \+\d in /,
    );
    expect(await page.locator("#cause").count()).toBe(0);
    expect(await page.locator(".total").textContent()).toBe("0 of 100");
    expect(errors).toEqual([]);
  });

  it("does not say what was changed before the learner has answered", async () => {
    const { page } = await open("practice");
    await goTo(page, puzzle.replace("level=1", "level=2"));
    await driveBoth(page);
    expect(await page.locator("main").textContent()).not.toContain("bar position");
  });

  it("moves the car, its loads and the readings with the slider, and plays them", async () => {
    const { page } = await open("practice");
    await goTo(page, puzzle);
    await driveBoth(page);
    const plan = async () =>
      (await page.locator("#traces svg.drawing").allInnerTexts()).join() +
      (await page.locator("#traces .panels").first().innerHTML());
    const [before, frames] = [await plan(), await page.locator("[data-frame]").first().innerHTML()];
    const here = () => page.locator(".here").textContent();
    const there = await here();
    await page.locator("#place-range").focus();
    await page.keyboard.press("ArrowRight");
    const moved = await here();
    expect(moved).toMatch(/^At \d+\sm, middle: \d+\.\d\skm\/h/);
    expect(moved).not.toBe(there);
    expect(await plan()).not.toBe(before);
    expect(await page.locator("[data-frame]").first().innerHTML()).toBe(frames);
    await page.locator("#play").click();
    await page.waitForFunction(
      (text) => document.querySelector(".here")?.textContent !== text,
      moved,
    );
    await page.locator("#play").click();
    expect(await page.locator("#play").textContent()).toBe("Play");
  });

  it("goes part by part too for who stopped all motion at the foot of a page", async () => {
    const { page } = await open("practice");
    await page.locator("#motion").click();
    await goTo(page, puzzle);
    await page.locator("#drive-known").click();
    expect(await page.locator("#play").textContent()).toBe("Next part");
  });

  it("goes part by part where less motion is asked for", async () => {
    const { page } = await open("practice", { reducedMotion: "reduce" });
    await goTo(page, puzzle);
    await page.locator("#drive-known").click();
    await page.locator("#play").click();
    expect(await page.locator(".here").textContent()).toContain("power on");
    await page.locator("#play").click();
    expect(await page.locator(".here").textContent()).toMatch(/^At 0\s/);
  });

  it.each([
    ["#?seed=abc&radius=9999", "seed in the link takes a whole number"],
    ["#?turn=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E", "turn in the link is left or right"],
    ["#?seed=7&car=00000000", "made with a car that is not on this device"],
    ["#?%E0%A4%A", "which practice does not have"],
  ])("says what is wrong with the link %s and offers a corner all the same", async (hash, told) => {
    const { page, errors } = await open("practice");
    await goTo(page, hash);
    await page.locator("#practice [role=alert]").first().waitFor();
    expect(await page.locator("#practice > [role=alert]").textContent()).toContain(told);
    expect(await page.locator("#practice img").count()).toBe(0);
    await page.locator("#begin").click();
    await page.locator("#drive-known").waitFor();
    expect(errors).toEqual([]);
  });

  it("drives a long downhill corner at walking pace too, and says how little that asks of the car", async () => {
    const { page, errors } = await open("practice");
    await goTo(page, "#?seed=7&radius=500&speed=10&grade=-25");
    await driveBoth(page);
    await page.locator("#play").click();
    await page.locator("#play").click();
    const says = await page.locator("#traces .says").textContent();
    expect(says).toContain("both cars need about");
    expect(errors).toEqual([]);
  });

  it("passes axe in light and dark and fits 320 px", async () => {
    const { page } = await open("practice", {
      bypassCSP: true,
      viewport: { width: 320, height: 740 },
    });
    await goTo(page, puzzle);
    await driveBoth(page);
    await page.locator("#traces .traces > summary").click();
    expect(await axeFaultsInBoth(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );
  });

  it("works from a folder, and without JavaScript says what it needs", async () => {
    const { page, errors } = await open(fileUrl("practice"));
    await goTo(page, puzzle);
    await driveBoth(page);
    expect(errors).toEqual([]);
    const still = await open("practice", { javaScriptEnabled: false });
    expect(await still.page.locator("main").textContent()).toContain("Driving needs JavaScript");
    expect(await still.page.locator("main :is(button, input)").count()).toBe(0);
  });
});

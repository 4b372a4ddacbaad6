import type { Page } from "playwright-core";
import { describe, expect, it, vi } from "vitest";
import { type Car, demoCar, formatCar } from "../../../lib/index.js";
import { axeFaultsInBoth } from "./axe.js";
import { type Opening, useBrowser } from "./browser.js";

vi.setConfig({ testTimeout: 180_000 }); // a map worked out in full, on a busy machine

const { open: openWith, fileUrl } = useBrowser();

const open = (name: string, options: Opening = {}) => openWith(name, options);
/** For what is there before the map is exact. */
const openQuiet = (options: Opening = {}) => openWith("map", { ...options, silentWorkers: true });
/** A map of few places, for a test of how it comes about: a bar has nothing between its positions. */
const small = "#map?along=front-barPosition&up=rear-springRate&phase=power+on";

const rook: Car = { ...demoCar, name: "Rook" };
const keepsRook = {
  "rollbook:cars": JSON.stringify({
    stamp: 1,
    version: 1,
    value: { cars: [JSON.parse(formatCar(rook))], current: "Rook" },
  }),
};

const map = (page: Page) => page.locator(".map");
const reading = (page: Page) => page.locator(".reading");
const boxesOf = (page: Page, selector: string) =>
  page
    .locator(selector)
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
const exact = (page: Page) => page.locator(".map[data-drawn=exact]").waitFor({ timeout: 150_000 });
const result = (page: Page) => page.locator(".says").last();
/** What is drawn, as paths. */
const drawing = (page: Page) =>
  page.locator(".map svg > path").evaluateAll((all) => all.map((one) => one.getAttribute("d")));

describe("the set-up map", () => {
  it("draws lines of balance and grip, the limits, the car and the mark, says the result, gives its numbers as a table with what is outside marked, and moves whole with a third lever", async () => {
    const { page, errors, foreign } = await open("map");
    await exact(page);
    for (const part of ["balance", "neutral", "grip", "limit"])
      expect((await page.locator(`.map path.${part}`).getAttribute("d"))?.length).toBeGreaterThan(
        50,
      );
    expect(await page.locator(".map .labels text").count()).toBeGreaterThan(5);
    expect(await page.locator(".exactness").textContent()).toMatch(/^Exact now/);
    expect(await result(page).textContent()).toMatch(/^Over this map the balance/);

    await page.locator(".numbers summary").click();
    await page.locator(".numbers tbody tr").first().waitFor(); // the fold is filled a moment after it opens
    expect(await page.locator(".numbers tbody tr").count()).toBeGreaterThan(3);
    expect(await page.locator(".numbers td").first().textContent()).toMatch(/m\/s²; \d.* ×$/);

    const line = page.locator(".map path.balance");
    const [before, said] = [await line.getAttribute("d"), await result(page).textContent()];
    await page.locator("#map-third-value-range").focus();
    await page.keyboard.press("ArrowRight");
    await expect
      .poll(() => page.locator(".exactness").textContent())
      .toMatch(/^(Within|Off by up to) \d\.\d\d\u00a0m\/s²/);
    await expect.poll(() => line.getAttribute("d")).not.toBe(before);
    await exact(page);
    expect(await result(page).textContent()).not.toBe(said);
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
  });

  it("is read by arrow keys, one step at a time, told in one sentence, without scrolling", async () => {
    const { page } = await openQuiet();
    await map(page).focus();
    const before = await page.evaluate(() => scrollY);
    await page.keyboard.press("ArrowRight");
    expect(await reading(page).textContent()).toMatch(
      /^Front spring rate 65\u00a0N\/mm, rear spring rate 50\u00a0N\/mm: the front gives up first/,
    );
    expect(await reading(page).getAttribute("aria-live")).toBe("polite");
    await page.keyboard.press("ArrowDown");
    expect(await reading(page).textContent()).toContain("rear spring rate 45");
    await page.keyboard.press("Home");
    expect(await reading(page).textContent()).toContain("(as the car is set)");
    expect(await page.evaluate(() => scrollY)).toBe(before);
  });

  it("is read by mouse, dragged from point to point", async () => {
    const { page } = await openQuiet();
    const box = await map(page).boundingBox();
    if (!box) throw new Error("no map");
    await page.mouse.move(box.x + box.width * 0.3, box.y + box.height * 0.3);
    await page.mouse.down();
    const first = await reading(page).textContent();
    await page.mouse.move(box.x + box.width * 0.8, box.y + box.height * 0.6, { steps: 5 });
    await page.mouse.up();
    const second = await reading(page).textContent();
    expect(second).not.toBe(first);
    await page.mouse.move(box.x + box.width * 0.4, box.y + box.height * 0.4);
    expect(await reading(page).textContent()).toBe(second);
  });

  it("is read by touch", async () => {
    const { page } = await openQuiet({ hasTouch: true, viewport: { width: 390, height: 844 } });
    const before = await reading(page).textContent();
    await map(page).tap({ position: { x: 250, y: 90 } });
    expect(await reading(page).textContent()).not.toBe(before);
  });

  it("is drawn for the reader's own car, and says for one tap how sure it is there, with no more digits than that", async () => {
    const { page, errors } = await open(`map${small}`, { keeps: keepsRook });
    expect(await page.locator(".whose-car").textContent()).toContain("Rook");
    await reading(page)
      .filter({ hasText: /\d\.\d\d\sm\/s² before the/ })
      .waitFor();
    await page.locator("#map-sure-begin").click();
    const told = page.locator("#map-sure p").first();
    await told.filter({ hasText: "nine in ten cars" }).waitFor();
    expect(await told.textContent()).toMatch(/a margin of −?\d\.\d\u00a0m\/s² to −?\d\.\d\u00a0m/);
    expect(await reading(page).textContent()).toMatch(/ \d\.\d\u00a0m\/s² before the/);
    await page.locator("#map-sure-stop").click();
    expect(errors).toEqual([]);
  });

  it("is the same, worked out by workers or from a folder in slices on the page", async () => {
    const served = await open(`map${small}`);
    const folder = await open(fileUrl("map") + small);
    await exact(served.page);
    await exact(folder.page);
    expect(served.page.workers().length).toBeGreaterThan(0);
    expect(folder.page.workers().length).toBe(0);
    expect(await drawing(folder.page)).toEqual(await drawing(served.page));
    expect(await result(folder.page).textContent()).toBe(await result(served.page).textContent());
    expect([...served.errors, ...folder.errors]).toEqual([]);
  });

  it("is worked out on the page where its workers cannot start", async () => {
    const { page } = await open(`map${small}`);
    await page.route("**/map-worker.js", (route) => route.fulfill({ status: 404, body: "" }));
    await page.reload();
    await exact(page);
    expect(page.workers().length).toBe(0);
  });

  it("drops what is under way when a lever moves again, though its rows come in later", async () => {
    const { page } = await open(`map${small}`);
    await exact(page);
    await page.evaluate(() => {
      const [{ postMessage }, held] = [Worker.prototype, [] as (() => void)[]];
      Worker.prototype.postMessage = function (row: unknown) {
        held.push(() => postMessage.call(this, row));
      };
      addEventListener("let-go", () => {
        Worker.prototype.postMessage = postMessage as Worker["postMessage"];
        for (const ask of held) ask();
      });
      const bar = document.querySelector<HTMLElement>(".progress");
      if (bar === null) throw new Error("no bar");
      let begun = 0;
      new MutationObserver(() => {
        if (bar.classList.contains("on")) bar.dataset.begun = `${++begun}`;
      }).observe(bar, { attributeFilter: ["class"] });
    });
    await page.locator("#map-third-value-range").focus();
    await page.keyboard.press("ArrowRight");
    await page.locator(".progress[data-begun='1']").waitFor({ state: "attached" });
    await page.keyboard.press("ArrowLeft");
    await page.locator(".progress[data-begun='2']").waitFor({ state: "attached" });
    await page.evaluate(() => dispatchEvent(new Event("let-go")));
    await exact(page);
    const back = await drawing(page);
    await page.reload();
    await exact(page);
    expect(back).toEqual(await drawing(page));
  });

  it("takes other levers, another part of the corner, and lets two levers change places", async () => {
    const { page } = await open("map");
    await page.locator("#map-along").selectOption("rear-springRate");
    expect(await page.locator("#map-up").inputValue()).toBe("front-springRate");
    await page.locator("#map-up").selectOption("front-barPosition");
    expect(await map(page).getAttribute("aria-label")).toBe(
      "Map over Rear spring rate and Front bar position",
    );
    await exact(page);
    const said = await result(page).textContent();
    await page.locator("#map-part").selectOption("power on");
    await exact(page);
    expect(await result(page).textContent()).not.toBe(said);
  });

  it("speaks of the positions of a bar only where one is an axis", async () => {
    const { page } = await openQuiet();
    const blend = page.getByText("Between the positions of a bar");
    expect(await blend.isVisible()).toBe(false);
    await page.locator("#map-up").selectOption("rear-barPosition");
    expect(await blend.isVisible()).toBe(true);
    await page.locator("#map-up").selectOption("rear-springRate");
    expect(await blend.isVisible()).toBe(false);
  });

  it("names as the hardest a setting that its own reading finds inside the limits", async () => {
    const { page } = await open("map");
    await page.locator("#map-along").selectOption("rear-springRate");
    await page.locator("#map-up").selectOption("rear-barPosition");
    await exact(page);
    const said = (await result(page).textContent()) ?? "";
    const [, rate, position] = /rear spring rate (\d+).*position (\d)\.$/.exec(said) ?? [];
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#map?along=rear-springRate&up=rear-barPosition&x=${rate}&y=${position}`);
    await expect
      .poll(() => reading(page).textContent())
      .toContain(`spring rate ${rate}\u00a0N/mm, rear bar position ${position}`);
    expect(await reading(page).textContent()).not.toContain("outside the class limits");
  });

  it("is lettered large enough on a phone, its labels clear of the edges", async () => {
    const { page } = await openQuiet({ viewport: { width: 360, height: 740 } });
    const sizes = await page
      .locator(".map text")
      .evaluateAll((all) => all.map((text) => Number.parseFloat(getComputedStyle(text).fontSize)));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
    const [frame] = await boxesOf(page, ".map .border");
    const labels = await boxesOf(page, ".map .labels text");
    expect(labels.length).toBeGreaterThan(3);
    for (const label of labels) {
      expect(label.left).toBeGreaterThan(frame?.left ?? 0);
      expect(label.right).toBeLessThan(frame?.right ?? 0);
      expect(label.top).toBeGreaterThan(frame?.top ?? 0);
      expect(label.bottom).toBeLessThan(frame?.bottom ?? 0);
    }
  });

  it("is linked to as it is, follows a link, tells of what is wrong in it, and is reset", async () => {
    const { page } = await openQuiet();
    await page.evaluate(() => {
      location.hash =
        "#map?along=front-camber&up=fuel&third=driver&value=100&phase=turn-in&x=9&y=30";
    });
    await expect.poll(() => page.locator("#map-along").inputValue()).toBe("front-camber");
    expect(await page.locator("#map-third-value-range").inputValue()).toBe("100");
    expect(await page.locator(".fault").last().textContent()).toMatch(
      /^Front camber takes −3\.50°/,
    );
    await page.getByRole("button", { name: "Link to this map" }).click();
    await expect.poll(() => page.locator(".told").textContent()).toMatch(/Copied|address bar/);
    await page.getByRole("button", { name: "Reset" }).click();
    expect(await page.locator("#map-along").inputValue()).toBe("front-springRate");
    expect(page.url()).not.toContain("#");
  });

  it("passes axe in light and dark, folded and unfolded", async () => {
    const { page } = await openQuiet({ bypassCSP: true });
    expect(await axeFaultsInBoth(page)).toEqual([]);
    await page.locator(".numbers summary").click();
    expect(await axeFaultsInBoth(page)).toEqual([]);
  });

  it("fits 320 px without side scroll, its table unfolded", async () => {
    const { page } = await open(`map${small}`, { viewport: { width: 320, height: 740 } });
    await page.locator(".numbers summary").click();
    await page.locator(".numbers tbody tr").first().waitFor(); // the fold is filled a moment after it opens
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );
  });

  it("keeps its meaning in forced colours: lines and hatching stay, coloured ground goes", async () => {
    const { page } = await openQuiet({ forcedColors: "active" });
    expect(await page.locator(".map canvas").isVisible()).toBe(false);
    expect(await page.locator(".map path.balance").isVisible()).toBe(true);
  });

  it("says what it does without JavaScript", async () => {
    const { page } = await open("map", { javaScriptEnabled: false });
    expect(await page.locator("#map").textContent()).toContain("needs JavaScript");
  });
});

import { describe, expect, it } from "vitest";
import { demoCar, lateralLoadTransfer, rigidCarOf } from "../../../lib/index.js";
import { chapters, eachChapter } from "./browser.js";
import { fileAll, firefox, says, shown, textOf, useFirefox } from "./firefox.js";
import { serveCopy } from "./served-folder.js";

const why = firefox ? "" : " (skipped: no Firefox; on Debian, apt-get install firefox-esr)";

describe.skipIf(!firefox)(`the core of the course in a second engine${why}`, () => {
  const open = useFirefox();

  it.each(eachChapter)("moves every figure of %s by every slider", async (chapter) => {
    const { page, errors } = await open(chapter);
    await fileAll(page);
    const figures = await page.$$eval(".figure[data-live]", (all) =>
      all.map(({ id }) => ({
        id,
        sliders: [...document.querySelectorAll(`#${id} input[type=range]`)].map(({ id }) => id),
      })),
    );
    expect(figures.length).toBeGreaterThanOrEqual(3);
    for (const { id, sliders } of figures) {
      const start = await shown(page, id);
      for (const slider of sliders) {
        const before = await shown(page, id);
        const atEnd = await page.$eval(`#${slider}`, (input) => {
          const { value, max } = input as HTMLInputElement;
          return value === max;
        });
        await page.focus(`#${slider}`);
        await page.keyboard.press(atEnd ? "Home" : "End");
        const after = await shown(page, id);
        expect(after, `${slider} moves its figure`).not.toBe(before);
        expect(after, slider).not.toMatch(/NaN|Infinity|undefined|Not drawn/);
      }
      await page.click(`#${id} button.reset`);
      expect(await shown(page, id), `${id} goes back`).toBe(start);
    }
    expect(errors).toEqual([]);
  });

  it("takes a car that is typed in, and shows the course for it", async () => {
    const { page, errors } = await open("garage");
    await page.locator("button::-p-text(Start from a copy)").click();
    await page.$$eval("details", (all) => {
      for (const fold of all) fold.open = true;
    });
    await page.locator("#at-name").fill("Linnet");
    await page.locator("#at-body-mass").fill("1100");
    await page.locator("button::-p-text(let the course show it)").click();
    await says(page, ".told .status", "Linnet is saved, and the course shows it.");
    await page.goto(page.url().replace(/garage\.html.*/, "01-load-transfer.html"));
    await says(page, "#whose", "Figures for Linnet");
    const worked = await page.$eval("#transfer", (at) => (at as HTMLElement).dataset.worked);
    const rigid = rigidCarOf({ ...demoCar, body: { ...demoCar.body, mass: 1100 } });
    const moved = lateralLoadTransfer({ ...rigid, lateralAcceleration: 7 });
    expect(Number(worked)).toBeCloseTo(moved, 6);
    expect(errors).toEqual([]);
  });

  it("takes a driver's report of a run, and keeps it", async () => {
    const { page, errors } = await open("workshop");
    const chip = (ask: string, text: string) =>
      page.locator(`::-p-xpath(//*[@id="${ask}"]//*[contains(@class,"chip")][.="${text}"])`);
    const who = async () => {
      await page.locator('nav.views a[href="#report"]').click();
      await page.locator("#who-name").fill("Gita");
      await chip("who-run", "2").click();
      await page.locator("#who-go").click();
    };
    await who();
    await chip("ask-phase", "middle").click();
    await chip("ask-input", "steady").click();
    await chip("ask-balance", "−1").click();
    await page.locator("#ask-corner-text").fill("Hairpin");
    await page.locator("#file-report").click();
    await says(page, ".filed li", "Hairpin, middle: −1");
    await page.waitForSelector("html[data-kept=yes]");
    await page.reload();
    await who();
    await says(page, ".filed li", "Hairpin, middle: −1");
    expect(errors).toEqual([]);
  });

  it("keeps the course after one visit, and opens it when the host is gone", async () => {
    const course = await serveCopy("firefox");
    try {
      const { page, errors } = await open(`${course.url}index.html`);
      await says(page, ".offline", "Ready without network.");
      await course.stop();
      for (const name of [...chapters, "garage", "workshop"]) {
        await page.goto(`${course.url}${name}.html`);
        expect(await textOf(page, "h1"), name).not.toBe("");
        await says(page, ".offline", "Ready without network.");
      }
      await page.goto(`${course.url}${chapters[0]}.html`);
      await page.waitForSelector(".figure[data-live]");
      expect(errors).toEqual([]);
    } finally {
      course.remove();
    }
  });
});

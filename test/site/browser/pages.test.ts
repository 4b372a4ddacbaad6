import { describe, expect, it } from "vitest";
import { axeFaults, axeFaultsInBoth } from "./axe.js";
import { eachPage, fileAllPredictions, useBrowser } from "./browser.js";

const { open } = useBrowser();

/** What workers find changes neither widths nor colours. */
const quiet = { silentWorkers: true };

describe.each(eachPage)("page %s", (name) => {
  it("logs no error, asks no other host for anything, has only links that lead somewhere, and prints without controls", async () => {
    const { page, errors, foreign } = await open(name);
    await page.locator(".offline:not(:empty)").waitFor(); // said last of all, once the page is loaded
    const links = await page
      .locator("a[href]")
      .evaluateAll((anchors) =>
        anchors.map((anchor) => (anchor as HTMLAnchorElement).getAttribute("href") ?? ""),
      );
    for (const link of new Set(links)) {
      const [file, anchor] = link.split("#");
      if (file)
        expect((await page.request.get(new URL(file, page.url()).href)).ok(), link).toBe(true);
      if (!file && anchor) expect(await page.locator(`[id="${anchor}"]`).count(), link).toBe(1);
    }
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);

    await page.emulateMedia({ media: "print" });
    expect(await page.locator("button:visible, input:visible, nav:visible").count()).toBe(0);
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("fits a phone of 360 px and one of 320 px without side scroll", async () => {
    const { page } = await open(name, { ...quiet, viewport: { width: 360, height: 740 } });
    await fileAllPredictions(page);
    for (const width of [360, 320]) {
      await page.setViewportSize({ width, height: 740 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
    }
  });

  it("passes axe folded and unfolded, its colours in light and in dark", async () => {
    const { page } = await open(name, { ...quiet, bypassCSP: true });
    expect(await axeFaults(page)).toEqual([]);
    await fileAllPredictions(page);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll("details")) fold.open = true;
    });
    expect(await axeFaultsInBoth(page)).toEqual([]);
  });

  it("is whole without JavaScript: pictures, sentences, folded answers, and no dead control", async () => {
    const { page } = await open(name, { javaScriptEnabled: false });
    expect(await page.locator("h1").count()).toBe(1);
    expect(await page.locator("input, button, fieldset").count()).toBe(0);
    for (const figure of await page.locator(".figure").all()) {
      expect(await figure.locator("svg.panel [data-layer] *").count()).toBeGreaterThan(0);
      expect((await figure.locator(".says").textContent())?.length).toBeGreaterThan(20);
    }
    for (const fold of await page.locator(".exercise details").all()) {
      expect(await fold.evaluate((details) => (details as HTMLDetailsElement).open)).toBe(false);
    }
  });
});

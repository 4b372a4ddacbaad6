import { describe, expect, it } from "vitest";
import { axeFaults } from "./axe.js";
import { eachPage, fileAllPredictions, useBrowser } from "./browser.js";

const { open } = useBrowser();

describe.each(eachPage)("page %s", (name) => {
  it("logs no error and asks no other host for anything", async () => {
    const { page, errors, foreign } = await open(name);
    await page.locator(".offline:not(:empty)").waitFor(); // said last of all, once the page is loaded
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
  });

  it("fits a phone of 360 px and one of 320 px without side scroll", async () => {
    for (const width of [360, 320]) {
      const { page } = await open(name, { viewport: { width, height: 740 } });
      await fileAllPredictions(page);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
    }
  });

  it.each(["light", "dark"] as const)(
    "passes axe in %s, folded and unfolded",
    async (colorScheme) => {
      const { page } = await open(name, { colorScheme, bypassCSP: true });
      expect(await axeFaults(page)).toEqual([]);
      await fileAllPredictions(page);
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll("details")) fold.open = true;
      });
      expect(await axeFaults(page)).toEqual([]);
    },
  );

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

  it("prints without controls, with every figure on one page width", async () => {
    const { page } = await open(name);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("button:visible, input:visible, nav:visible").count()).toBe(0);
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("has only links that lead somewhere, and anchors that are there", async () => {
    const { page } = await open(name);
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
  });
});

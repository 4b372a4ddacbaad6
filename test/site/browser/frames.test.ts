import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { chooseUnits, eachChapter, useBrowser } from "./browser.js";

const { open } = useBrowser();

/** Every frame, part by part, its attributes in one order. */
const framesOf = (page: Page): Promise<string[][]> =>
  page.evaluate(() => {
    const told = (part: Element) => {
      const attributes = [...part.attributes].map(({ name, value }) => `${name}="${value}"`).sort();
      const text = part.children.length === 0 ? part.textContent : "";
      return `${part.tagName} ${attributes.join(" ")} ${text}`;
    };
    return [...document.querySelectorAll("[data-frame]")].map((frame) =>
      [frame, ...frame.querySelectorAll("*")].map(told),
    );
  });

const loadsFrameScript = (page: Page): Promise<boolean> =>
  page.evaluate(() =>
    performance.getEntriesByType("resource").some(({ name }) => name.endsWith("/frame.js")),
  );

/** Waits until no frame is empty. */
const framed = (page: Page) =>
  page.waitForFunction(() =>
    [...document.querySelectorAll("[data-frame]")].every(({ children }) => children.length > 0),
  );

describe.each(eachChapter)("axes of %s", (chapter) => {
  it("are the kernel's for the workbook's own car in metric units, come out of the page's script as they came out of the kernel, show US units to a reader who chose them, and are none where they cannot be loaded", async () => {
    const { page, errors } = await open(chapter);
    const still = await framesOf(page);
    expect(still.length).toBeGreaterThan(0);
    expect(await loadsFrameScript(page)).toBe(false);
    await page.route("**/*.html", async (route) => {
      const body = await (await route.fetch()).text();
      await route.fulfill({
        contentType: "text/html",
        body: body.replace(/data-frame="/g, 'data-frame="of another car '),
      });
    });
    await page.reload();
    await page.waitForFunction(() => !document.querySelector('[data-frame^="of another"]'));
    expect(await loadsFrameScript(page)).toBe(true);
    expect(await framesOf(page)).toEqual(still);

    // US units to a reader who chose them
    await chooseUnits(page, "us");
    await framed(page);
    const texts = await page.locator("[data-frame] .axis-title").allTextContents();
    expect(texts.join(" ")).not.toMatch(/\((N|kN|mm|m|kg|kPa|N·m\/°|N\/°|N\/mm|km\/h|m\/s²)\)/);
    expect(errors).toEqual([]);

    // and where they cannot be loaded there is no false axis, and a sentence in their place
    await page.route("**/frame.js", (route) => route.abort());
    await page.reload();
    await page.locator(".figure .fault:not([hidden])", { hasText: "axes" }).first().waitFor();
    const empty = await page.locator("[data-frame]:empty").count();
    expect(empty).toBeGreaterThan(0);
  });
});

import { describe, expect, it } from "vitest";
import { chapters, chooseUnits, fileAllPredictions, useBrowser } from "./browser.js";

const { open } = useBrowser();
const [, , tyres = "", , , , , , levers = ""] = chapters;

describe("a chapter", () => {
  it("is spelt one way only, as the reader's units suggest", async () => {
    const { page } = await open(tyres);
    const text = () => page.locator("body").textContent();
    expect(await text()).not.toMatch(/\btires?\b/i);
    await chooseUnits(page, "us");
    await fileAllPredictions(page);
    expect(await text()).not.toMatch(/\btyres?\b/i);
    expect(await text()).toMatch(/\btires\b/);
  });

  it("chooses a part of the corner by its name", async () => {
    const { page } = await open(levers);
    await fileAllPredictions(page);
    const parts = page.locator("#levers-by-phase").getByRole("group", { name: "Phase" });
    const pressed = () => parts.locator("[aria-pressed=true]").allTextContents();
    for (const name of ["braking in", "power on"]) {
      await parts.getByRole("button", { name }).press("Enter");
      expect(await pressed()).toEqual([name]);
    }
  });

  it("leaves room on paper for a reason, and turns the page before the answer", async () => {
    const { page } = await open(levers);
    await page.emulateMedia({ media: "print" });
    const lines = () =>
      page
        .locator(".predict > .choices")
        .evaluateAll((lists) => lists.map((list) => getComputedStyle(list, "::after").content));
    const locked = page.locator(".figure[data-locked]");
    expect((await lines()).every((line) => line.includes("Because"))).toBe(true);
    const breaks = await locked.evaluateAll((figures) =>
      figures.map((figure) => getComputedStyle(figure).breakBefore),
    );
    expect(new Set(breaks)).toEqual(new Set(["page"]));
    await page.emulateMedia({ media: "screen" });
    await fileAllPredictions(page);
    await page.emulateMedia({ media: "print" });
    expect((await lines()).some((line) => line.includes("Because"))).toBe(false);
    expect(await locked.count()).toBe(0);
  });
});

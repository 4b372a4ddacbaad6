import { describe, expect, it } from "vitest";
import { useBrowser } from "./browser.js";
import { goTo, openExample, sayWho } from "./workshop.js";

const { open } = useBrowser();

describe("what is half typed", () => {
  it("in Run and Report outlives a glance at another tab, and a reload", async () => {
    const { page, errors } = await open("workshop");
    await openExample(page);
    await goTo(page, "run");
    await page.locator("#run-note").fill("Wind from the");
    await page.locator("#poll-fold > summary").click();
    await page.locator("#poll-text").fill("Which end moves");
    await page.locator("#poll-1-b").fill("4");
    await sayWho(page, "Gita", 2);
    await page.locator("#expect > summary").click();
    await page.locator("#expect-what .chip").first().click();
    await page.locator("#expect-reason").fill("the bar takes");
    const stands = async () => {
      await goTo(page, "run");
      expect(await page.locator("#run-note").inputValue()).toBe("Wind from the");
      expect(await page.locator("#poll-text").inputValue()).toBe("Which end moves");
      expect(await page.locator("#poll-1-b").inputValue()).toBe("4");
      await goTo(page, "report");
      expect(await page.locator("#expect-reason").inputValue()).toBe("the bar takes");
      expect(await page.locator("#expect-what input").first().isChecked()).toBe(true);
    };
    await stands();
    expect(await page.locator("#expect").getAttribute("open")).not.toBeNull();
    await page.reload();
    await page.locator("#expect-reason").waitFor({ state: "attached" });
    await stands();
    expect(errors).toEqual([]);
  });
});

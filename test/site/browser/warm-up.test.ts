import { describe, expect, it } from "vitest";
import { axeFaults } from "./axe.js";
import { useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();

describe("a check of one’s own", () => {
  it("stands at the end of Why, asks two questions of the chapter, and keeps the answers", async () => {
    const { page, errors } = await open("03-distribution-between-axles");
    const fold = page.locator(".part:has(> #why) > .warm-up[data-asks=own]");
    await fold.locator("summary").click();
    await fold.locator("form").first().waitFor();
    expect(await fold.locator("form").count()).toBe(2);
    await fold.locator("form input[type=radio]").first().check();
    await fold.locator("form .inline input").first().check();
    await fold.locator("form button").first().click();
    await fold.locator(".outcome").first().waitFor();
    await page.reload();
    await fold.locator("summary").click();
    await expect.poll(() => fold.locator("form").count()).toBe(2); // of three, one answered today
    expect(errors).toEqual([]);
  });
});

// which chapters offer one: questions.test.ts
describe("a warm-up", () => {
  it("loads the questions only once it is opened, and from a folder too", async () => {
    const { page, errors } = await open(fileUrl("03-distribution-between-axles"));
    expect(await page.locator("script[src='questions.js']").count()).toBe(0);
    await page.locator(".warm-up[data-asks=earlier] summary").click();
    await page.locator(".warm-up[data-asks=earlier] form").first().waitFor();
    expect(await page.locator(".warm-up[data-asks=earlier] form").count()).toBe(2);
    expect(errors).toEqual([]);
  });

  it("is accessible, and fits a phone of 320 px, before and after an answer", async () => {
    const { page } = await open("04-roll-centre", {
      bypassCSP: true,
      viewport: { width: 320, height: 740 },
    });
    await page.locator(".warm-up[data-asks=earlier] summary").click();
    const form = page.locator(".warm-up[data-asks=earlier] form").first();
    await form.waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await form.locator("input[type=radio]").nth(1).check();
    await form.locator(".inline input").first().check();
    await form.locator("button").click();
    expect(await page.locator(".warm-up[data-asks=earlier] .outcome").count()).toBe(1);
    expect(await axeFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );
  });

  it("asks something else once an answer is given, and its answers come back in the review", async () => {
    const { page } = await open("03-distribution-between-axles");
    const asked = async () => {
      await page.locator(".warm-up[data-asks=earlier] summary").click();
      await page.locator(".warm-up[data-asks=earlier] form").first().waitFor();
      return page.locator(".warm-up[data-asks=earlier] legend.ask").allTextContents();
    };
    const before = await asked();
    for (const form of await page.locator(".warm-up[data-asks=earlier] form").all()) {
      await form.locator("input[type=radio]").first().check();
      await form.locator(".inline input").first().check();
    }
    await page.locator(".warm-up[data-asks=earlier] form button").first().click();
    await page.locator(".warm-up[data-asks=earlier] form button").first().click();
    await page.reload();
    const after = await asked();
    expect(after.filter((question) => before.includes(question))).toEqual([]);
    await page.goto(page.url().replace(/[^/]*$/, "questions.html#review"));
    expect(await page.locator("#review li").textContent()).toBe("2 questions tomorrow");
  });

  it("says so when the questions cannot be had", async () => {
    const { page } = await open("03-distribution-between-axles");
    await page.route("**/questions.js", (route) => route.abort());
    await page.locator(".warm-up[data-asks=earlier] summary").click();
    await page.locator(".warm-up[data-asks=earlier] .fault").waitFor();
  });
});

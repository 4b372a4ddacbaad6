import { describe, expect, it } from "vitest";
import { useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();
const shown = ".code-of-link:not([hidden]) figcaption";

describe("sharing", () => {
  it("shows a code of the page and the place that the reader comes from", async () => {
    const { page } = await open("03-distribution-between-axles");
    await page.locator("#in-numbers").scrollIntoViewIfNeeded();
    await page.evaluate(() => document.getElementById("in-numbers")?.scrollIntoView());
    await page.evaluate(() =>
      document.querySelector<HTMLElement>(".masthead a[href='share.html']")?.click(),
    );
    await page.waitForURL(/share\.html#/);
    await page.fill("#address", "https://club.example/rollbook");
    expect(await page.locator(shown).textContent()).toBe(
      "https://club.example/rollbook/03-distribution-between-axles.html#in-numbers",
    );
    expect(await page.locator(".code-of-link svg").getAttribute("aria-label")).toContain(
      "QR code of https://club",
    );
  });

  it("asks for the public address where the course is open on one device alone, and keeps it", async () => {
    const { page } = await open(fileUrl("share"));
    expect(await page.locator("#share [role=status]").textContent()).toBe(
      "Type the address first.",
    );
    expect(await page.locator(shown).count()).toBe(0);
    await page.fill("#address", "https://club.example/rollbook/index.html");
    expect(await page.locator(shown).textContent()).toBe(
      "https://club.example/rollbook/index.html",
    );
    await page.reload();
    expect(await page.locator(shown).textContent()).toBe(
      "https://club.example/rollbook/index.html",
    );
  });

  it("makes no code of a link that leads out of the course, nor of one that is no link", async () => {
    const { page, errors } = await open("share");
    await page.fill("#address", "https://club.example/");
    for (const hash of [
      "https%3A%2F%2Fevil.example%2F",
      "javascript%3Aalert(1)",
      "%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E%25",
      "%",
    ]) {
      await page.goto(page.url().replace(/#.*|$/, `#${hash}`));
      await page.evaluate(() => new Promise((done) => setTimeout(done))); // the page has heard of it
      const codes = await page.locator(shown).allTextContents();
      for (const link of codes) expect(link).toMatch(/^https:\/\/club\.example\//);
      expect(await page.locator("#share img").count()).toBe(0);
    }
    await page.fill("#link", "https://evil.example/");
    expect(await page.locator("#share [role=status]").textContent()).toContain(
      "leads out of the course",
    );
    expect(errors).toEqual([]);
  });

  it("prints the code and the link, and nothing to press", async () => {
    const { page } = await open("share");
    await page.fill("#address", "https://club.example/");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".code-of-link svg").isVisible()).toBe(true);
    expect(await page.locator("button:visible, input:visible").count()).toBe(0);
  });

  it("offers a code for a figure as it stands", async () => {
    const { page } = await open("03-distribution-between-axles");
    const figure = page.locator(".figure", { has: page.locator(".slider input:enabled") }).first();
    await figure.locator("input[type=range]").first().press("ArrowRight");
    const id = await figure.getAttribute("id");
    await figure.getByRole("button", { name: "Link to this state" }).click();
    await figure.getByRole("link", { name: "Show it as a QR code" }).click();
    await page.fill("#address", "https://club.example/");
    expect(await page.locator(shown).textContent()).toContain(
      `/03-distribution-between-axles.html#${id}?`,
    );
  });
});

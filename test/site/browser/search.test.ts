import { describe, expect, it } from "vitest";
import { useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();
const box = "#search input[type=search]";
const answers = "#search .answers a";

describe("the search page", () => {
  it("loads its index only when someone comes to search, and says how much it found", async () => {
    const { page } = await open("search");
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.locator(".offline:not(:empty)").waitFor(); // said once the page is loaded
    expect(asked.filter((url) => url.endsWith("search-index.js"))).toEqual([]);
    await page.fill(box, "sway bar");
    await page.waitForSelector(answers);
    expect(asked.filter((url) => url.endsWith("search-index.js"))).toHaveLength(1);
    expect(await page.locator("#search [role=status]").textContent()).toMatch(
      /^(The first )?\d+ places for “sway bar”\.$/,
    );
    expect(await page.locator(answers).first().textContent()).toBe("anti-roll bar");
  });

  it("goes through the answers by arrow keys, back by Escape, and opens one by Enter", async () => {
    const { page } = await open("search");
    await page.fill(box, "roll centre");
    await page.waitForSelector(answers);
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await page.locator(box).press("ArrowDown");
    expect(await focused()).toBe(await page.locator(answers).nth(0).textContent());
    await page.keyboard.press("ArrowDown");
    expect(await focused()).toBe(await page.locator(answers).nth(1).textContent());
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Escape");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("query");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.waitForURL(/words\.html#roll-centre$/);
  });

  it("keeps the question in the address, so that coming back shows the answers again", async () => {
    const { page } = await open("search");
    await page.fill(box, "tire");
    await page.locator(answers).first().click();
    await page.goBack();
    await page.waitForSelector(answers);
    expect(await page.inputValue(box)).toBe("tire");
  });

  it("leads every answer to an anchor that is there", async () => {
    const { page } = await open("search");
    for (const query of ["load", "axle", "pressure", "stiffness"]) {
      await page.fill(box, query);
      await page.waitForFunction(
        (text) => document.querySelector("#search [role=status]")?.textContent?.includes(text),
        `“${query}”`,
      );
      const hrefs = await page
        .locator(answers)
        .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
      for (const href of hrefs) {
        const [file = "", anchor] = href.split("#");
        const html = await (await page.request.get(new URL(file, page.url()).href)).text();
        if (anchor) expect(html.includes(`id="${anchor}"`), href).toBe(true);
      }
    }
  });

  it("shows what was typed as text, never as HTML", async () => {
    const { page, errors } = await open("search");
    const typed = "<img src=x onerror=alert(1)>";
    await page.fill(box, typed);
    await page.waitForFunction(() => document.querySelector("#search [role=status]")?.textContent);
    expect(await page.locator("#search img").count()).toBe(0);
    expect(await page.locator("#search [role=status]").textContent()).toContain(typed);
    expect(errors).toEqual([]);
  });

  it("works from a folder", async () => {
    const { page, errors } = await open(fileUrl("search"));
    await page.fill(box, "wedge");
    await page.waitForSelector(answers);
    expect(await page.locator(answers).first().textContent()).toBe("cross weight");
    expect(errors).toEqual([]);
  });
});

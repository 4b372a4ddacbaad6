import { today } from "@rollbook/lib";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { savedText, useBrowser } from "./browser.js";

const { open } = useBrowser();
const chapter = "01-load-transfer";
const exercise = "ex-harder";

const kept = (value: unknown): string => JSON.stringify({ stamp: 1, value });
const key = (kind: string, id: string): string => `rollbook:${kind}:${chapter}:${id}`;

/** What the device keeps of a reader who predicted, saw and solved on this day. */
const keepsFrom = (day: number): Record<string, string> => ({
  [key("filed", "stiffer-bars")]: kept({
    ...{ choice: 1, confidence: "a guess", reason: "it leans less" },
    inWords: { ask: "How much load?", said: "B. Less.", model: "C. Nearly the same." },
  }),
  [key("seen", "stiffer-bars")]: kept({
    ...{ looked: [0, 1, 2], saw: "The sum stays." },
    times: [{ day, isRight: true }],
  }),
  [key("exercise", exercise)]: kept({ ask: "And harder?", times: [{ day, isRight: true }] }),
});

const step = (page: Page) => page.locator(`.path [data-chapter="${chapter}"]`);

describe("the first page", () => {
  it("asks one question, shows the ideas as a path with their minutes, and says nothing of what was not done", async () => {
    const { page } = await open("index", { viewport: { width: 360, height: 740 } });
    await page.getByRole("button", { name: "The rear" }).click();
    expect(await page.locator(".outcome").textContent()).toContain("You say: The rear.");
    expect(await page.locator(".path > li").count()).toBe(10);
    expect(await step(page).locator(".took").textContent()).toMatch(
      /^\d+ min, with everything \d+ min$/,
    );
    expect(await page.locator("#due").isVisible()).toBe(false);
    expect(await page.locator(".done:visible").count()).toBe(0);
    const head = await page.locator(".masthead").boundingBox();
    expect(head?.height).toBeLessThan(60); // one line
  });

  it("says what was done, where to go on and what is due, which the review then asks", async () => {
    const { page } = await open("index", { keeps: keepsFrom(today() - 1) });
    expect(await step(page).locator(".done").textContent()).toBe(
      "1 of 2 predicted · 1 of 2 seen · 1 of 6 solved",
    );
    expect(await page.locator(".path [data-next]").getAttribute("data-chapter")).toBe(
      "00-start-here",
    );
    expect(await page.locator("#due").textContent()).toBe(
      "Due today: 1 prediction to recall, 1 exercise. Review",
    );
    await page.locator("#due a").click();
    const recall = page.locator("#review .question");
    expect(await recall.textContent()).not.toContain("C. Nearly the same.");
    await recall.getByRole("button", { name: "Show what I saw" }).click();
    expect(await recall.textContent()).toContain("You saw: The sum stays.");
    expect(await recall.textContent()).toContain("The model said: C. Nearly the same.");
    expect(await page.getByRole("link", { name: "And harder?" }).getAttribute("href")).toBe(
      `${chapter}.html#${exercise}`,
    );
    await recall.getByRole("button", { name: "I remembered it" }).click();
    expect(await recall.count()).toBe(0);
    await page.reload();
    expect(await page.locator("#review .question").count()).toBe(0);
    await page.getByRole("link", { name: "And harder?" }).click();
    expect(await page.locator(`#${exercise} .reply`).textContent()).toContain("Due again today");
  });

  it("goes along to another device as a file, which adds what is missing there", async () => {
    const { page } = await open("questions", { keeps: keepsFrom(today() - 1) });
    await page.getByRole("link", { name: "Your answers" }).click();
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save my path as a file" }).click();
    const text = await savedText(await saving);
    const other = await open("questions");
    await other.page.getByRole("link", { name: "Your answers" }).click();
    const file = { name: "path.json", mimeType: "application/json", buffer: Buffer.from(text) };
    await other.page.getByLabel("Add a path from a file").setInputFiles(file);
    await expect
      .poll(() => other.page.locator("#file").textContent())
      .toContain("2 places of the file taken in");
    await other.page.goto(other.page.url().replace(/questions.*/, "index.html"));
    expect(await step(other.page).locator(".done").textContent()).toBe(
      "1 of 2 predicted · 1 of 2 seen · 1 of 6 solved",
    );
  });

  it("makes the menu that of a kind of reader, on every page, and whole again", async () => {
    const { page } = await open("index");
    const inSight = () => page.locator(".shortcuts a").allTextContents();
    const whole = await inSight();
    const door = page.locator('.door[data-role="instructor"] button');
    await door.click();
    await step(page).locator("a").click();
    await page.waitForURL(/\/0\d-[^/]*$/);
    await expect.poll(inSight).toEqual(["Workshop", "Your car", "Chapters", "Map"]);
    await page.locator(".menu > summary").click();
    expect(await page.locator(".menu-pages a:visible").count()).toBeGreaterThan(9);
    await page.keyboard.press("Escape");
    expect(await page.locator(".menu-pages").isVisible()).toBe(false);
    await page.goBack();
    await door.click();
    await page.reload();
    expect(await inSight()).toEqual(whole);
  });
});

describe("a chapter", () => {
  it("keeps that an exercise was solved and says when it comes back", async () => {
    const { page } = await open(chapter);
    const place = page.locator(`#${exercise}`);
    const shown = await place.locator("output").textContent();
    const right = Number((shown ?? "").replace(/[^\d.]/g, ""));
    const check = async (value: number) => {
      await place.locator("input").fill(String(value));
      await place.getByRole("button", { name: "Check" }).click();
      return place.locator(".reply").textContent();
    };
    expect(await check(right * 3)).toMatch(/^Not yet: that is too high/);
    expect(await check(right * 2)).toBe(
      "Not yet: you took half the track as the lever; what one side loses the other gains, a whole track away.",
    );
    expect(await check(right)).toMatch(/^Right/);
    await page.reload();
    expect(await place.locator(".reply").textContent()).toBe(
      "Solved. It comes back tomorrow, on the first page.",
    );
  });

  it("shows its core alone where that is wanted, opens a part by hand and by a link to it, and everything again", async () => {
    const { page } = await open(chapter);
    const text = page.getByText("The same steps with the numbers of this page’s car.");
    await page.getByRole("button", { name: "Show the core only" }).click();
    expect([await text.isVisible(), await page.locator(".exercise:visible").count()]).toEqual([
      false,
      2,
    ]);
    await page.reload();
    expect(await text.isVisible()).toBe(false);
    await page.locator(".part:has(#in-numbers) .open-part").click();
    expect(await text.isVisible()).toBe(true);
    const deeper = page.getByText("Many classes limit or forbid spacers");
    expect(await deeper.isVisible()).toBe(false);
    await page.locator(".sections a[href='#what-else-that-change-moves']").click();
    await expect.poll(() => deeper.isVisible()).toBe(true);
    await page.getByRole("button", { name: "Show everything" }).click();
    expect(await page.locator(".exercise:visible").count()).toBe(6);
  });
});

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { eachChapter, savedText, useBrowser } from "./browser.js";
import { fileEvery } from "./file-every.js";

const { open } = useBrowser();

/** Files every prediction of the page as a hand does. */
async function fileAllPredictions(page: Page): Promise<void> {
  const open = page.locator("form.filing:visible");
  while ((await open.count()) > 0) {
    const form = open.first();
    await form.locator("input[type=radio]").first().check();
    await form.locator("input[name$=reason]").fill("it feels so");
    await form.locator(".inline input[type=radio]").first().check();
    await form.locator("button[type=submit]").click();
  }
}

describe.each(eachChapter)("questions of %s", (chapter) => {
  it("keep the sliders locked until a choice, a reason and a confidence are filed, then show them beside the answer; tell a right number from a wrong one and from none, and refuse one out of range", async () => {
    const { page } = await open(chapter);
    const locked = page.locator("fieldset.controls:disabled");
    const before = await locked.count();
    expect(before).toBeGreaterThanOrEqual(1);
    for (const form of await page.locator("form.filing").all()) {
      await form.locator("button[type=submit]").click();
      await form.locator("input[type=radio]").first().check();
      await form.locator(".inline input[type=radio]").first().check();
      await form.locator("input[name$=reason]").fill("   ");
      await form.locator("button[type=submit]").click();
    }
    expect(await locked.count()).toBe(before);
    await fileAllPredictions(page);
    expect(await locked.count()).toBe(0);

    // the filed prediction stands beside the model's answer, also after a reload, and is given back
    const outcome = page.locator(".predict .outcome").first();
    expect(await outcome.textContent()).toMatch(/^You said A \(a guess\), because it feels so\. /);
    await page.reload();
    expect(await outcome.textContent()).toContain("You said A");
    expect(await page.locator("fieldset.controls:disabled").count()).toBe(0);
    const takeBack = page.getByRole("button", { name: "Take it back" });
    while ((await takeBack.count()) > 0) await takeBack.first().click();
    expect(await page.locator("form.filing:visible").count()).toBeGreaterThanOrEqual(1);
    expect(await page.locator("fieldset.controls:disabled").count()).toBeGreaterThanOrEqual(1);

    // an exercise tells a right answer from a wrong one and from no number
    for (const form of await page.locator("form.checking").all()) {
      const section = form.locator("..");
      await section.locator("details").last().locator("summary").click();
      const shown = (await section.locator("output").textContent()) ?? "";
      const number = shown.replace("−", "-").replace(/[^\d.-].*$/, "");
      const check = async (text: string) => {
        await form.locator("input").fill(text);
        await form.locator("button").click();
        return form.locator(".reply").textContent();
      };
      expect(await check(""), shown).toMatch(/^Type a number/);
      expect(await check(number), shown).toMatch(/^Right/);
      expect(await check(String(Math.abs(Number(number)) * 2 + 1)), shown).toMatch(/too high/);
    }

    // a number out of range is refused in one sentence, and what was typed is kept
    await page.evaluate(fileEvery);
    const row = page.locator(".slider:not(.named)").first();
    await row.locator("input[type=number]").fill("99999");
    const max = await row.locator("input[type=number]").getAttribute("max");
    expect(await row.locator(".fault").textContent()).toMatch(
      new RegExp(`takes .* to ${Number(max)}.*, not 99999\\.$`),
    );
    expect(await row.locator("input[type=number]").inputValue()).toBe("99999");
  });
});

it.each(eachChapter.slice(0, 1))(
  "a prediction that the device refuses is named at the foot of %s with a file, and one that cannot be read is put aside",
  async (chapter) => {
    const strange = '{"stamp":3,"version":9,"value":{"choice":"later"}}';
    const { page } = await open(chapter);
    const id = await page.locator(".predict").first().getAttribute("id");
    await page.evaluate(
      ([name, text]) => localStorage.setItem(name ?? "", text ?? ""),
      [`rollbook:filed:${chapter}:${id}`, strange],
    );
    await page.reload();
    await page
      .locator(".put-aside", { hasText: "cannot be read as it is: your prediction" })
      .waitFor();
    await page.locator(".put-aside").getByRole("button", { name: "Let it go" }).click();
    await page.locator(".put-aside").waitFor({ state: "hidden" });
    await page.evaluate(() => {
      const full = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
      Storage.prototype.setItem = full;
      IDBObjectStore.prototype.put = full;
    });
    await fileAllPredictions(page);
    const sign = page.locator(".not-kept", { hasText: "Not kept: your prediction." });
    const download = page.waitForEvent("download");
    await sign.getByRole("button", { name: "Save it as a file" }).click();
    expect(await savedText(await download)).toContain("it feels so");
  },
);

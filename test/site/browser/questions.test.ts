import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { eachChapter, savedText, useBrowser } from "./browser.js";
import { fileEvery } from "./file-every.js";

const { open } = useBrowser();

/** Files the first open prediction of the page as a hand does. */
async function fileByHand(page: Page) {
  const form = page.locator("form.filing:visible").first();
  await form.locator("input[type=radio]").first().check();
  await form.locator("input[name$=reason]").fill("it feels so");
  await form.locator(".inline input[type=radio]").first().check();
  await form.locator("button[type=submit]").click();
}

/** Sends every prediction off empty, then without a reason. Runs in the page. */
function sendUnfinished(): void {
  for (const form of document.querySelectorAll("form.filing")) {
    const send = form.querySelector("button[type=submit]") as HTMLButtonElement;
    send.click();
    form.querySelector<HTMLInputElement>("input[type=radio]")?.click();
    form.querySelector<HTMLInputElement>(".inline input[type=radio]")?.click();
    const reason = form.querySelector("input[name$=reason]") as HTMLInputElement;
    reason.value = "   ";
    send.click();
  }
}

interface Replies {
  readonly shown: string;
  readonly toNothing: string;
  readonly toRight: string;
  readonly toWrong: string;
}

/** What each exercise answers to no number, to the one of its solution, and to one far off. Runs in the page. */
function checkExercises(): Replies[] {
  return [...document.querySelectorAll<HTMLFormElement>("form.checking")].map((form) => {
    const shown = form.parentElement?.querySelector("output")?.textContent ?? "";
    const number = shown.replace("−", "-").replace(/[^\d.-].*$/, "");
    const replyTo = (text: string): string => {
      (form.querySelector("input") as HTMLInputElement).value = text;
      form.querySelector("button")?.click();
      return form.querySelector(".reply")?.textContent ?? "";
    };
    return {
      shown,
      toNothing: replyTo(""),
      toRight: replyTo(number),
      toWrong: replyTo(String(Math.abs(Number(number)) * 2 + 1)),
    };
  });
}

/** Those before it have too little to ask about. */
const offersWarmUp = (chapter: string) => Number(chapter.slice(0, 2)) >= 2;

describe.each(eachChapter)("questions of %s", (chapter) => {
  it("are warmed up for under the idea from the third chapter on; keep the sliders locked until a choice, a reason and a confidence are filed, then show them beside the answer; tell a right number from a wrong one and from none, and refuse one out of range", async () => {
    const { page } = await open(chapter);
    const warmUps = await page.locator("h1 + p + details.warm-up").count();
    expect(warmUps).toBe(offersWarmUp(chapter) ? 1 : 0);
    const locked = page.locator("fieldset.controls:disabled");
    const before = await locked.count();
    expect(before).toBeGreaterThanOrEqual(1);
    await page.evaluate(sendUnfinished);
    expect(await locked.count()).toBe(before);
    await fileByHand(page);
    expect(await locked.count()).toBeLessThan(before);
    await page.evaluate(fileEvery, false);
    expect(await locked.count()).toBe(0);

    // the filed prediction stands beside the model's answer, also after a reload, and is given back
    const outcome = page.locator(".predict .outcome").first();
    expect(await outcome.textContent()).toMatch(/^You said A \(a guess\), because it feels so\. /);
    await page.reload();
    expect(await outcome.textContent()).toContain("You said A");
    expect(await page.locator("fieldset.controls:disabled").count()).toBe(0);
    await page.getByRole("button", { name: "Take it back" }).first().click();
    expect(await page.locator("form.filing:visible").count()).toBeGreaterThanOrEqual(1);
    expect(await page.locator("fieldset.controls:disabled").count()).toBeGreaterThanOrEqual(1);

    // an exercise tells a right answer from a wrong one and from no number
    for (const { shown, toNothing, toRight, toWrong } of await page.evaluate(checkExercises)) {
      expect(toNothing, shown).toMatch(/^Type a number/);
      expect(toRight, shown).toMatch(/^Right/);
      expect(toWrong, shown).toMatch(/^Not yet/);
    }

    // a number out of range is refused in one sentence, and what was typed is kept
    await page.evaluate(fileEvery, false);
    const row = page.locator(".controls .slider:not(.named)").first();
    await row.locator("input[type=number]").fill("99999");
    const max = await row.locator("input[type=number]").getAttribute("max");
    expect(await row.locator(".fault").textContent()).toMatch(
      new RegExp(`takes .* to ${Number(max)}.*, not 99999\\.$`),
    );
    expect(await row.locator("input[type=number]").inputValue()).toBe("99999");
  });
});

const [loads] = eachChapter.filter((chapter) => chapter.startsWith("01-"));

describe.runIf(loads)("a prediction of the first chapter", () => {
  const chapter = loads ?? "";

  it("opens its figure, not its answer; that comes after what the figure asks for and a sentence of one’s own, by keys alone on a phone, and again after a reload", async () => {
    const { page } = await open(chapter, { viewport: { width: 360, height: 740 } });
    const question = page.locator("#stiffer-bars");
    const figure = page.locator("#bars-and-total");
    const explanation = page.locator(".cell:has(#bars-and-total) .explanation");
    const below = page.getByText("Your friend saw the lean, not the load.");
    await question.locator("input[type=radio]").first().focus();
    await page.keyboard.press("Space");
    await question.locator("#stiffer-bars-drawn-range").focus();
    await page.keyboard.press("Home");
    await question.locator("input[name$=reason]").focus();
    await page.keyboard.type("it feels so");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Space");
    await page.keyboard.press("Enter");

    const outcome = question.locator(".outcome");
    expect(await outcome.textContent()).not.toMatch(/model/);
    expect(await figure.locator(".panels").isVisible()).toBe(true);
    expect([await explanation.isVisible(), await below.isVisible()]).toEqual([false, false]);
    const ticked = figure.locator(".looks li[data-done]");
    expect([await ticked.count(), await figure.locator(".seeing").isVisible()]).toEqual([0, false]);

    const slide = async (key: string, end: "Home" | "End") => {
      await figure.locator(`#bars-and-total-${key}-range`).focus();
      await page.keyboard.press(end);
    };
    await slide("frontBar", "Home");
    await slide("rearBar", "Home");
    expect(await ticked.count()).toBe(1);
    await slide("frontBar", "End");
    expect(await ticked.count()).toBe(2);
    await page.reload();
    expect(await ticked.count()).toBe(2);
    await slide("frontBar", "End");
    await slide("rearBar", "End");
    await figure.locator(".seeing textarea").fill("short");
    await figure.locator(".seeing button").click();
    expect(await explanation.isVisible()).toBe(false);
    await figure.locator(".seeing textarea").fill("The lean halves and the sum stays.");
    await figure.locator(".seeing button").click();

    expect([await explanation.isVisible(), await below.isVisible()]).toEqual([true, true]);
    expect(await explanation.locator("li").count()).toBe(4);
    expect(await explanation.locator(".sketch p").textContent()).toMatch(
      /you drew 0\sN, the model says \d+\sN: \d+\sN too little\.$/,
    );
    expect(await outcome.textContent()).toMatch(/The model (agrees|says)/);
    await page.reload();
    expect(await explanation.isVisible()).toBe(true);
    expect(await figure.locator(".saw").textContent()).toBe(
      "You saw: The lean halves and the sum stays.",
    );
    await question.getByRole("button", { name: "Take it back" }).click();
    expect([await explanation.isVisible(), await figure.locator(".panels").isVisible()]).toEqual([
      false,
      false,
    ]);
  });

  it("lets a reader without time open everything of the page, and ask again", async () => {
    const { page } = await open(chapter);
    await page.getByRole("button", { name: "No time" }).first().click();
    const explanations = page.locator(".explanation");
    for (const one of await explanations.all()) expect(await one.isVisible()).toBe(true);
    expect(await page.locator(".figure[data-locked]").count()).toBe(0);
    await page.reload();
    await page.getByRole("button", { name: "Ask me after all" }).first().click();
    for (const one of await explanations.all()) expect(await one.isVisible()).toBe(false);
  });

  it("hides nothing and asks for no move where no script runs", async () => {
    const { page } = await open(chapter, { javaScriptEnabled: false });
    expect(await page.locator(".find-out:visible").count()).toBe(0);
    expect(await page.getByText("Your friend saw the lean").isVisible()).toBe(true);
    expect(await page.locator("#stiffer-bars details").isVisible()).toBe(true);
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
    await fileByHand(page);
    const sign = page.locator(".not-kept", { hasText: "Not kept: your prediction." });
    const download = page.waitForEvent("download");
    await sign.getByRole("button", { name: "Save it as a file" }).click();
    expect(await savedText(await download)).toContain("it feels so");
  },
);

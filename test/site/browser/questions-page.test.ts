import { answersToFile, type Given, misconceptions, today } from "@rollbook/lib";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { axeFaultsInBoth } from "./axe.js";
import { savedText, useBrowser } from "./browser.js";
import { goToHash } from "./go-to-hash.js";

const { open, fileUrl } = useBrowser();
const parts = ["before", "one", "review", "after", "class", "file"] as const;

const openPart = (part: string, options = {}) => open(`${fileUrl("questions")}#${part}`, options);

/** Answers the question that is open in a part, with a letter and a confidence by their number. */
async function answer(page: Page, part: string, letter: number, sure = 1): Promise<void> {
  const form = page.locator(`#${part} form.answering`);
  await form.locator("fieldset:not(.inline) input").nth(letter).check();
  await form.locator(".inline input").nth(sure).check();
  await form.locator("button").click();
}

const given = (changes: Partial<Given>): Given => ({
  ...{ asked: "ballast-is-free", form: "first", occasion: "single", day: today(), confidence: 1 },
  ...changes,
});

/** Brings answers in the way a reader does: from a file. */
async function bring(page: Page, answers: readonly Given[]): Promise<void> {
  await page
    .locator("#file input[type=file]")
    .first()
    .setInputFiles({
      name: "answers.json",
      mimeType: "application/json",
      buffer: Buffer.from(answersToFile(answers)),
    });
  await page.getByText(`${answers.length} answers added.`).waitFor();
}

describe.each(parts)("part %s of the questions", (part) => {
  it("passes axe in light and dark, and fits a phone of 320 px", async () => {
    const { page, errors } = await openPart(part, { bypassCSP: true });
    expect(await page.locator("main > section:visible").count()).toBe(1);
    expect(errors).toEqual([]);
    expect(await axeFaultsInBoth(page)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 740 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(320);
  });
});

describe("one question", () => {
  it("explains an answer by its own reason, the right one and a figure that shows it", async () => {
    const { page } = await openPart("one?question=bar-helps-own-end");
    await answer(page, "one", 0, 2);
    const outcome = page.locator("#one .outcome");
    expect(await outcome.textContent()).toContain("You said A, certain. Not so. You were certain");
    expect(await outcome.textContent()).toContain("The model’s answer is C.");
    expect(await outcome.evaluate((place) => place === document.activeElement)).toBe(true);
    const seen = await outcome
      .getByRole("link", { name: "See it move" })
      .first()
      .getAttribute("href");
    expect(seen).toBe("03-distribution-between-axles.html#axle-limits?rearBar=most");
    expect(await outcome.locator("details").getAttribute("open")).toBeNull();
  });

  it("cannot be answered without a letter and a confidence", async () => {
    const { page } = await openPart("one");
    await page.locator("#one form.answering button").click();
    expect(await page.locator("#one .outcome").count()).toBe(0);
  });

  it("leads on to its twin, which a link can open too", async () => {
    const { page } = await openPart("one?question=ballast-is-free");
    const first = await page.locator("#one legend.ask").textContent();
    await answer(page, "one", 0);
    await page.getByRole("button", { name: /twin/ }).click();
    const twin = await page.locator("#one legend.ask").textContent();
    expect(twin).not.toBe(first);
    await goToHash(page, "#one?question=ballast-is-free&form=twin");
    expect(await page.locator("#one legend.ask").textContent()).toBe(twin);
  });

  it("is asked by keyboard alone", async () => {
    const { page } = await openPart("one");
    await page.locator("#one input").first().focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await page.locator("#one .outcome").textContent()).toContain("You said B");
  });

  it("is about the reader's own car, or says why it is not", async () => {
    const { page } = await openPart("one");
    const { demoCar } = await import("@rollbook/lib");
    const { bar: _front, ...front } = demoCar.front;
    const { bar: _rear, ...rear } = demoCar.rear;
    const own = { ...demoCar, name: "Own <b>car</b>", front, rear };
    await page.evaluate((car) => {
      localStorage.setItem("rollbook:cars", JSON.stringify({ cars: [car], current: car.name }));
    }, own);
    await page.reload();
    expect(await page.locator("#one .about").textContent()).toBe("About Own <b>car</b>.");
    await goToHash(page, "#one?question=stiffer-moves-more&form=twin");
    expect(await page.locator("#one .about").textContent()).toBe(
      "About Pipit, the workbook’s own car, and not Own <b>car</b>: it has no anti-roll bar to take off.",
    );
  });
});

describe("a glance at another part", () => {
  it("loses neither an answer that was chosen nor the counts of a vote", async () => {
    const { page } = await openPart("one?question=bar-helps-own-end");
    await page.locator("#one form.answering input").nth(2).check();
    await goToHash(page, "class");
    await page.locator("#class form.vote input").first().fill("7");
    await goToHash(page, "one");
    await page.locator("#one form.answering").waitFor();
    expect(await page.locator("#one form.answering input").nth(2).isChecked()).toBe(true);
    await goToHash(page, "class");
    await page.locator("#class form.vote").first().waitFor();
    expect(await page.locator("#class form.vote input").first().inputValue()).toBe("7");
  });
});

describe("the checks before and after the course", () => {
  it("ask fifteen and fifteen, explain nothing on the way, keep their place, and count the gain", async () => {
    const { page } = await openPart("before");
    for (let number = 1; number <= 15; number += 1) {
      expect(await page.locator("#before .progress").textContent()).toBe(
        `Question ${number} of 15`,
      );
      if (number === 8) await page.reload();
      await answer(page, "before", 2, 2);
      expect(await page.locator(".outcome").count()).toBe(0);
    }
    const before = await page.locator("#before .result").textContent();
    expect(before).toMatch(/^6 of 15 answered as the model does/);
    await goToHash(page, "#after");
    for (let number = 1; number <= 15; number += 1) await answer(page, "after", 2, 2);
    const after = page.locator("#after");
    expect(await after.locator(".result").textContent()).toBe(
      "4 of 15 answered as the model does.",
    );
    expect(await after.textContent()).toContain(
      "Of 15 asked both times: 6 right before the course, 4 after it.",
    );
    expect(await after.locator(".gains li").count()).toBe(15);
    expect(await after.textContent()).not.toContain("%");
    const outcomes = await after
      .locator(".gains li")
      .evaluateAll((items) => items.map((item) => (item as HTMLElement).dataset.outcome));
    expect(outcomes.filter((one) => one === "learned" || one === "known")).toHaveLength(4);
  });

  it("can be started again, which leaves all other answers", async () => {
    const { page } = await openPart("file");
    const all = misconceptions.map(({ idea }) => given({ asked: idea, occasion: "before" }));
    await bring(page, [...all, given({})]);
    page.on("dialog", (dialog) => dialog.accept());
    await goToHash(page, "#before");
    await page.getByRole("button", { name: "Start this check again" }).click();
    expect(await page.locator("#before .progress").textContent()).toBe("Question 1 of 15");
    await goToHash(page, "#file");
    expect(await page.locator("#file").textContent()).toContain("1 answer is kept");
  });
});

describe("the review", () => {
  it("asks what is due, says when it comes back, and is what the page opens with", async () => {
    const { page } = await openPart("file");
    const yesterday = today() - 1;
    await bring(page, [given({ day: yesterday }), given({ asked: "more-camber-grips" })]);
    await page.goto(fileUrl("questions"));
    await page.reload();
    expect(await page.locator("#review .progress").textContent()).toBe("1 question due today.");
    const right = 1;
    await answer(page, "review", right);
    expect(await page.locator("#review .question").textContent()).toContain(
      "It comes back in 3 days.",
    );
    await page.getByRole("button", { name: "Next question" }).click();
    expect(await page.locator("#review .result").textContent()).toBe("No question is due today.");
    expect(await page.locator("#review li").allTextContents()).toEqual([
      "1 question tomorrow",
      "1 question in 3 days",
    ]);
  });

  it("starts over with a wrong answer", async () => {
    const { page } = await openPart("file");
    const day = today();
    await bring(page, [given({ day: day - 4 }), given({ day: day - 3 })]);
    await goToHash(page, "#review");
    await answer(page, "review", 0);
    expect(await page.locator("#review .question").textContent()).toContain(
      "It comes back tomorrow.",
    );
  });
});

describe("with a class", () => {
  it("advises after two votes, and keeps the share and the letter until the answer is shown", async () => {
    const { page } = await openPart("class?question=bar-helps-own-end");
    const forms = page.locator("#class form.vote");
    const vote = async (index: number, counts: readonly number[]) => {
      const boxes = forms.nth(index).locator("input");
      for (const [box, count] of counts.entries()) await boxes.nth(box).fill(String(count));
      await forms.nth(index).locator("button").click();
      return forms.nth(index).locator("[role=status]").textContent();
    };
    expect(await vote(0, [0, 0, 0, 0])).toContain("at least one card");
    expect(await vote(0, [6, 3, 9, 2])).toContain("neighbour");
    expect(await vote(1, [2, 1, 16, 1])).toContain("ask the twin");
    expect(await page.locator("#class").textContent()).not.toContain("of 20 right");
    await page.getByRole("button", { name: "Show the answer" }).click();
    const shown = (await page.locator("#class .answer").textContent()) ?? "";
    expect(shown).toContain("The model’s answer is C. 9 of 20 right, 16 of 20 right");
    expect(shown).toContain("Cards: 6, then 2");
  });

  it("prints the question and its letters alone, in large type, without the answer", async () => {
    const { page } = await openPart("class");
    await page.getByRole("button", { name: "Show the answer" }).click();
    await page.emulateMedia({ media: "print" });
    const sheet = page.locator(".projected");
    expect(await sheet.textContent()).toContain("You fit springs half as stiff again");
    const others = page.locator("main > *, #class > *, #class > div > *").filter({ visible: true });
    const seen = await others.evaluateAll((parts) => parts.map((part) => part.className));
    expect(seen.filter((name) => name !== "")).toEqual(["projected"]);
    expect(await page.locator("main :is(h1, h2, p, select, label):visible").count()).toBe(2);
    const size = await page
      .locator(".projected")
      .evaluate((sheet) => Number.parseFloat(getComputedStyle(sheet).fontSize));
    expect(size).toBeGreaterThan(26);
  });
});

describe("answers as a file", () => {
  it("leave the device whole and come back once", async () => {
    const { page } = await openPart("file");
    await bring(page, [given({}), given({ asked: "more-camber-grips" })]);
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as a file" }).click();
    const text = await savedText(await download);
    expect(JSON.parse(text).answers).toHaveLength(2);
    const file = { name: "answers.json", mimeType: "application/json", buffer: Buffer.from(text) };
    await page.locator("#file input[type=file]").first().setInputFiles(file);
    await page.getByText("0 answers added.").waitFor();
    page.on("dialog", (dialog) => dialog.accept());
    await page.getByRole("button", { name: "Forget all answers" }).click();
    expect(await page.locator("#file").textContent()).toContain("No answers are kept");
  });

  it("are refused in a sentence where a file holds something else", async () => {
    const { page } = await openPart("file");
    const buffer = Buffer.from("<b>not answers</b>");
    const file = { name: "x.json", mimeType: "application/json", buffer };
    await page.locator("#file input[type=file]").first().setInputFiles(file);
    await page.getByText("The file does not hold answers to these questions.").waitFor();
  });

  it("of several members are counted together, without names", async () => {
    const { page } = await openPart("file");
    const before = given({ occasion: "before", idea: "weight-is-grip" });
    const after = given({ occasion: "after", form: "twin" });
    const files = ["a.json", "b.json"].map((name) => ({
      name,
      mimeType: "application/json",
      buffer: Buffer.from(answersToFile([before, after])),
    }));
    const broken = { name: "c.json", mimeType: "application/json", buffer: Buffer.from("{") };
    await page
      .locator("#file input[type=file]")
      .last()
      .setInputFiles([...files, broken]);
    await page.getByText("Mass in a corner: 0 of 2 right before, 2 of 2 after").waitFor();
    expect(await page.locator("#file .fault").textContent()).toMatch(/^c\.json: /);
  });
});

describe("the page of questions without JavaScript", () => {
  it("holds all questions about the workbook's car, their answers folded", async () => {
    const { page } = await openPart("", { javaScriptEnabled: false });
    expect(await page.locator("noscript .question").count()).toBe(15);
    expect(await page.locator("noscript details[open]").count()).toBe(0);
    expect(await page.locator("input, button, fieldset").count()).toBe(0);
  });
});

import { exampleLog, formatLog, type LogEntry, mergeLogs, readLog, standing } from "@rollbook/lib";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { codeOf } from "../../../site/hand-over/code.js";
import { entriesInCodes } from "../../../site/hand-over/entries-in-codes.js";
import { axeFaults } from "./axe.js";
import { savedText, useBrowser } from "./browser.js";
import { goTo, openExample, savedLog, sayWho, takeIn, tap } from "./workshop.js";

const { open } = useBrowser();

/** Width and height of every page of a printed sheet, points. */
async function printed(page: Page): Promise<{ sizes: string[]; pages: number }> {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  expect(pdf.startsWith("%PDF-")).toBe(true);
  const boxes = pdf.match(/\/MediaBox ?\[[^\]]*\]/g) ?? [];
  const sizes = boxes.map((box) =>
    box
      .match(/[\d.]+/g)
      ?.slice(2)
      .map(Number)
      .map(Math.round)
      .join(" × "),
  );
  return { sizes: [...new Set(sizes.map(String))], pages: boxes.length };
}

const newest = (text: string) => {
  const { log } = readLog(text);
  if (log === undefined) throw new Error("the saved log can be read");
  return log;
};

/** In the page: a camera that looks at codes, one at a time. */
function showCodes(codes: readonly { path: string; side: number }[]): void {
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [900, 700];
  const context = canvas.getContext("2d");
  const show = (index: number) => {
    const { path, side } = codes[index] ?? { path: "", side: 1 };
    if (context === null) return;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.fillStyle = "#fff";
    context.fillRect(0, 0, 900, 700);
    context.setTransform(640 / side, 0, 0, 640 / side, 120, 30);
    context.fillStyle = "#000";
    context.fill(new Path2D(path));
  };
  show(0);
  let last = 0;
  addEventListener("show", (event) => {
    last = (event as CustomEvent<number>).detail;
    show(last);
  });
  setInterval(() => show(last), 50); // a still picture gives no new frames
  navigator.mediaDevices.getUserMedia = () => Promise.resolve(canvas.captureStream(20));
}

const exampleEvent = () => {
  const [event] = standing(exampleLog, "event");
  if (event === undefined) throw new Error("the example has a day");
  return event;
};

/** What of it a room sees: a fold that is closed holds names of those who measured. */
const shown = (found: Locator) => found.filter({ visible: true });

const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);

/** Counts from now on how often a key goes down. */
const countKeys = (page: Page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    root.dataset.keys = "0";
    addEventListener("keydown", () => {
      root.dataset.keys = String(Number(root.dataset.keys) + 1);
    });
  });

const keysPressed = async (page: Page) =>
  Number(await page.locator("html").getAttribute("data-keys"));

describe("a day in the workshop", () => {
  it("goes from plan to a fresh device, and arrives there letter by letter", async () => {
    const { page, errors, foreign } = await open("workshop");

    // The example opens with one click
    await openExample(page);
    expect(await page.locator("#day-name").inputValue()).toContain("Plover Heath");
    expect(await page.locator("#steps > li").count()).toBe(6);
    expect(await page.locator("#step-1-outcome .to-do").textContent()).toContain(
      "front bar position 3 → 4",
    );
    expect(await page.locator("#step-1-outcome .shifts tbody tr").count()).toBe(4);

    expect(await page.locator("#worked-out").textContent()).toMatch(/over after 4\sh 22\smin/);
    expect(await page.locator("#step-1-seats").count()).toBe(0); // a bar moves no height

    // Each step can be edited, and what follows is worked out anew
    await page.locator("#step-1-more").click();
    await page.locator("#step-1-outcome .to-do", { hasText: "3 → 5" }).waitFor();
    await page.locator("#step-1-less").click();
    await page.locator("#step-1-outcome .to-do", { hasText: "3 → 4" }).waitFor();
    await page.locator("#step-1-note").fill("ask Dana first");
    await page.locator("#day-minutes").fill("200");
    await page.locator("#day-minutes").press("Tab");
    await page.locator("#steps .beware", { hasText: "after the day is over" }).first().waitFor();
    await page.locator("#day-minutes").fill("330");
    await page.locator("#day-minutes").press("Tab");
    await page.locator("#file-plan").click();
    await page.locator("#day-to-phones").waitFor();

    // Sheets on both papers; the key only when it is asked for
    await goTo(page, "sheets");
    await page.locator(".paper .card").first().waitFor();
    for (const kind of ["predict", "report", "letters", "handOut"])
      await page.locator(`#sheet-${kind}`).check();
    await page.locator(".letters-a-d").waitFor();
    expect(await page.locator(".secret").count()).toBe(0);
    await page.locator("#cards-sure").click(); // what the cards' changes move, and how sure that is
    await page.locator(".secret .key button", { hasText: "How sure is this?" }).first().waitFor();
    expect(await page.locator("#cards-sure").count()).toBe(0);
    await page.locator("#sheet-key").uncheck();
    const a4 = await printed(page);
    expect(a4.sizes).toEqual(["595 × 842"]); // ISO 216: 210 mm × 297 mm
    expect(a4.pages).toBeGreaterThanOrEqual(6);
    await page.locator("#paper .chip", { hasText: "Letter" }).click();
    await page.locator('.papers[data-paper="letter"]').waitFor();
    expect((await printed(page)).sizes).toEqual(["612 × 792"]); // ANSI Y14.1: 8.5 in × 11 in
    const safety = await page.locator(".card .safety").allTextContents();
    expect(safety).toHaveLength(4);
    for (const box of safety) expect(box).toMatch(/Stop and come in/);
    expect(await page.locator(".run-sheet .beware").allTextContents()).toEqual(
      Array(8).fill("First lap slowly."), // in each lane after any change, so that it tells no driver what to feel
    );

    const lanes = page.locator(".run-sheet.lanes tbody tr").first().locator("td:has(.lane-name)");
    expect(await lanes.locator("li").allTextContents()).toEqual(
      ["Ada", "Chidi", "Emil"].concat("Bela", "Dana", "Farah"), // car 1, car 2
    );
    const times = await page.locator(".run-sheet td .filled b").allTextContents();
    expect(times).toHaveLength(12); // six runs of two cars, all driven
    for (const time of times) expect(time).toMatch(/^\d\d:\d\d$/);

    // The clock, who drives, and a vote
    await goTo(page, "run");
    await page.locator("#run-later").click();
    await page.locator("#clock-toggle").click();
    expect(await page.locator("#run .clock").first().textContent()).toMatch(
      /^(4:00|3:5\d) left for: Teach$/,
    );
    await page.locator("#stage-next").click();
    expect(await page.locator(".stages [aria-current]").textContent()).toContain("Predict");
    // What is filed is not filed again: the example has this run; a plan that says otherwise asks
    await page.locator("#run-is-filed").waitFor();
    expect(await page.locator("#begin-run").count()).toBe(0);

    // A drive is counted round by round, and the day begun again can be taken back
    for (let stage = 1; stage < 3; stage++) await page.locator("#stage-next").click();
    expect(await page.locator("#run .clock").first().textContent()).toMatch(
      /^Round 1 of 3: Chidi, Dana – (8:00|7:5\d) left$/,
    );
    await page.locator("#clock-reset").click();
    expect(await page.locator("#run h3").first().textContent()).toMatch(/^Run 1 of 6/);
    await page.locator("#undo").click();
    expect(await page.locator(".stages [aria-current]").textContent()).toContain("Drive");
    expect(await page.locator("#run h3").first().textContent()).toMatch(/^Run 2 of 6/);
    await page.locator("#run-later").click();
    await page.locator("#poll-fold > summary").click();
    await page.locator("#poll-text").fill("Which end does it help?");
    await page.locator("#poll-1-a").fill("3");
    await page.locator("#poll-1-b").fill("3");
    await page.locator("#poll-count-1").click();
    expect(await page.locator(".told").first().textContent()).toMatch(/^Say first which answer/);
    await page.locator("#poll-right .chip", { hasText: "A" }).click();
    await page.locator("#poll-count-1").click();
    expect(await page.locator(".told").first().textContent()).toContain("convince a neighbour");
    await page.locator("#poll-2-a").fill("5");
    await page.locator("#poll-2-b").fill("1");
    await page.locator("#poll-count-2").click();
    expect(await page.locator(".told").nth(1).textContent()).toMatch(
      /from 50\s% to 83\s%; cards do not say/, // 3 and 5 of 6: of persons totals say nothing
    );

    // A report that says too little is asked for the rest
    await sayWho(page, "Farah", 6);
    await tap(page, { corner: "Barn", balance: "+2" });
    await page.locator("#file-report").click();
    expect(await page.locator("p.notice").textContent()).toContain("When");
    await tap(page, { phase: "turn-in", input: "steering", often: "every lap" });
    await page.locator("#file-report").click();
    await page.locator(".filed li", { hasText: "Barn, turn-in: +2" }).waitFor();

    // Felt beside predicted, two changes marked, then one change to try
    await goTo(page, "talk");
    await page.locator("#talk-3 > summary").click();
    await page.locator("#talk-3 .confounded").first().waitFor();
    await page.locator("#talk-run .chip", { hasText: /^2$/ }).click();
    const group = page.locator("#talk-3 tbody tr", { hasText: "Crest" });
    expect(await group.textContent()).toMatch(
      /braking in\+1.0 half within ±\s0.0.*m\/s²6as predicted: 6/,
    );
    for (const name of ["Ada", "Bela", "Chidi", "Dana", "Emil", "Farah"])
      expect(await shown(page.locator("#talk-3").getByText(name)).count()).toBe(0);
    await page.locator("#talk-run .chip", { hasText: /^4$/ }).click();
    await page.locator("#talk-4 > summary").click();
    await page.locator("#work-out").click();
    await page.locator(".proposals > li").first().waitFor();
    expect(await page.locator(".summary").textContent()).toMatch(/^Next, and nothing else with it/);
    expect(await page.locator("#not-proposed").count()).toBe(1);
    const inTurn = page.locator(".proposals > li").first().locator(".change-in-turn");
    expect(await inTurn.locator(".panel").count()).toBe(2);
    expect(await inTurn.locator("figcaption").textContent()).toMatch(
      /(The outer front tyre goes from \d+\sN to \d+\sN|No load moves: the outer tyres carry \d+\sN)/,
    );
    await page.locator("#to-plan-0").click();

    // The log has it all; a fresh device takes it in and saves the same letters
    const saved = await savedLog(page);
    const log = newest(saved);
    expect(log.entries.length).toBeGreaterThan(exampleLog.entries.length + 3);
    expect(mergeLogs(log, exampleLog)).toEqual(log);
    const words = standing(log, "report").map(({ report }) => report.corner);
    expect(words.filter((corner) => corner === "Barn")).toHaveLength(1);
    const fresh = await open("workshop");
    await takeIn(fresh.page, "day.json", saved);
    expect(await savedLog(fresh.page)).toBe(saved);
    await fresh.page.reload();
    expect(await savedLog(fresh.page)).toBe(saved);
    expect([...errors, ...fresh.errors]).toEqual([]);
    expect([...foreign, ...fresh.foreign]).toEqual([]);
  });

  it("goes by the car as it stands: a change that was skipped is on no card, and rain is one tap", async () => {
    const { page, errors } = await open("workshop");
    await page.locator("#new-day").click();
    for (const step of [0, 1, 2]) {
      await page.locator("#step-add").click();
      if (step === 1) await page.locator("#step-1-kind").selectOption("change");
    }
    await page.locator("#file-plan").click();
    await goTo(page, "sheets");
    await page.locator(".card h4", { hasText: "Before run 3" }).waitFor();

    await goTo(page, "run");
    await page.locator("#begin-run").click();
    await page.locator("#run-later").click();
    await page.locator("#change-skipped").click();
    await page.locator("#run-is-filed").waitFor();
    await goTo(page, "sheets");
    await page.locator("#papers", { hasNotText: "Before run" }).waitFor();

    await goTo(page, "run");
    await page.locator("#rain-now").click();
    await page.locator("#dry-again").waitFor();
    await page.locator("#happenings > summary").click();
    expect(await page.locator("#happenings .filed li").allTextContents()).toEqual([
      expect.stringContaining("change skipped"),
      expect.stringContaining("the road is now wet"),
    ]);

    // Slips are typed by keyboard alone: nine keys a report, and the next row is at hand
    await goTo(page, "run");
    await page.locator("#slip-grid > summary").focus();
    await page.keyboard.press("Enter");
    await page.locator("#slip-0-corner").waitFor();
    for (const _ of ["the table", "its first answer"]) await page.keyboard.press("Tab");
    expect(await focused(page)).toBe("slip-0-corner");
    await countKeys(page);
    for (const keys of ["c", "m", "s", "r2"]) {
      await page.keyboard.type(keys);
      await page.keyboard.press(keys === "r2" ? "Enter" : "Tab");
    }
    await page.locator("p.notice", { hasText: "Corner 1, middle: −2. Filed." }).waitFor();
    expect(await keysPressed(page)).toBe(9);
    await expect.poll(() => focused(page)).toBe("slip-0-corner"); // one driver: the same row, empty
    expect(await page.locator("#slip-0-corner").inputValue()).toBe("");
    await page.locator("#reports-in", { hasText: "1 of 1" }).waitFor();

    // One file holds the day: elsewhere it goes on where it stood
    await goTo(page, "log");
    const download = page.waitForEvent("download");
    await page.locator("#save-day").click();
    const text = await savedText(await download);
    const { page: elsewhere } = await open("workshop");
    await takeIn(elsewhere, "day.json", text);
    await elsewhere.locator("#taken-in", { hasText: "goes on where it stood" }).waitFor();
    await goTo(elsewhere, "run");
    await elsewhere.locator("#run h3", { hasText: "Run 2 of 3" }).waitFor();
    await elsewhere.locator("#dry-again").waitFor();

    // Both can be taken back: then the run is filed as the card says
    await goTo(page, "run");
    await page.locator("#take-back-0").click();
    await page.locator("#run-later").click();
    await page.locator("#run .to-do", { hasText: /→/ }).waitFor();
    await page.locator("#take-back-0").click();
    await page.locator("#rain-now").waitFor();
    expect(errors).toEqual([]);
  });

  it("proposes a sequence for another day, and takes it back", async () => {
    const { page } = await open("workshop");
    await page.locator("#new-day").click();
    await page.locator("#step-propose").click();
    await page.locator("#undo").waitFor();
    const runs = await page.locator("#steps > li").count();
    expect(runs).toBeGreaterThanOrEqual(5);
    expect(await page.locator("#step-0-kind").inputValue()).toBe("baseline");
    const kinds = page.locator("#steps select[id$=kind]");
    const chosen = await kinds.evaluateAll((all) =>
      all.map((one) => (one as HTMLSelectElement).value),
    );
    expect(chosen).toContain("return");
    expect(chosen).toContain("no change");
    await page.locator("#undo").click();
    await expect.poll(() => page.locator("#steps > li").count()).toBe(0);
  });

  it("compares what drivers of one's own day felt, on other phones too", async () => {
    const { page, errors } = await open("workshop");
    await page.locator("#new-day").click();
    await page.locator("#day-drivers").fill("Gita\nHaru\nIna");
    await page.locator("#day-drivers").press("Tab");
    await page.locator("#step-propose").click();
    await page.locator("#undo").waitFor();
    await page.locator("#step-1-outcome .to-do").waitFor();
    await goTo(page, "run");
    await page.locator("#begin-run").click();
    await page.locator("p.notice", { hasText: "3 drivers" }).waitFor();
    await page.locator("#run-later").click();
    await page.locator("#begin-run").click();
    await page.locator("#run-is-filed").waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("run-is-filed");
    expect(await page.locator("#begin-run").count()).toBe(0);

    const report = async (on: Page, driver: string, run: number, balance: string) => {
      await sayWho(on, driver, run);
      await tap(on, { phase: "middle", input: "steady", balance });
      expect(await on.locator("#ask-against").count()).toBe(run > 1 ? 1 : 0);
      const typed = on.locator("#ask-corner-text");
      if (await typed.isVisible()) await typed.fill("Corner 1");
      else await tap(on, { corner: "Corner 1" });
      await on.locator("#file-report").click();
      await on.locator(".filed li").waitFor();
    };
    for (const driver of ["Gita", "Haru"]) {
      await report(page, driver, 1, "0");
      await report(page, driver, 2, "−1");
    }
    // Ina has the workbook on a phone of her own, without this day
    const phone = await open("workshop");
    await report(phone.page, "ina", 1, "0");
    await report(phone.page, "ina", 2, "−2");
    await takeIn(page, "ina.json", await savedLog(phone.page));

    await goTo(page, "talk");
    await page.locator("#talk-run .chip", { hasText: /^2$/ }).click();
    await page.locator("#talk-3 > summary").click();
    const row = page.locator("#talk-3 .table").first().locator("tbody tr");
    expect(await row.allTextContents()).toHaveLength(1);
    expect(await row.textContent()).toMatch(/^Corner 1middle−1.0/);
    expect(errors).toEqual([]);
  });

  it("shows felt above predicted on a phone, place by place, with nothing off the screen", async () => {
    const phone = { viewport: { width: 360, height: 740 }, bypassCSP: true };
    const { page } = await open("workshop", phone);
    await openExample(page);
    await goTo(page, "talk");
    await page.locator("#talk-run .chip", { hasText: /^2$/ }).click();
    for (const part of ["#talk-1", "#talk-3"]) {
      await page.locator(`${part} > summary`).click();
      const wide = await page
        .locator(`${part} .table`)
        .evaluateAll((boxes) => Math.max(...boxes.map((box) => box.scrollWidth - box.clientWidth)));
      expect(wide).toBe(0);
    }
    const dip = page.locator("#talk-3").getByRole("row", { name: /^Crest/ });
    await dip.getByRole("rowheader", { name: "Crest" }).waitFor();
    const bars = await dip
      .locator(".shift-bar")
      .evaluateAll((all) => all.map((bar) => bar.getBoundingClientRect()));
    const [felt, predicted] = bars;
    expect(bars).toHaveLength(2);
    expect(felt?.x).toBe(predicted?.x);
    expect(felt?.bottom).toBeLessThanOrEqual(predicted?.top ?? 0);
    const columns = page.locator("#talk-3 .table").first().getByRole("columnheader");
    expect(await columns.allTextContents()).toEqual([
      "Where",
      "When",
      "Felt, points",
      "Predicted",
      "Drivers",
      "Side by side",
    ]);
    expect(await axeFaults(page)).toEqual([]);
  });

  it("takes a table of reports in, and refuses what is none with a sentence", async () => {
    const { page } = await open("workshop");
    await takeIn(page, "day.json", formatLog(exampleLog));
    await takeIn(
      page,
      "more.csv",
      "run;corner;phase;input;balance\nphone1-1;Crest;middle;steady;-1\n",
    );
    await page.locator("#taken-in", { hasText: "one new entry" }).waitFor();
    for (const [text, why] of [
      ["", "no column run"],
      ["{", "not JSON"],
      ['{"kind":"rollbook log","version":9,"entries":[]}', "version is 9"],
      ['{"kind":"rollbook log","version":1,"entries":[]}', "balance the other way round"],
    ] as const) {
      await takeIn(page, "broken", text);
      await page.locator("#taken-in", { hasText: why }).waitFor();
    }
    const broken = {
      kind: "rollbook log",
      version: 2,
      entries: [
        { kind: "note", id: "zz-1", at: "2031-05-10T09:00:00.000Z", words: "sound" },
        { kind: "note" },
      ],
    };
    await takeIn(page, "half.json", JSON.stringify(broken));
    await page.locator("#take-sound").click();
    await page.locator("#taken-in", { hasText: "one new entry" }).waitFor();
  });

  it("reads one code after the other through the camera, in any order, and says what each was", async () => {
    const { page, errors, foreign } = await open("workshop");
    await openExample(page);
    await goTo(page, "log");
    const head = { at: "2031-05-10T18:00:00.000Z", author: "Ada" };
    const run = { ...head, kind: "run", id: "zzzzaaaa-1", setUp: "run-2", driver: "Ada" } as const;
    const report = { corner: "Pit exit", phase: "middle", balance: 1 } as const;
    const entries: LogEntry[] = [
      { ...run, runNumber: 2 },
      { ...head, kind: "report", id: "zzzzaaaa-2", run: run.id, report },
    ];
    const [whole = ""] = (await entriesInCodes(entries, exampleEvent())).packed;
    const own = (await entriesInCodes(entries, exampleEvent(), whole.length - 1)).packed;
    expect(own).toHaveLength(2); // each code holds one of them
    const foreignDay = { ...exampleEvent(), id: "other-1", name: "Another club" };
    const other = (await entriesInCodes([{ ...run, id: "yyyyaaaa-1" }], foreignDay)).packed;
    const links = [...own.toReversed(), ...other, "not-of-the-workbook"].map((letters) =>
      letters.startsWith("not") ? letters : `http://10.0.0.2/workshop.html#log?take=${letters}`,
    );
    await page.evaluate(showCodes, links.map(codeOf));
    await page.locator("#scan-codes").click();
    const said = page.locator("#scanned");
    await said.filter({ hasText: "new." }).waitFor();
    const show = (index: number) =>
      page.evaluate((at) => dispatchEvent(new CustomEvent("show", { detail: at })), index);
    await show(1);
    await page.locator("#scanned", { hasText: "Ada, run 2: one entry, new." }).waitFor();
    await show(2);
    await page.locator("#scanned", { hasText: "Another club" }).waitFor();
    await show(3);
    await page.locator("#scanned", { hasText: "no code of the workbook" }).waitFor();
    await show(0);
    await page.locator("#scanned", { hasText: "Ada, run 2: already here." }).waitFor();
    await page.locator("#scan-codes").click();
    const { log } = readLog(await savedLog(page));
    const ids = log?.entries.map(({ id }) => id) ?? [];
    expect(ids).toEqual(expect.arrayContaining(["zzzzaaaa-1", "zzzzaaaa-2"]));
    expect(ids).not.toContain("yyyyaaaa-1");
    expect([errors, foreign]).toEqual([[], []]);
  });

  it("takes laps of a circle down on a phone, and tells them beside what was felt and predicted, in Talk and on the sheet of the day", async () => {
    const { page, errors } = await open("workshop", {
      viewport: { width: 360, height: 740 },
      silentWorkers: true,
    });
    await openExample(page);
    await goTo(page, "talk");
    await page.locator("#talk-run .chip", { hasText: "4" }).click();
    await page.locator("#talk-3 > summary").click();
    const table = page.locator("#talk-3 .table", { hasText: "Measured" });
    await table.locator("tr", { hasText: "Circle" }).waitFor();
    const circle = () => table.locator("tr", { hasText: "Circle" }).textContent();
    const before = (await circle()) ?? "";
    expect(before).toContain("not measured");
    await page.locator("#measured-write > summary").click();
    await page.selectOption("#measured-driver", "Ada");
    expect(await page.locator("#measured-radius").getAttribute("inputmode")).toBe("decimal");
    await page.locator("#measured-laps").fill("9.05 1 9.04");
    await page.locator("#measured-keep").click();
    await page.locator("#measured-write .fault", { hasText: "“1” is no lap" }).waitFor();
    await page.locator("#measured-laps").fill("9.05 9.01 9.04");
    await page.locator("#measured-radius").fill("20");
    await page.locator("#measured-keep").click();
    await page.locator("#measured-write .filed", { hasText: "9.05 9.01 9.04" }).waitFor();
    expect(await circle()).not.toBe(before);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await goTo(page, "sheets");
    await page.locator("#sheet-summary").check();
    await page.locator(".paper h4", { hasText: "Run 4: rear bar position" }).waitFor();
    expect(errors).toEqual([]);
    const { log } = readLog(await savedLog(page));
    expect(log && standing(log, "measurement")).toHaveLength(13);
  });

  it("puts the sheets on the wall one by one, never the key or what drivers take home; paper holds them whole", async () => {
    const { page } = await open("workshop");
    await openExample(page);
    await goTo(page, "sheets");
    for (const kind of ["run", "cards"]) await page.locator(`#sheet-${kind}`).uncheck();
    await page.locator("#sheet-handOut").check();
    await page.locator("#sheet-key").check();
    await page.locator("#sheet-home").check();
    await page.locator(".secret").waitFor();
    await page.locator(".take-home").first().waitFor();
    await page.locator("#open-sheet-wall").click();
    const wall = page.locator("#sheets .wall");
    expect(await wall.isVisible()).toBe(true);
    for (let turns = 0; turns < 3; turns++) {
      expect(await wall.textContent()).toContain("How to report");
      expect(await wall.textContent()).not.toMatch(/Answer key|What it showed/);
      await page.locator("#wall-next").click();
    }
    await page.locator("#leave-open-sheet-wall").click();
    expect(await wall.isVisible()).toBe(false);
    await goTo(page, "plan");
    await goTo(page, "sheets");
    expect(await page.locator("#sheet-key").isChecked()).toBe(false);

    await page.locator("#sheet-handOut").uncheck();
    await page.locator(".take-home").first().waitFor();
    expect((await printed(page)).pages).toBe(6); // a page for each driver
    await page.locator("#sheet-home").uncheck();
    await page.locator("#sheet-cards").check();
    await page.locator(".card").first().waitFor();
    expect((await printed(page)).pages).toBe(2); // four cards, two a page
    await page.locator("#sheet-run").check();
    const ada = page.locator(".by-driver tbody tr").first();
    expect((await ada.textContent())?.replaceAll("\u00a0", " ")).toContain("car 1, round 1");
  });
});

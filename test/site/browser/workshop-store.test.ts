import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  type EventEntry,
  exampleLog,
  formatLog,
  type LogEntry,
  readLog,
  standing,
} from "@rollbook/lib";
import { chromium, type Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { quickChromiumPath } from "../../../site/commands/needs.js";
import { useBrowser } from "./browser.js";
import { goTo, kept, openExample, savedLog, sayWho, takeIn, tap } from "./workshop.js";

const { open, fileUrl } = useBrowser();

async function fileReport(page: Page): Promise<void> {
  await sayWho(page, "Gita", 2);
  await tap(page, { phase: "middle", input: "steady", balance: "-1".replace("-", "−") });
  const typed = page.locator("#ask-corner-text");
  if (await typed.isVisible()) await typed.fill("Hairpin");
  else await tap(page, { corner: "Crest" });
  await page.locator("#file-report").click();
  await page.locator(".filed li").first().waitFor();
}

const entriesIn = (text: string): readonly LogEntry[] => readLog(text).log?.entries ?? [];

/** The entries of the example alone: its day is not opened, and so not worked out. */
const takeExampleIn = (page: Page) => takeIn(page, "day.json", formatLog(exampleLog));

/** Makes one of the device's two stores refuse, or both. */
function refuse(page: Page, stores: readonly ("first" | "second")[]): Promise<void> {
  return page.evaluate((which) => {
    if (which.includes("first"))
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    if (which.includes("second"))
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
  }, stores);
}

describe("a report from a place that no plan knows", () => {
  it("holds what its chips show, when the corner's name is mended last", async () => {
    const { page } = await open("workshop");
    await sayWho(page, "Gita", 1);
    await page.locator("#ask-corner-text").fill("Hairpn");
    await tap(page, { speed: "slow", grade: "uphill" });
    await page.locator("#ask-corner-text").fill("Hairpin");
    await tap(page, { phase: "middle", input: "steady", balance: "+1", often: "every lap" });
    await page.locator("#file-report").click();
    await page.locator(".filed li", { hasText: "Hairpin" }).waitFor();
    const { log } = readLog(await savedLog(page));
    const [entry] = log === undefined ? [] : standing(log, "report");
    expect(entry?.report).toMatchObject({ corner: "Hairpin", speedClass: "slow", grade: "uphill" });
  });
});

describe("what the device keeps", () => {
  it("outlives a browser that is killed right after it said so", async () => {
    const profile = mkdtempSync(join(tmpdir(), "rollbook-"));
    const launch = () =>
      chromium.launchPersistentContext(profile, {
        executablePath: quickChromiumPath() ?? "chromium",
        args: ["--no-sandbox"],
      });
    try {
      const before = await launch();
      const page = await before.newPage();
      await page.goto(fileUrl("workshop"));
      await fileReport(page);
      await kept(page);
      const session = await before.newCDPSession(page);
      const gone = new Promise((resolve) => before.once("close", resolve));
      session.send("Browser.crash").catch(() => {}); // it does not live to answer
      await gone;
      const after = await launch();
      const again = await after.newPage();
      await again.goto(fileUrl("workshop"));
      await sayWho(again, "Gita", 2);
      expect(await again.locator(".filed li").allTextContents()).toHaveLength(1);
      await after.close();
    } finally {
      rmSync(profile, { recursive: true, force: true });
    }
  });

  it("is there after one store was full or closed, whichever it was", async () => {
    for (const store of ["first", "second"] as const) {
      const { page, errors } = await open("workshop");
      await refuse(page, [store]);
      await openExample(page);
      await fileReport(page);
      await kept(page);
      await page.waitForFunction(() => document.documentElement.dataset.kept === "yes");
      const saved = await savedLog(page);
      await page.reload();
      expect(await savedLog(page)).toBe(saved);
      expect(errors).toEqual([]);
    }
  });

  it("is told in one sentence where both refuse, and held for as long as the page is open", async () => {
    const { page, errors } = await open("workshop");
    await openExample(page);
    await kept(page);
    const before = await savedLog(page);
    await refuse(page, ["first", "second"]);
    await fileReport(page);
    await page.locator("p.notice", { hasText: "This device refuses to keep" }).waitFor();
    expect(entriesIn(await savedLog(page)).length).toBe(entriesIn(before).length + 2);

    // What was pasted is not said to be taken in, and stays where it is
    const note = { kind: "note", id: "zz-1", at: "2031-05-10T09:00:00.000Z", words: "sound" };
    const text = JSON.stringify({ kind: "rollbook log", version: 2, entries: [note] });
    await goTo(page, "log");
    await page.locator("#pasted").fill(text);
    await page.locator("#take-pasted").click();
    await page.locator("#taken-in .beware", { hasText: "did not keep all of it" }).waitFor();
    expect(await page.locator("#pasted").inputValue()).toBe(text);
    await page.reload();
    expect(await savedLog(page)).toBe(before);
    expect(errors).toEqual([]);
  });

  it("is mended from the second copy where the first is broken, and the other way round", async () => {
    const { page } = await open("workshop");
    await takeExampleIn(page);
    await kept(page);
    const saved = await savedLog(page);
    await page.evaluate(() => {
      const names = Object.keys(localStorage).filter((name) => name.startsWith("rollbook:log/"));
      names.forEach((name, i) => {
        if (i % 3 === 0) localStorage.setItem(name, '{"kind":"run","id');
        if (i % 3 === 1) localStorage.removeItem(name);
      });
    });
    await page.reload();
    expect(await savedLog(page)).toBe(saved);
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          const asked = indexedDB.open("rollbook");
          asked.onsuccess = () => {
            const work = asked.result.transaction("kept", "readwrite");
            work.objectStore("kept").clear();
            work.oncomplete = resolve;
          };
        }),
    );
    await page.reload();
    expect(await savedLog(page)).toBe(saved);
  });

  it("tells of an entry that is broken in both copies, keeps its text, and loses no other", async () => {
    const { page } = await open("workshop");
    await takeExampleIn(page);
    await kept(page);
    const all = entriesIn(await savedLog(page));
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          localStorage.setItem("rollbook:log/desk-11", "{ broken");
          const asked = indexedDB.open("rollbook");
          asked.onsuccess = () => {
            const work = asked.result.transaction("kept", "readwrite");
            work.objectStore("kept").put("{ broken too", "log/desk-11");
            work.oncomplete = resolve;
          };
        }),
    );
    await page.reload();
    expect(entriesIn(await savedLog(page))).toEqual(all.filter(({ id }) => id !== "desk-11"));
    await page.locator("#log .beware", { hasText: "Nothing was deleted" }).waitFor();
    expect(await page.evaluate(() => localStorage.getItem("rollbook:log/desk-11"))).toBe(
      "{ broken",
    );
  });

  it("keeps what two open pages write at once", async () => {
    const { page } = await open("workshop");
    const other = await page.context().newPage();
    await other.goto(page.url());
    await page.bringToFront();
    await fileReport(page);
    await other.bringToFront();
    await fileReport(other);
    await kept(other);
    await page.bringToFront();
    await page.reload();
    const reports = entriesIn(await savedLog(page)).filter(({ kind }) => kind === "report");
    expect(reports).toHaveLength(2);
  });

  it("brings together what two open pages do to one plan, and shows it in both at once", async () => {
    const { page } = await open("workshop");
    await openExample(page);
    await kept(page);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await goTo(other, "plan");
    await other.locator("#step-5-outcome .when").waitFor();
    await other.locator("#day-name").fill("Sunday");
    await page.locator("#step-1-note").fill("ask Dana");
    for (const one of [page, other]) {
      await expect.poll(() => one.locator("#day-name").inputValue()).toBe("Sunday");
      await expect.poll(() => one.locator("#step-1-note").inputValue()).toBe("ask Dana");
    }
    await page.reload();
    await page.locator("#step-5-outcome .when").waitFor();
    expect(await page.locator("#day-name").inputValue()).toBe("Sunday");
    expect(await page.locator("#step-1-note").inputValue()).toBe("ask Dana");
  });

  it("writes a note durably once for many letters, and at once when the page is left", async () => {
    const { page } = await open("workshop");
    await goTo(page, "log");
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      Object.assign(globalThis, { puts: 0 });
      IDBObjectStore.prototype.put = function (...given) {
        Object.assign(globalThis, { puts: (globalThis as unknown as { puts: number }).puts + 1 });
        return put.apply(this, given);
      };
    });
    const puts = () => page.evaluate(() => (globalThis as unknown as { puts: number }).puts);
    await page.evaluate(() => {
      const field = document.querySelector<HTMLTextAreaElement>("#log-note");
      for (let letters = 1; field && letters <= 40; letters++) {
        field.value = "x".repeat(letters);
        field.dispatchEvent(new Event("input", { bubbles: true }));
      }
      dispatchEvent(new Event("pagehide"));
    });
    await expect.poll(puts).toBe(1);
  });

  it("keeps a report that was begun, and a plan that was not filed", async () => {
    const { page } = await open("workshop");
    await openExample(page);
    await page.locator("#day-name").fill("Half planned");
    await page.locator("#day-name").press("Tab");
    await sayWho(page, "Emil", 3);
    await tap(page, { corner: "Barn", balance: "+3" });
    await page.reload();
    await page.locator("#ask-corner").waitFor();
    expect(
      await page.locator("#ask-corner .chip", { hasText: "Barn" }).locator("input").isChecked(),
    ).toBe(true);
    await goTo(page, "plan");
    expect(await page.locator("#day-name").inputValue()).toBe("Half planned");
  });

  it("keeps what is half typed in the plan, through a glance at another tab and a reload", async () => {
    const { page } = await open("workshop");
    await openExample(page);
    await page.locator("#day-drivers").press("ControlOrMeta+End");
    await page.locator("#day-drivers").pressSequentially("\nAda"); // who stands there already
    await page.locator("#step-1-note").pressSequentially("ask Da");
    const holds = async (note: string) => {
      const drivers = await page.locator("#day-drivers").inputValue();
      expect(drivers).toMatch(/^Ada\nBela.*\nFarah\nAda$/s);
      expect(await page.locator("#day-drivers-fault").textContent()).toContain("Ada stands twice");
      expect(await page.locator("#step-1-note").inputValue()).toBe(note);
    };
    await goTo(page, "sheets");
    await page.locator(".run-sheet").waitFor();
    const sheets = await page.locator("#papers").textContent();
    expect(sheets).toContain("ask Da");
    expect(sheets).toContain("6 drivers"); // no half of a seventh
    await goTo(page, "plan");
    await holds("ask Da");
    await page.locator("#step-1-note").press("End");
    await page.locator("#step-1-note").pressSequentially("na"); // and nobody leaves the field
    await page.reload(); // where the address says Plan
    await page.locator("#step-1-outcome .to-do").waitFor();
    await holds("ask Dana");
  });

  it("is forgotten only after a second yes, and then altogether", async () => {
    const { page } = await open("workshop");
    await openExample(page);
    await goTo(page, "log");
    await page.locator("#forget").click();
    await page.locator("#forget-sure").click();
    await page.locator("#log > p", { hasText: "The log is empty" }).waitFor();
    await page.reload();
    await page.locator("#log > p", { hasText: "The log is empty" }).waitFor();
  });
});

describe("text from elsewhere", () => {
  const evil = `<img src=x onerror="hacked=1"><script>hacked=1</script>"'&`;

  /** The example with a hostile text wherever a name or a word may stand. */
  function hostile(): readonly LogEntry[] {
    const text = JSON.stringify(exampleLog.entries);
    const json = JSON.stringify(evil).slice(1, -1);
    const names = [
      "Dana",
      "Long Left",
      "Plover Heath",
      "Pipit",
      "As measured.",
      "Washes out from the middle on.",
    ];
    return JSON.parse(
      names.reduce((all, name) => all.replaceAll(name, `${json}${name.length}`), text),
    );
  }

  it("is shown as text in every view and on every sheet", async () => {
    const { page, errors } = await open("workshop");
    await takeIn(page, `${evil.slice(0, 20)}.json`, formatLog({ entries: hostile() }));
    const days = hostile().filter((entry): entry is EventEntry => entry.kind === "event");
    expect(days[0]?.venue.name).toContain("<img");
    await goTo(page, "plan");
    await page.locator("#other-day").selectOption({ index: 1 });
    await page.locator("#step-5-outcome .when").waitFor();
    await goTo(page, "sheets");
    await page.locator(".card .part-pictures .panel").first().waitFor();
    expect(await page.locator(".card .part-pictures [data-part=bar]").count()).toBeGreaterThan(0);
    for (const kind of ["predict", "report", "letters", "handOut", "key"])
      await page.locator(`#sheet-${kind}`).check();
    await page.locator(".secret").waitFor();
    await goTo(page, "run");
    await sayWho(page, evil, 2);
    await goTo(page, "talk");
    for (const part of [1, 2, 3]) await page.locator(`#talk-${part} > summary`).click();
    await page.locator("#talk-3 table").first().waitFor();
    await goTo(page, "log");
    await page.locator("#log-reports > summary").click();
    expect(await page.locator("#workshop").locator("img, script, iframe").count()).toBe(0);
    expect(await page.evaluate(() => "hacked" in globalThis)).toBe(false);
    expect(await page.locator("#talk-1").textContent()).toContain("<img src=x");
    expect(errors).toEqual([]);
  });

  it("comes by link only after it was asked about", async () => {
    const { page: phone } = await open("workshop");
    await fileReport(phone);
    await phone.locator("#show-codes").click();
    const address = await phone.evaluate(async () => {
      localStorage.setItem(
        "rollbook:course-address",
        JSON.stringify("https://club.example/rollbook/"),
      );
      return location.href;
    });
    await phone.reload();
    await phone.locator("#show-codes").click();
    await phone.locator(".code-to-take svg").waitFor();
    const own = await savedLog(phone);
    const { packed } = await (
      await import("../../../site/hand-over/entries-in-codes.js")
    ).entriesInCodes(entriesIn(own));
    const { page } = await open(`${address.replace(/[#?].*$/, "")}#log?take=${packed[0]}`);
    await page.locator(".offer").waitFor();
    expect(await page.evaluate(() => location.hash)).toBe("#log");
    expect(entriesIn(await savedLog(page))).toEqual([]);
    await page.locator("#take-offer").click();
    expect(await savedLog(page)).toBe(own);
    const broken = await open(`${address.replace(/[#?].*$/, "")}#log?take=zAAAA`);
    await broken.page.locator(".beware", { hasText: "cannot be read" }).waitFor();
  });
});

describe("the report form on a phone", () => {
  it("is filled by a thumb: large targets, twelve taps, nothing of what others said", async () => {
    const { page } = await open("workshop", {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
    });
    await openExample(page);
    await sayWho(page, "Dana", 4);
    const chips = await page.locator("#report .chip").all();
    for (const chip of chips) {
      const { height = 0, width = 0 } = (await chip.boundingBox()) ?? {};
      expect(height).toBeGreaterThanOrEqual(44);
      expect(width).toBeGreaterThanOrEqual(40);
    }
    const answers = {
      corner: "Crest",
      phase: "turn-in",
      input: "lifting off",
      balance: "+1",
      often: "most laps",
      against: "better",
      sure: "certain",
    };
    await tap(page, answers);
    await page.locator("#file-report").tap();
    await page.locator(".filed li", { hasText: "Crest, turn-in: +1" }).waitFor();
    expect(Object.keys(answers).length + 1).toBeLessThanOrEqual(12);
    const seen = await page.locator("#report").textContent();
    expect(seen).not.toContain("Too much: I had to let the brake go."); // what Farah said of this run
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });
});

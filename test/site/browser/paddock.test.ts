import { mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import {
  driverRuns,
  type LogEntry,
  mergeLogs,
  onOtherRoad,
  readEntry,
  setUpOfRun,
  standing,
} from "@rollbook/lib";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { inRoot } from "../../../site/build/paths.js";
import { type Started, startPaddock } from "../../../site/paddock/start.js";
import { useBrowser } from "./browser.js";
import { goTo, tap } from "./workshop.js";

const { open } = useBrowser();

mkdirSync(inRoot(".cache"), { recursive: true });
const folder = mkdtempSync(inRoot(".cache/test-paddock-"));
const course = process.env.DIST ?? inRoot("dist");
let paddock: Started | undefined;

const start = async (port = 0): Promise<Started> => {
  paddock = await startPaddock({ folder, course, port, address: "127.0.0.1" });
  return paddock;
};

afterAll(async () => {
  await paddock?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** All that the desk's machine has of the day. */
const filedLog = () => {
  const lines = readFileSync(join(folder, "day.jsonl"), "utf8").split("\n").slice(0, -1);
  const entries = lines.flatMap((line): LogEntry[] => {
    const { entry } = readEntry(JSON.parse(line).entry);
    return entry === undefined ? [] : [entry];
  });
  return { count: entries.length, log: mergeLogs({ entries }) };
};

const waiting = (page: Page, count: number) =>
  page.locator(`#paddock-state[data-waiting="${count}"]`).waitFor();

async function joinAs(address: string, code: string, name: string): Promise<Page> {
  const { page } = await open(`${address}/workshop.html#join?code=${code}`, {
    viewport: { width: 360, height: 740 },
    hasTouch: true,
  });
  await page.locator("#join-name .chip", { hasText: name }).click();
  await page.locator("#my-run").waitFor();
  return page;
}

const report = async (page: Page, phase: string): Promise<void> => {
  await tap(page, { corner: "Corner 1", phase, input: "steady" });
  await page.locator("#ask-balance .chip", { hasText: "+1" }).click();
  await page.locator("#file-report").click();
};

describe("a day with a desk, phones and no internet", () => {
  it("goes as it goes: two cars, a desk that stops twice, a skipped change, rain, one who leaves", async () => {
    const { place } = await start();
    const { address, code, secret } = place;
    const port = Number(new URL(address).port);
    const { page: desk } = await open(`${address}/workshop.html#desk?secret=${secret}`);
    await desk.locator("#open-codes-wall").waitFor();
    expect(desk.url()).not.toContain(secret);

    // The plan: two different cars, a change on the first
    await goTo(desk, "plan");
    await desk.locator("#new-day").click();
    await desk.locator("#day-drivers").fill("Ada\nBela\nChidi");
    await desk.locator("#day-cars").fill("2");
    await desk.locator("#day-cars").press("Tab");
    for (const step of [0, 1, 2]) {
      await desk.locator("#step-add").click();
      if (step === 1) await desk.locator("#step-1-kind").selectOption("change");
    }
    await desk.locator("#car-2-file").selectOption({ index: 1 });
    await desk.locator("#edited-car").waitFor();
    await desk.locator("#file-plan").click();
    await waiting(desk, 0);

    // Two phones: a code, a name, and the run at hand
    const [ada, bela] = [await joinAs(address, code, "Ada"), await joinAs(address, code, "Bela")];
    expect(await ada.locator("#my-drive").textContent()).toContain("car 1");
    expect(await bela.locator("#my-drive").textContent()).toContain("car 2");
    expect(await ada.locator("nav.views a").allTextContents()).toEqual(["Report", "Log"]);

    // Run 1: filed at the desk, and who is missing
    await goTo(desk, "run");
    await desk.locator("#begin-run").click();
    await desk.locator("#begin-run-2").click();
    await report(ada, "middle");
    await ada.locator("p.notice", { hasText: "Filed at the desk" }).waitFor();
    await desk.locator("#reports-in", { hasText: "1 of 3" }).waitFor();

    // A vote: private on the wall too, until it is revealed
    const wall = await desk.context().newPage();
    await wall.goto(`${address}/workshop.html#wall`);
    await wall.locator(".room .clock").waitFor();
    expect(await wall.locator("nav.views").isVisible()).toBe(false);
    await desk.locator("#poll-fold > summary").click();
    await desk.locator("#poll-text").fill("Which end slides first?");
    await desk.locator("#poll-right .chip", { hasText: "A" }).click();
    await desk.locator("#ask-phones").click();
    await ada.locator("#ballot-letter .chip", { hasText: "A" }).click();
    await bela.locator("#ballot-letter .chip", { hasText: "B" }).click();
    await wall.locator(".voted", { hasText: "2 of 3 have voted." }).waitFor();
    expect(await wall.locator(".room").textContent()).not.toMatch(/A: \d/);
    await desk.locator("#reveal").click();
    await wall.locator(".voted", { hasText: "A: 1, B: 1" }).waitFor();
    await ada.locator("#report", { hasText: "The vote is closed." }).waitFor();
    await wall.close();

    // The desk's machine stops: what is filed waits on the phone, and says so
    await paddock?.stop();
    await report(bela, "middle");
    await bela.locator("p.notice", { hasText: "It waits here" }).waitFor();
    await desk.locator("#run-later").click();
    await desk.locator("#change-skipped").click();
    await start(port);
    await waiting(bela, 0);
    await bela.locator("p.notice", { hasText: "Filed at the desk" }).waitFor();
    await desk.locator("#begin-run-2").click();
    await waiting(desk, 0);

    // Run 2: nothing was changed on car 1, as its driver reads; rain; one leaves
    await ada.locator("#to-run-at-hand").click();
    await ada.locator("#my-run", { hasText: "On car 1: nothing is changed" }).waitFor();
    await desk.locator("#rain-now").click();
    await desk.locator("#happenings > summary").click();
    await desk.locator("#happen-who").selectOption("Chidi");
    await desk.locator("#driver-left").click();
    await desk.locator("#reports-in", { hasText: "of 2" }).waitFor();
    await report(ada, "middle");
    await ada.locator("p.notice", { hasText: "Filed at the desk" }).waitFor();

    // It stops once more; a report twice on one place is one
    await paddock?.stop();
    await report(ada, "middle");
    await ada.locator("p.notice", { hasText: "It waits here" }).waitFor();
    await start(port);
    await waiting(ada, 0);
    await waiting(desk, 0);
    await desk.locator("#reports-in", { hasText: "1 of 2" }).waitFor();

    const { count, log } = filedLog();
    expect(log.entries).toHaveLength(count); // nothing twice
    const [event, ...others] = standing(log, "event");
    if (event === undefined) throw new Error("the day was filed");
    expect(others).toEqual([]);
    const runs = driverRuns(log, event).filter(({ reports }) => reports.length > 0);
    expect(runs.map(({ driver, run, car, reports }) => [driver, run, car, reports.length])).toEqual(
      [
        ["Ada", 1, 1, 1],
        ["Bela", 1, 2, 1],
        ["Ada", 2, 1, 1],
      ],
    );
    expect(setUpOfRun(log, event, 2, 1)?.id).toBe(setUpOfRun(log, event, 1, 1)?.id);
    expect(onOtherRoad(log, event, 2)).toEqual(["Ada"]);
    expect(standing(log, "report")).toHaveLength(4); // the second one on that place too

    // The desk takes a phone out: it says so, and keeps what it wrote
    await goTo(desk, "desk");
    await desk.locator("#not-joined", { hasText: "Chidi" }).waitFor();
    await desk.locator("#phones li", { hasText: "Bela" }).getByText("Remove").click();
    await bela.locator("#paddock-state", { hasText: "no longer in the day" }).waitFor();
  });
});

import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { driverRuns, mergeLogs, onOtherRoad, setUpOfRun, standing } from "@rollbook/lib";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inRoot } from "../../../site/build/paths.js";
import { MOST_STREAMS } from "../../../site/paddock/app.js";
import { killed, listen, onDisk, Paddocks, post, type Running } from "../paddock/process.js";
import { BarePhone } from "./bare-phone.js";
import { useBrowser } from "./browser.js";
import { goTo, tap } from "./workshop.js";

const { open } = useBrowser();

mkdirSync(inRoot(".cache"), { recursive: true });
const own = mkdtempSync(inRoot(".cache/test-paddock-"));
const folder = join(own, "day");
const course = process.env.DIST ?? inRoot("dist");
let paddocks: Paddocks;

beforeAll(async () => {
  paddocks = await Paddocks.in(own);
});

afterAll(() => {
  paddocks.killAll();
  rmSync(own, { recursive: true, force: true });
});

const waiting = (page: Page, count: number) =>
  page.locator(`#paddock-state[data-waiting="${count}"]`).waitFor();

async function joinAs({ address, code }: Running, name: string): Promise<Page> {
  const { page } = await open(`${address}/workshop.html#join?code=${code}`, {
    viewport: { width: 360, height: 740 },
    hasTouch: true,
  });
  await page.locator("#join-name .chip", { hasText: name }).click();
  await page.locator("#my-run").waitFor();
  return page;
}

/** Files a report by the page's own form. */
async function report(page: Page, words: string): Promise<void> {
  await tap(page, { corner: "Corner 1", phase: "middle", input: "steady" });
  await page.locator("#ask-balance .chip", { hasText: "+1" }).click();
  await page.locator("#ask-words").fill(words);
  await page.locator("#file-report").click();
}

const said = (page: Page, sentence: string) =>
  page.locator("p.notice", { hasText: sentence }).waitFor();

const drivers = ["Ada", "Bela", "Chidi", "Dana", "Emil", "Femi", "Greta", "Hana"];

/** Two different cars, four runs, a change on each car in the second. */
async function plan(desk: Page): Promise<void> {
  await goTo(desk, "plan");
  await desk.locator("#new-day").click();
  await desk.locator("#day-drivers").fill(drivers.join("\n"));
  for (const [field, value] of [
    ["#day-cars", "2"],
    ["#day-minutes", "235"],
  ] as const) {
    await desk.locator(field).fill(value);
    await desk.locator(field).press("Tab");
  }
  for (const step of [0, 1, 2, 3]) {
    await desk.locator("#step-add").click();
    const kind = ["baseline", "change", "no change", "no change"][step] ?? "";
    await desk.locator(`#step-${step}-kind`).selectOption(kind);
  }
  await desk.locator("#car-2-file").selectOption({ index: 1 });
  await desk.locator("#edited-car .chip").nth(1).click();
  await desk.locator("#step-1-kind").selectOption("change");
  await desk.locator("#paddock-state", { hasText: "not filed" }).waitFor(); // nobody else sees it
  await desk.locator("#file-plan").click();
  await waiting(desk, 0);
  expect(await desk.locator("#paddock-state").textContent()).not.toContain("not filed");
}

/** Who drives which car in the run at hand, as the desk reads it. */
async function carsOf(desk: Page): Promise<Map<string, number>> {
  const text = ((await desk.locator("#run .at-hand").textContent()) ?? "").replaceAll(
    "\u00a0",
    " ",
  );
  return new Map(
    [...text.matchAll(/car (\d): (\w+)/g)].map(([, car, name = ""]) => [name, Number(car)]),
  );
}

/** Lets the day be so many minutes late: the clock of the desk was begun that much earlier. */
async function late({ address, secret }: Running, desk: Page, minutes: number): Promise<void> {
  const text = (await desk.locator("#run .at-hand").textContent()) ?? "";
  const ahead = Number(/(\d+) min ahead/.exec(text)?.[1] ?? 0);
  const stream = await listen(address, secret);
  await stream.until(({ event }) => event === "caught-up");
  stream.stop();
  const { data } = stream.heard.findLast(({ event }) => event === "clock") ?? {};
  const { clock } = data as { clock: { begun: number } };
  const begun = clock.begun - (ahead + minutes) * 60_000;
  await post(address, "clock", secret, { clock: { ...clock, begun } });
}

/** How many streams the machine holds open for the desk, by how many more it lets in. */
async function streamsOfDesk({ address, secret }: Running): Promise<number> {
  const stop = new AbortController();
  const headers = { Authorization: `Bearer ${secret}` };
  const [url, { signal }] = [`${address}/paddock/entries?after=0`, stop];
  try {
    for (let more = 0; ; more++)
      if ((await fetch(url, { headers, signal })).status === 429) return MOST_STREAMS - more;
  } finally {
    stop.abort();
  }
}

/** From now on the machine answers with a fault of its program, then with a full disk; gives what ends it. */
async function trouble(phone: Page): Promise<() => Promise<void>> {
  let status = 500;
  await phone.route("**/paddock/entries", (route) =>
    route.fulfill({ status, json: { fault: `It answers ${status}.` } }),
  );
  return async () => {
    for (const now of [500, 507]) {
      status = now;
      await phone.locator("#paddock-state", { hasText: `It answers ${now}.` }).waitFor();
      await waiting(phone, 1);
    }
    await phone.unroute("**/paddock/entries");
    await waiting(phone, 0);
    await said(phone, "Filed at the desk");
  };
}

describe("a Saturday with a desk, a wall, eight phones and no internet", () => {
  it("goes as it goes, and in the end every report stands once, at its run and car", async () => {
    let at = await paddocks.start(folder, course);
    const again = async () => {
      at = await paddocks.start(folder, course, Number(new URL(at.address).port));
    };
    const { address, secret } = at;
    const { page: desk } = await open(`${address}/workshop.html#desk?secret=${secret}`);
    await desk.locator("#open-codes-wall").waitFor();
    expect(desk.url()).not.toContain(secret);
    await plan(desk);

    // Eight phones: three with the pages' own forms, five over the network alone
    const [ada, bela, chidi] = [
      await joinAs(at, "Ada"),
      await joinAs(at, "Bela"),
      await joinAs(at, "Chidi"),
    ];
    const bare: BarePhone[] = [];
    for (const name of drivers.slice(3)) bare.push(await BarePhone.join(address, at.code, name));
    await goTo(desk, "desk");
    await desk.locator("#not-joined", { hasText: "Every driver of the day has joined" }).waitFor();
    expect(await ada.locator("nav.views a").allTextContents()).toEqual(["Report", "Log"]);
    const wall = await desk.context().newPage();
    await wall.goto(`${address}/workshop.html#wall`);
    await wall.locator(".room .clock").waitFor();
    expect(await wall.locator("nav.views").isVisible()).toBe(false);
    const log = await desk.context().newPage();
    await log.goto(`${address}/workshop.html#log`);
    await log.locator("#paddock-state", { hasText: "This is the desk" }).waitFor();

    /** What should stand in the end: driver, run, car, and the driver's own words. */
    const expected: [string, number, number | undefined, string][] = [];
    const wordsOf = (name: string, run: number) => `${name} in run ${run}`;
    const expectAll = (run: number, cars: ReadonlyMap<string, number>) => {
      for (const name of drivers)
        if (cars.has(name)) expected.push([name, run, cars.get(name), wordsOf(name, run)]);
    };
    const fileBare = async (run: number, cars: ReadonlyMap<string, number>) => {
      for (const phone of bare.filter(({ name }) => cars.has(name)))
        await phone.report(run, {
          ...{ corner: "Corner 1", phase: "middle", input: "steady", balance: -1 },
          words: wordsOf(phone.name, run),
        });
    };

    // Run 1; the machine is killed while Bela is out, whose report waits and says so
    await goTo(desk, "run");
    await desk.locator("#clock-toggle").click();
    for (const id of ["#begin-run", "#begin-run-2"]) await desk.locator(id).click();
    await waiting(desk, 0);
    const first = await carsOf(desk);
    expectAll(1, first);
    for (const [name, page] of [
      ["Ada", ada],
      ["Bela", bela],
    ] as const)
      await page.locator("#my-drive", { hasText: `car ${first.get(name)}` }).waitFor();
    await report(ada, wordsOf("Ada", 1));
    await said(ada, "Filed at the desk");
    await killed(at);
    await report(bela, wordsOf("Bela", 1));
    await said(bela, "It waits here");
    await again();
    await waiting(bela, 0);
    await said(bela, "Filed at the desk");
    await report(chidi, wordsOf("Chidi", 1));
    await fileBare(1, first);
    await desk.locator("#reports-in", { hasText: "8 of 8" }).waitFor();

    // Run 2: its question is made of its changes; all vote, and nobody sees how until it is revealed
    await desk.locator("#run-later").click();
    await desk.locator("#clock-toggle").click();
    await desk.locator("#stage-next").click();
    await desk.locator("#question-at-hand #question-of-car .chip").nth(1).waitFor();
    await desk.locator("#ask-phones").click();
    for (const [i, page] of [ada, bela, chidi].entries())
      await page.locator("#ballot-letter .chip").nth(i).click();
    await waiting(desk, 0);
    for (const phone of bare) await phone.vote("d");
    await wall.locator(".voted", { hasText: "8 of 8 have voted." }).waitFor();
    expect(await wall.locator(".room").textContent()).not.toMatch(/A: \d/);
    await desk.locator("#reveal").click();
    await wall.locator(".voted", { hasText: "A: 1, B: 1, C: 1, D: 5" }).waitFor();
    await ada.locator("#report", { hasText: "The vote is closed." }).waitFor();

    // One says what she expects, asked by her phone at that stage
    await ada.locator("#to-run-at-hand").click();
    await ada.locator("#expect-what .chip").first().click();
    await ada.locator("#expect-reason").fill("It is stiffer there.");
    await ada.locator("#expect-file").click();
    await said(ada, "Your prediction is filed");

    // A change is skipped, it rains, one leaves; the machine is killed once more
    await desk.locator("#change-skipped").click();
    await desk.locator("#begin-run-2").click();
    await desk.locator("#rain-now").click();
    await desk.locator("#happenings > summary").click();
    await desk.locator("#happen-who").selectOption("Hana");
    await desk.locator("#driver-left").click();
    await waiting(desk, 0);
    const second = await carsOf(desk);
    expectAll(2, second);
    await ada.locator("#my-run", { hasText: "On car 1: nothing is changed" }).waitFor();
    for (const page of [bela, chidi]) await page.locator("#to-run-at-hand").click();
    await report(ada, "Not yet sure");
    await said(ada, "Filed at the desk");
    await killed(at);
    await report(ada, wordsOf("Ada", 2));
    await report(bela, wordsOf("Bela", 2));
    await said(ada, "It waits here");
    await again();
    await waiting(ada, 0);
    await waiting(bela, 0);
    await waiting(desk, 0);
    await report(chidi, wordsOf("Chidi", 2));
    await fileBare(2, second);
    await desk.locator("#reports-in", { hasText: "7 of 7" }).waitFor();

    // Twenty minutes late: one tap drops the last run, and the phones follow
    await late(at, desk, 20);
    await desk.locator("#late", { hasText: "20 min" }).waitFor();
    await desk.locator("#remedy-drop-the-last-runs").click();
    await desk.locator("#run-later").click();
    await ada.locator("#my-run", { hasText: "Run 3 of 3" }).waitFor();
    for (const id of ["#begin-run", "#begin-run-2"]) await desk.locator(id).click();
    await waiting(desk, 0);
    const third = await carsOf(desk);
    expectAll(3, third);
    const troubled = await trouble(chidi);
    for (const [name, page] of [
      ["Ada", ada],
      ["Bela", bela],
      ["Chidi", chidi],
    ] as const) {
      await page.locator("#to-run-at-hand").click();
      await report(page, wordsOf(name, 3));
    }
    await troubled();
    await fileBare(3, third);
    await desk.locator("#reports-in", { hasText: "7 of 7" }).waitFor();

    const entries = onDisk(folder);
    const filed = mergeLogs({ entries });
    expect(filed.entries).toHaveLength(entries.length); // nothing twice
    const [event, ...others] = standing(filed, "event");
    if (event === undefined) throw new Error("the day was filed");
    expect(others).toEqual([]);
    const found = driverRuns(filed, event).flatMap(({ driver, run, car, reports }) =>
      reports.map(({ report: { words } }) => [driver, run, car, words]),
    );
    expect(found).toEqual(expected);
    expect([first.size, second.size, third.size]).toEqual([8, 7, 7]);
    expect(standing(filed, "report")).toHaveLength(8 + 7 + 7 + 1); // Ada's first word on run 2 too
    expect(standing(filed, "vote")).toHaveLength(8);
    expect(standing(filed, "prediction").map(({ by }) => by)).toEqual(["Ada"]);
    expect(setUpOfRun(filed, event, 2, 1)?.id).toBe(setUpOfRun(filed, event, 1, 1)?.id);
    expect(setUpOfRun(filed, event, 2, 2)?.id).not.toBe(setUpOfRun(filed, event, 1, 2)?.id);
    expect(onOtherRoad(filed, event, 2)).toContain("Ada");

    // Desk, wall and a third tab have one stream, after two restarts too; what one hears all see
    await expect.poll(() => streamsOfDesk(at)).toBe(1);
    await goTo(desk, "desk");
    await desk.locator("#phones li", { hasText: "Chidi" }).getByText("Rename").click();
    await desk.getByLabel("New name of Chidi").fill("Chidi K.");
    await desk.getByLabel("New name of Chidi").press("Enter");
    await said(desk, "The phone is now Chidi K.");
    await desk.locator("#phones li span", { hasText: /^Chidi K\.$/ }).waitFor();
    await goTo(log, "desk");
    await log.locator("#phones li span", { hasText: /^Chidi K\.$/ }).waitFor();
    await desk.locator("#not-joined", { hasText: "Not joined yet: Chidi." }).waitFor();

    // The desk takes a phone out: it says so, and keeps what it wrote
    await desk.locator("#phones li", { hasText: "Bela" }).getByText("Remove").click();
    await bela.locator("#paddock-state", { hasText: "no longer in the day" }).waitFor();
  });
});

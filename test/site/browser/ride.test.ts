import type { CDPSession, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { demoCar, formatCar, handlingCarOf } from "../../../lib/index.js";
import { tableOf } from "../../../site/pages/ride/work/table.js";
import {
  anyPhone,
  asAPhoneFelt,
  leaningRoad,
  tenTurns,
  trueDrive,
} from "../../lib/measure/ride/simulated-ride.js";
import { savedText, useBrowser } from "./browser.js";

const { open, origin } = useBrowser();

const phone = { viewport: { width: 360, height: 740 } };
const keeps = {
  "rollbook:cars": JSON.stringify({
    stamp: 1,
    version: 1,
    value: { cars: [JSON.parse(formatCar({ ...demoCar, name: "Rook" }))], current: "Rook" },
  }),
};

const sensors = ["accelerometer", "linear-acceleration", "gyroscope"] as const;

/** What a phone feels that lies on its back while it is pushed to the right and turns, through the browser's own emulation. */
async function play(cdp: CDPSession, push: number, turn: number): Promise<void> {
  const readings = {
    accelerometer: { x: push, y: 0.2, z: 9.8 },
    "linear-acceleration": { x: push, y: 0.2, z: 0 },
    gyroscope: { x: 0, y: 0, z: turn },
  };
  for (const type of sensors)
    await cdp.send("Emulation.setSensorOverrideReadings", {
      type,
      reading: { xyz: readings[type] },
    });
}

async function withSensors(cdp: CDPSession): Promise<void> {
  const metadata = { available: true, minimumFrequency: 1, maximumFrequency: 60 };
  for (const type of sensors)
    await cdp.send("Emulation.setSensorOverrideEnabled", { enabled: true, type, metadata });
  await play(cdp, 0.3, 0.1);
}

/** Where satellites see it, how fast and going which way. */
const seen = (cdp: CDPSession, longitude: number) =>
  cdp.send("Emulation.setGeolocationOverride", {
    ...{ latitude: 50, longitude, accuracy: 3, speed: 12.5, heading: 90 },
  });

/** The pieces of all rides, as the browser's database has them. */
const pieces = (page: Page, of: "felt" | "fixes" = "felt"): Promise<number[][]> =>
  page.evaluate(
    (of) =>
      new Promise((resolve) => {
        const request = indexedDB.open("rollbook-rides", 1);
        request.onsuccess = () => {
          const all = request.result.transaction("pieces").objectStore("pieces").getAll();
          all.onsuccess = () => resolve(all.result.map((piece) => [...piece[of]]));
        };
      }),
    of,
  );

const timesOf = (felt: readonly number[]) => felt.filter((_, i) => i % 7 === 0);

describe("a phone that rides along", () => {
  it("records what the sensors say, and a page that is killed has lost less than a second", async () => {
    const { page: other } = await open("ride");
    const permissions = ["accelerometer", "gyroscope", "geolocation"];
    const context = await other
      .context()
      .browser()
      ?.newContext({ ...phone, permissions });
    const page = await context?.newPage();
    if (!context || !page) throw new Error("no browser");
    const cdp = await context.newCDPSession(page);
    await withSensors(cdp);
    await seen(cdp, 8);
    await page.goto(`${origin()}/ride.html`);
    await page.locator("#ride-try").click();
    await page.locator("#ride-start").click();
    await page.locator(".running", { hasText: "Recording: 1 s" }).waitFor();
    await play(cdp, 4, 0.4);
    await seen(cdp, 8.0001);
    await page.locator(".running", { hasText: "Recording: 3 s" }).waitFor();
    const now = await page.evaluate(() => performance.now() / 1000);
    const killer = await context.newCDPSession(page);
    await Promise.race([killer.send("Page.crash").catch(() => {}), page.waitForEvent("crash")]);
    const after = await context.newPage();
    await after.goto(`${origin()}/ride.html`);
    const kept = await pieces(after);
    const times = kept.flatMap(timesOf);
    expect(now - (times.at(-1) ?? 0)).toBeLessThan(1);
    for (const piece of kept) {
      const [first = 0] = timesOf(piece);
      expect((timesOf(piece).at(-1) ?? 0) - first).toBeLessThan(0.8); // half a second, and what a busy machine adds
    }
    const felt = kept.flatMap((piece) =>
      timesOf(piece).map((_, i) => piece.slice(7 * i + 1, 7 * i + 7)),
    );
    const rounded = (one: number[] = []) => one.map((value) => Math.round(value * 10) / 10);
    expect(rounded(felt[0])).toEqual([0.3, 0.2, 9.8, 0, 0, 0.1]);
    expect(rounded(felt.at(-1))).toEqual([4, 0.2, 9.8, 0, 0, 0.4]); // as it was pushed and turned then
    const [fix = []] = (await pieces(after, "fixes")).filter((one) => one.length > 0);
    expect([fix[1], fix[2]]).toEqual([12.5, Math.PI / 2]); // m/s, and rad from north
    expect(await after.locator(".rides li").count()).toBe(1);
    await context.close();
  });

  it("says over plain http, before the phone is mounted, what to do instead", async () => {
    const { page } = await open("ride");
    const script = await page.addInitScript(() => {
      Object.defineProperty(window, "isSecureContext", { value: false });
    });
    await page.reload();
    await script.dispose();
    const recorder = page.locator("#ride-recorder");
    expect(await recorder.textContent()).toMatch(/plain http.*Do not mount.*table/s);
    expect(await recorder.locator("button").count()).toBe(0);
  });

  it("takes a table in, tells the roll gradient, keeps it as a reading, gives the table back, and forgets", async () => {
    const road = leaningRoad(1);
    const drive = trueDrive(handlingCarOf(demoCar), tenTurns(1, 4), road);
    const text = tableOf(asAPhoneFelt(drive, road, { ...anyPhone(1), rate: 40 }, 1));
    const { page, errors, foreign } = await open("ride", { ...phone, keeps });
    const file = { name: "ride.csv", mimeType: "text/csv", buffer: Buffer.from(text) };
    await page.locator("#ride-table").setInputFiles(file);
    await page.locator("#column-turnZ").selectOption("");
    await page.locator("#ride-take-in").click();
    const fault = page.locator("#ride-table-fault", { hasText: "A column for turn z is needed." });
    await fault.waitFor();
    await page.locator("#column-turnZ").selectOption({ label: "turn_z_rad_s" });
    await page.locator("#ride-take-in").click();
    const gradient = page.locator(".gradient", { hasText: "The model of Rook says 4.3" });
    expect(await gradient.textContent()).toMatch(/Measured: 4\.\d+ ± 0\.\d+\s°\/g/);
    expect(await page.locator(".corners svg").count()).toBe(4);
    const shown = await page.locator("#ride").textContent();
    expect(shown).not.toMatch(/NaN|Infinity|undefined/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await page.locator("#ride-take").click();
    await page.locator(".notice", { hasText: "Kept as a reading of Rook" }).waitFor();
    const sheet = await page.evaluate(
      () => JSON.parse(localStorage.getItem("rollbook:measurements") ?? "").value.sheets.Rook,
    );
    expect(Number(sheet["ride.rideGradient.0"].text)).toBeCloseTo(4.34, 0);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: /^Save the ride/ }).click(),
    ]);
    expect(await savedText(download)).toBe(text);
    await page.getByRole("button", { name: /^Delete the ride/ }).click();
    await page.locator("#ride-list", { hasText: "No rides" }).waitFor();
    await page.locator("#undo").click();
    await page.locator(".rides li").waitFor();
    expect([errors, foreign]).toEqual([[], []]);
  });
});

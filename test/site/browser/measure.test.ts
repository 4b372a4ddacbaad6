import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type Car, demoCar, formatCar, uncertainNumbersOf } from "../../../lib/index.js";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();

const rook: Car = { ...demoCar, name: "Rook" };
const keeps = {
  "rollbook:cars": JSON.stringify({
    stamp: 1,
    version: 1,
    value: { cars: [JSON.parse(formatCar(rook))], current: "Rook" },
  }),
};
const phone = { viewport: { width: 360, height: 740 } };

const at = (page: Page, place: string) => page.locator(`#at-${place.replace(/[^\w]+/g, "-")}`);

async function typeAll(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [place, text] of Object.entries(texts)) await at(page, place).fill(text);
}

const scales = {
  "four-scales.frontLeft.0": "290",
  "four-scales.frontRight.0": "271.4",
  "four-scales.rearLeft.0": "262",
  "four-scales.rearRight.0": "256.6",
};

/** The car as the device has it. */
const kept = (page: Page): Promise<Car> =>
  page.evaluate(() => JSON.parse(localStorage.getItem("rollbook:cars") ?? "").value.cars[0]);

const write = (page: Page, name: string) =>
  page.getByRole("button", { name: `Write into Rook: ${name}` }).click();
const told = (page: Page, text: string) => page.locator(".notice", { hasText: text }).waitFor();

/** What somebody types into each form, and how many numbers come of it. */
const readings: Readonly<Record<string, readonly [Readonly<Record<string, string>>, number]>> = {
  "four-scales": [scales, 7],
  "raised-axle": [
    {
      "raised-axle.level.0": "561",
      "raised-axle.lifted.0": "606",
      "raised-axle.rise.0": "500 mm",
      "raised-axle.frontHub.0": "290",
      "raised-axle.rearHub.0": "290",
    },
    2,
  ],
  "ride-rate": [lines("ride-rate.front", ["added", "fallLeft", "fallRight"], [[40, 7.2, 7.2]]), 3],
  ride: [lines("ride", ["rideGradient", "rideSpread"], [[0.4, 0.02]]), 1],
  "sill-weight": [
    {
      "sill-weight.arm.0": "700",
      "sill-weight.apart.0": "1500",
      ...lines("sill-weight", ["added", "nearFall", "farRise"], [[60, 9, 3]]),
    },
    2,
  ],
  "motion-ratio": [
    lines(
      "motion-ratio.front",
      ["hub", "spring"],
      [
        [290, 300],
        [310, 287],
        [330, 274],
      ],
    ),
    1,
  ],
  linkage: [
    {
      "linkage.front.lowerInnerY.0": "350",
      "linkage.front.lowerInnerZ.0": "180",
      "linkage.front.lowerOuterY.0": "660",
      "linkage.front.lowerOuterZ.0": "170",
      "linkage.front.upperInnerY.0": "400",
      "linkage.front.upperInnerZ.0": "400",
      "linkage.front.upperOuterY.0": "640",
      "linkage.front.upperOuterZ.0": "420",
      "linkage.front.wheelCentreY.0": "720",
      "linkage.front.wheelCentreZ.0": "290",
    },
    3,
  ],
  "tyre-rate": [
    lines(
      "tyre-rate.front",
      ["load", "hubHeight"],
      [
        [200, 292],
        [300, 287],
        [400, 282],
      ],
    ),
    1,
  ],
  "tyre-print": [
    {
      "tyre-print.front.length.0": "140",
      "tyre-print.front.width.0": "150",
      "tyre-print.front.load.0": "280",
    },
    3,
  ],
  circle: [{ "circle.radius.0": "20", "circle.before.0.0": "10", "circle.before.0.1": "10.1" }, 1],
};

/** Readings line by line, by their places. */
function lines(form: string, keys: readonly string[], rows: readonly (readonly number[])[]) {
  return Object.fromEntries(
    rows.flatMap((row, i) => keys.map((key, j) => [`${form}.${key}.${i}`, String(row[j])])),
  );
}

describe("measuring", () => {
  it("takes readings into each form on a phone, by a numeric keyboard, and gives its numbers", async () => {
    const { page, errors } = await open("measure", { ...phone, keeps, silentWorkers: true });
    for (const [id, [texts, least]] of Object.entries(readings)) {
      for (const [place, text] of Object.entries(texts)) {
        expect(await at(page, place).getAttribute("inputmode"), place).toBe("decimal");
        const { width = 0, x = 0 } = (await at(page, place).boundingBox()) ?? {};
        expect(width > 60 && x >= 0 && x + width <= 360, place).toBe(true);
        await at(page, place).fill(text);
      }
      const found = page.locator(`#form-${id} .found li`);
      await found.first().waitFor();
      expect(await found.count(), id).toBeGreaterThanOrEqual(least);
      for (const value of await page.locator(`#form-${id} .found .value`).allTextContents())
        expect(value, id).toMatch(/\d ± \d/);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(errors).toEqual([]);
  });

  it("fits a phone, with a numeric keyboard in every box and a numeral in every result", async () => {
    const { page, errors, foreign } = await open("measure", { ...phone, keeps });
    await typeAll(page, scales);
    expect(await page.locator("#form-four-scales .found li").count()).toBe(7);
    const boxes = page.locator("#measure input.number");
    const modes = await boxes.evaluateAll((all) =>
      all.map((one) => (one as HTMLInputElement).inputMode),
    );
    expect(modes.length).toBeGreaterThan(40);
    expect(new Set(modes)).toEqual(new Set(["decimal"]));
    const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await wide()).toBe(360);
    expect(await page.locator("#measure").textContent()).not.toMatch(/NaN|Infinity|undefined/);
    expect([errors, foreign]).toEqual([[], []]);
  });

  it("writes a number with spread, day and name into the car, and takes it back", async () => {
    const { page } = await open("measure", { keeps });
    await page.getByLabel("Who measures").fill("Ada");
    await typeAll(page, { ...scales, "four-scales.frontLeft.1": "296" });
    await write(page, "Mass of the body");
    await told(page, "is in Rook");
    const { body, known } = await kept(page);
    expect(body.mass).toBeCloseTo(813, 0); // half of the 6 kg more that one scale showed again
    expect(known?.["body.mass"]).toMatchObject({ how: "measured", by: "Ada" });
    expect(known?.["body.mass"]?.when).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(known?.["body.mass"]?.spread).toBeGreaterThan(3);
    await page.locator("#undo").click();
    await told(page, "As it was before");
    expect(await kept(page)).toEqual(rook);
  });

  it("keeps what was typed through a reload, and says what is wrong with a box once it is left", async () => {
    const { page } = await open("measure", { keeps });
    await typeAll(page, { ...scales, "four-scales.rearRight.0": "25a" });
    await at(page, "four-scales.rearLeft.0").focus();
    const fault = page.locator("#form-four-scales .fault");
    expect(await fault.textContent()).toBe("rear right takes 0.0 to 1500.0 kg.");
    await page.reload();
    expect(await at(page, "four-scales.rearRight.0").inputValue()).toBe("25a");
    expect(await page.locator("#form-four-scales .missing").textContent()).toBe(
      "Still to read: rear right.",
    );
  });

  it("times laps of a circle by a large button, and does not call a small change measured", async () => {
    const { page } = await open("measure", { ...phone, keeps });
    await at(page, "circle.radius.0").fill("20");
    await page.evaluate(() => {
      let now = 5000;
      performance.now = () => now;
      Object.assign(window, { pass: (seconds: number) => (now += 1000 * seconds) });
    });
    const lap = page.locator("#lap");
    expect((await lap.boundingBox())?.height).toBeGreaterThan(90);
    const pass = async (seconds: number) => {
      await page.evaluate((s) => (window as unknown as { pass(s: number): void }).pass(s), seconds);
      await lap.dispatchEvent("pointerdown");
    };
    for (const seconds of [0, 10, 10.04, 9.97]) await pass(seconds);
    expect(await at(page, "circle.before.0.1").inputValue()).toBe("10.04");
    await typeAll(page, {
      "circle.after.0.0": "9.97",
      "circle.after.0.1": "10",
      "circle.after.0.2": "10.01",
    });
    const results = page.locator("#form-circle .results");
    expect(await results.textContent()).toMatch(/Limit, as it was 7\.89 ± 0\.15/);
    expect(await results.textContent()).toContain("Not measured");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });

  it("goes from the first page to a car with bands in twelve fields and four taps on a phone, and takes it back", async () => {
    const { page, errors } = await open("index", phone);
    let taps = 0;
    const tap = async (what: Locator) => {
      await what.click();
      taps++;
    };
    await tap(page.locator(".masthead .menu summary"));
    await tap(page.locator('.masthead .menu a[href="your-car.html"]'));
    await tap(page.locator('main a[href="measure.html"]'));
    const make = page.locator("#first-make");
    expect(await make.isDisabled()).toBe(true);
    const fields = {
      ...{ name: "Rook", mass: "1080", frontMass: "562", wheelbase: "2.4", tyre: "195/50 R 15" },
      ...{ "front-track": "1.44", "rear-track": "1.45", "front-bar": "18" },
      ...{ "front-pressure": "200", "rear-pressure": "200" },
      ...{ "front-rideHeight": "130", "rear-rideHeight": "140" },
    };
    for (const [key, text] of Object.entries(fields))
      await page.locator(`#first-${key}`).fill(text);
    await tap(make);
    await told(page, "Rook is made");
    const car = await kept(page);
    expect(car.known?.["body.height"]?.how).toBe("estimated");
    const numbers = uncertainNumbersOf(car);
    expect(numbers.filter(({ how }) => how === "copied")).toEqual([]); // none stays the workbook's own
    expect(await page.locator(".for").textContent()).toContain("Numbers go into Rook");
    const typed = Object.keys(fields).length;
    expect([typed, taps]).toEqual([12, 4]);
    expect(typed * 40 + taps * 5).toBeLessThan(600); // s for each field to read or measure, and for each tap: common practice, no source
    await page.locator("#form-next .pairs dd").first().waitFor();
    expect(await page.locator("#form-next .pairs").first().textContent()).toMatch(
      /Braking in|braking in/,
    );
    await page.locator("#next-stop").click();
    await page.locator("#undo").click();
    await told(page, "gone again");
    expect(await page.locator(".for").textContent()).toContain("takes none of them in");
    expect(errors).toEqual([]);
  });

  it("works out what to measure next for whoever comes by a link to an entry of it", async () => {
    const { page, errors } = await open("measure#next-ride-rate-front", {
      keeps,
      silentWorkers: true,
    });
    await page.locator("#next-stop").waitFor();
    expect(errors).toEqual([]);
  });

  it("learns from a reading that bears on several numbers; each is taken over by itself, and back", async () => {
    const { page, errors } = await open("measure", { keeps });
    for (const [i, [added, fall]] of [
      ["40", "7.2"],
      ["80", "14.5"],
      ["120", "21.6"],
    ].entries())
      await typeAll(page, {
        [`ride-rate.front.added.${i}`]: added ?? "",
        [`ride-rate.front.fallLeft.${i}`]: fall ?? "",
        [`ride-rate.front.fallRight.${i}`]: fall ?? "",
      });
    await page.locator("#learn-begin").click();
    const take = page.getByRole("button", { name: "Take over: front spring rate" });
    await take.click();
    await told(page, "is in Rook");
    const { front, known } = await kept(page);
    expect(front.spring.rate).toBeGreaterThan(demoCar.front.spring.rate);
    expect(known?.["front.spring.rate"]?.how).toBe("estimated");
    expect(await page.locator("#learn").textContent()).toContain("taken over");
    await page.locator("#undo").click();
    await take.waitFor();
    expect(await kept(page)).toEqual(rook);
    expect(errors).toEqual([]);
  });

  it("takes nothing into the workbook's own car, and says why", async () => {
    const { page } = await open("measure");
    await typeAll(page, scales);
    expect(await page.locator("#form-four-scales .found li").count()).toBe(7);
    expect(await page.getByRole("button", { name: "Write into" }).count()).toBe(0);
    expect(await page.locator(".for").textContent()).toContain("takes none of them in");
  });
});

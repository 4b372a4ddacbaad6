import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import {
  axleWeightsOf,
  type Car,
  demoCar,
  formatCar,
  lateralLoadTransfer,
  rigidCarOf,
  wheelLiftAcceleration,
} from "../../../lib/index.js";
import { otherCars } from "../../../site/chapter/other-cars.js";
import { fromShown } from "../../../site/say/units.js";
import { axeFaultsInBoth } from "./axe.js";
import { chooseUnits, type Opening, savedText, useBrowser } from "./browser.js";

const { open: openWith, origin, fileUrl } = useBrowser();

/** Most tests here do not look at how sure a figure is, which a worker samples for seconds. */
const open = (name: string, options: Opening = {}) =>
  openWith(name, { silentWorkers: true, ...options });

const at = (page: Page, path: string) => page.locator(`#at-${path.replace(/\./g, "-")}`);
const start = (page: Page) => page.getByRole("button", { name: "Start from a copy" }).click();
const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });
const spaced = (text: string | null) => (text ?? "").replaceAll("\u00a0", " ");
const status = async (page: Page) => spaced(await page.locator(".told .status").textContent());
const told = (page: Page, text: string) =>
  page.locator(".told .status", { hasText: text }).waitFor();
const summaryOf = async (page: Page) => spaced(await page.locator("aside.summary").textContent());
const file = (name: string, text: string) => ({
  name,
  mimeType: "application/json",
  buffer: Buffer.from(text),
});

/** A new car with these values typed into it. */
async function typeCar(page: Page, values: Readonly<Record<string, string>>): Promise<void> {
  await start(page);
  await openAll(page);
  for (const [path, text] of Object.entries(values)) await at(page, path).fill(text);
}

/** Checks three numbers of chapter 1 against the physics, for a car known without the page. */
async function expectChapterFor(page: Page, car: Car): Promise<void> {
  await page.goto(page.url().replace(/your-car\.html.*/, "01-load-transfer.html"));
  const whose = await page.locator("#whose").textContent();
  expect(whose).toMatch(new RegExp(`^Figures for ${car.name}.*\\d+ of \\d+ values estimated`));
  const worked = async (id: string) =>
    Number(await page.locator(`#${id}`).getAttribute("data-worked"));
  const rigid = rigidCarOf(car);
  const moved = lateralLoadTransfer({ ...rigid, lateralAcceleration: 7 });
  expect(await worked("transfer")).toBeCloseTo(moved, 6);
  expect(await worked("tip")).toBeCloseTo(wheelLiftAcceleration(rigid), 9);
  expect(await worked("front-wheel")).toBeCloseTo(axleWeightsOf(car).front / 2, 6);
}

describe("how sure the figures are", () => {
  it("is told from few cars first and then from more, and begun again when a number is typed", async () => {
    const { page, errors } = await open("your-car", { silentWorkers: false });
    await start(page);
    const progress = page.locator(".sureness .progress");
    const counted = async () => Number(/\d+/.exec((await progress.textContent()) ?? "")?.[0] ?? 0);
    await expect.poll(counted).toBeGreaterThanOrEqual(10);
    const first = await counted();
    const rows = page.locator(".sureness tbody tr");
    expect(await rows.count()).toBe(4);
    for (const text of await rows.allTextContents()) expect(text).toMatch(/\d.* to .*\d/);
    await expect.poll(counted).toBeGreaterThan(first);
    await openAll(page);
    await at(page, "body.mass").fill("900");
    await expect.poll(async () => /\d/.test((await rows.first().textContent()) ?? "")).toBe(false);
    await expect.poll(counted).toBeGreaterThanOrEqual(10);
    expect(errors).toEqual([]);
  });
});

describe("the course, once a car is saved", () => {
  it("is about a car of another mass, typed in", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet", "body.mass": "1100" });
    await page.getByRole("button", { name: "Save, and let the course show it" }).click();
    await expect.poll(() => status(page)).toBe("Linnet is saved, and the course shows it.");
    const body = { ...demoCar.body, mass: 1100 };
    await expectChapterFor(page, { ...demoCar, name: "Linnet", body });
  });

  it("is about a car typed in US units, some with units of their own", async () => {
    const { page } = await open("your-car");
    await chooseUnits(page, "us");
    await typeCar(page, { name: "Siskin", "body.mass": "1500", wheelbase: "2500 mm" });
    await at(page, "body.height").fill("22 in");
    await page.getByRole("button", { name: "Save, and let the course show it" }).click();
    const mass = fromShown("mass", 1500, "us");
    const body = { ...demoCar.body, mass, height: 22 * 0.0254 };
    await expectChapterFor(page, { ...demoCar, name: "Siskin", wheelbase: 2.5, body });
  });

  it.each(otherCars.map((car) => [car.name, car] as const))(
    "is about the %s, brought in as a file",
    async (name, car) => {
      const { page } = await open("your-car");
      await page.locator("#files").setInputFiles(file("mine.json", formatCar(car)));
      await page.getByRole("radio", { name }).check();
      await expect.poll(() => status(page)).toBe(`The course now shows ${name}.`);
      await expectChapterFor(page, car);
    },
  );

  it("goes back to the workbook's own car when the reader says so", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet", "body.mass": "1100" });
    await page.getByRole("button", { name: "Save, and let the course show it" }).click();
    await page.getByRole("radio", { name: "Pipit" }).check();
    await page.goto(page.url().replace("your-car", "01-load-transfer"));
    expect(await page.locator("#whose").textContent()).toContain("Figures for Pipit");
  });
});

describe("the form", () => {
  it("tells all faults at once, beside their boxes and in a list whose links lead to them", async () => {
    const { page } = await open("your-car");
    await typeCar(page, {
      "front.spring.rate": "9000",
      "rear.track": "wide",
      "rear.camber.left": "",
      "front.bar.positions.2.rate": "-1",
    });
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await expect.poll(() => status(page)).toContain("Not saved yet");
    const list = page.locator("#faults li");
    expect(await list.allTextContents()).toEqual([
      "Spring rate, front takes 5 to 400 N/mm, not 9000.",
      "Rate, position 3, front takes 0 to 200 N/mm, not −1.",
      "Track, rear takes 0.8 to 2.2 m, not wide.",
      "Camber, rear left takes −6 to 3°; it is empty.",
    ]);
    for (const path of ["front.spring.rate", "rear.track"]) {
      const box = at(page, path);
      expect(await box.getAttribute("aria-invalid")).toBe("true");
      const described = (await box.getAttribute("aria-describedby")) ?? "";
      expect(await page.locator(`#${described.split(" ")[0]}`).textContent()).toMatch(/ takes /);
    }
    await page.locator("#section-sizes").evaluate((fold) => fold.removeAttribute("open"));
    await list.nth(2).getByRole("link").click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("at-rear-track");
    await page.keyboard.press("Control+A");
    await page.keyboard.type("1.5");
    expect(await list.count()).toBe(3);
    expect(await at(page, "rear.track").getAttribute("aria-invalid")).toBeNull();
  });

  it("loses nothing that was typed, sound or not, when the page is closed or the units change", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet", "front.spring.rate": "70", "rear.track": "about one" });
    await page.reload();
    expect(await at(page, "name").inputValue()).toBe("Linnet");
    expect(await at(page, "rear.track").inputValue()).toBe("about one");
    await chooseUnits(page, "us");
    expect(await at(page, "front.spring.rate").inputValue()).toBe("400"); // 70 N/mm = 399.7 lbf/in
    expect(await at(page, "rear.track").inputValue()).toBe("about one");
    await chooseUnits(page, "metric");
    expect(await at(page, "front.spring.rate").inputValue()).toBe("70");
  });

  it("keeps an unfinished car while another is worked on, and takes it up again", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet", wheelbase: "2.3" });
    await typeCar(page, { name: "Siskin", wheelbase: "2.6" });
    await page.getByRole("button", { name: "Change: Linnet" }).click();
    expect(await at(page, "wheelbase").inputValue()).toBe("2.3");
    await page.getByRole("button", { name: "Change: Siskin" }).click();
    expect(await at(page, "wheelbase").inputValue()).toBe("2.6");
  });

  it("says which values are still the workbook's, until they are typed or confirmed", async () => {
    const { page } = await open("your-car");
    await typeCar(page, {});
    const sizes = page.locator("#section-sizes .state");
    expect(await sizes.textContent()).toBe("5 values still the Pipit’s");
    await at(page, "front.track").fill("1.44");
    expect(await sizes.textContent()).toBe("4 values still the Pipit’s");
    await page.locator("#section-sizes").getByRole("button", { name: "my car’s" }).click();
    expect(await sizes.textContent()).toBe("");
    await at(page, "name").fill("Linnet");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.reload();
    expect(await sizes.textContent()).toBe("");
  });

  it("puts parts in and takes them out, and brings them back as they were", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { "driver.mass": "92" });
    await at(page, "driver").uncheck();
    expect(await at(page, "driver.mass").count()).toBe(0);
    await at(page, "driver").check();
    expect(await at(page, "driver.mass").inputValue()).toBe("92");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("at-driver");
    await page
      .locator("#section-bars")
      .getByRole("button", { name: "One position more" })
      .first()
      .click();
    await at(page, "front.bar.positions.5.rate").fill("60");
    await page.getByRole("button", { name: "Take out position 1", exact: true }).first().click();
    expect(await at(page, "front.bar.positions.4.rate").inputValue()).toBe("60");
  });

  it("leaves focus, caret, folds and scroll as they are while values and parts change", async () => {
    const { page } = await open("your-car");
    await typeCar(page, {});
    await page.locator("#section-springs").evaluate((fold) => fold.removeAttribute("open"));
    const folds = page.locator("#section-sizes details[open]");
    const unfolded = await folds.count();
    const box = await at(page, "wheelbase").elementHandle();
    await box?.focus();
    await page.keyboard.press("Home");
    const scrolled = await page.evaluate(() => scrollY);
    await page.keyboard.type("wide2");
    const now = await box?.evaluate((input) => [
      document.activeElement === input,
      (input as HTMLInputElement).value,
      (input as HTMLInputElement).selectionStart,
    ]);
    expect(now).toEqual([true, "wide22.4", 5]);
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    await at(page, "driver").uncheck();
    expect(await folds.count()).toBe(unfolded);
    expect(await page.locator("#section-springs").getAttribute("open")).toBeNull();
    expect(await box?.evaluate((input) => input.isConnected)).toBe(true);
  });

  it("works the body out from four scales", async () => {
    const { page } = await open("your-car");
    await typeCar(page, {
      "scales.front.left": "300",
      "scales.front.right": "290",
      "scales.rear.left": "270",
      "scales.rear.right": "260",
    });
    await page.getByRole("button", { name: "Put it in" }).click();
    expect(await at(page, "body.mass").inputValue()).toBe("850"); // 1120 − 75 − 85 − 80 − 30
    expect(spaced(await page.locator(".said").textContent())).toContain("Together 1120 kg");
    await expect.poll(() => summaryOf(page)).toContain("Together1120 kg");
  });

  it("shows beside it what the car comes to, and how far it is inside its class", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { "body.mass": "910", "limits.leastRideHeight": "135" });
    await expect.poll(() => summaryOf(page)).toContain("1180 kg");
    const outside = page.locator('aside.summary [data-verdict="outside"]');
    await expect
      .poll(async () => (await outside.allTextContents()).map(spaced))
      .toEqual(["front left 130 mm outside by 5 mm", "front right 130 mm outside by 5 mm"]);
    await at(page, "body.mass").fill("heavy");
    await page.getByText("Shown for the last values that were sound.").waitFor();
  });
});

describe("cars as files", () => {
  it("go out and come back unchanged, under another name where theirs is taken", async () => {
    const { page } = await open("your-car");
    await page.locator("#files").setInputFiles(file("a.json", formatCar(otherCars[2] as Car)));
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as file: Bustard" }).click();
    const saved = await download;
    expect(saved.suggestedFilename()).toBe("Bustard.car.json");
    const text = await savedText(saved);
    expect(text).toBe(formatCar(otherCars[2] as Car));
    await page.locator("#files").setInputFiles(file("b.json", text));
    await told(page, "There was a Bustard already, so it is called Bustard 2.");
    expect(await page.getByRole("radio").count()).toBe(3);
  });

  it("that are faulty tell all that is wrong, and are mended on the form", async () => {
    const { page } = await open("your-car");
    const content = JSON.parse(formatCar({ ...demoCar, name: "<b>Rook</b>" }));
    content.front.spring.rate = 9e6;
    delete content.rear.track;
    await page.locator("#files").setInputFiles(file("bad.json", JSON.stringify(content)));
    await page.locator(".problem").waitFor();
    expect(await page.locator(".problem li").allTextContents()).toEqual([
      "front.spring.rate is 9000000 N/m but must be from 5000 to 400000 N/m (5 to 400 N/mm).",
      "rear.track is missing.",
    ]);
    await page.getByRole("button", { name: "Open it and mend it here" }).click();
    expect(await at(page, "name").inputValue()).toBe("<b>Rook</b>");
    expect(await page.locator("#faults li").count()).toBe(1);
    await openAll(page);
    await at(page, "front.spring.rate").fill("90");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await expect.poll(() => status(page)).toContain("<b>Rook</b> is saved.");
    expect(await page.locator("#your-car li b", { hasText: "<b>Rook</b>" }).count()).toBe(1);
  });

  it("that are out of range by now are told, kept through later writes, mended, saved or let go", async () => {
    const short = { ...demoCar, name: "Short", wheelbase: 1.19 };
    const { page, errors } = await open("your-car", {
      keeps: { "rollbook:cars": JSON.stringify({ cars: [short, { ...short, name: "Stub" }] }) },
    });
    const aside = page.locator(".problem");
    await aside.filter({ hasText: "Short is kept, but this course cannot show it" }).waitFor();
    expect(spaced(await aside.first().textContent())).toContain("wheelbase is 1.19 m but must be");
    const cars = ["Rook", "Wren"].map((name) =>
      file(`${name}.json`, formatCar({ ...demoCar, name })),
    );
    for (const one of cars) await page.locator("#files").setInputFiles([one]);
    await page.getByRole("radio", { name: "Wren" }).waitFor();
    await page.reload();
    await expect.poll(() => aside.count()).toBe(2);
    await aside.first().getByRole("button", { name: "Open it and mend it here" }).click();
    await at(page, "wheelbase").fill("2.1");
    await page.locator("#save").click();
    await told(page, "Short is saved.");
    const download = page.waitForEvent("download");
    await aside.getByRole("button", { name: "Save as file" }).click();
    expect(JSON.parse(await savedText(await download))).toMatchObject({ wheelbase: 1.19 });
    await aside.getByRole("button", { name: "Delete" }).click();
    await told(page, "Stub is deleted.");
    await page.reload();
    await page.getByRole("radio", { name: "Short" }).waitFor();
    expect(await aside.count()).toBe(0);
    expect(await page.evaluate(() => localStorage.getItem("rollbook:cars"))).not.toContain("1.19");
    expect(errors).toEqual([]);
  });

  it("get both changes where two open pages type into two fields of one car", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet" });
    const other = await page.context().newPage();
    await other.goto(page.url());
    await openAll(other);
    await at(other, "wheelbase").fill("2.3");
    await at(page, "body.mass").fill("801");
    for (const one of [page, other]) {
      await expect.poll(() => at(one, "wheelbase").inputValue()).toBe("2.3");
      await expect.poll(() => at(one, "body.mass").inputValue()).toBe("801");
    }
    await page.reload();
    expect(await at(page, "wheelbase").inputValue()).toBe("2.3");
    expect(await at(page, "body.mass").inputValue()).toBe("801");
  });

  it("that are no cars are refused", async () => {
    const { page, errors } = await open("your-car");
    await page.locator("#files").setInputFiles([file("a.json", "{"), file("b.json", '{"kind":1}')]);
    await page.locator(".problem").nth(1).waitFor();
    expect(await page.getByRole("button", { name: "Open it and mend it here" }).count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it("are deleted, and brought back by undo, with the course showing them again", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet" });
    await page.getByRole("button", { name: "Save, and let the course show it" }).click();
    await page.getByRole("button", { name: "Delete: Linnet" }).click();
    await expect.poll(() => status(page)).toBe("Linnet is deleted.");
    expect(await page.getByRole("radio", { name: "Pipit" }).isChecked()).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Undo");
    await page.keyboard.press("Enter");
    expect(await page.getByRole("radio", { name: "Linnet" }).isChecked()).toBe(true);
  });
});

describe("the page", () => {
  it("passes axe in light and dark with all of it open", async () => {
    const { page } = await open("your-car", { bypassCSP: true });
    await typeCar(page, { "front.spring.rate": "9000" });
    await openAll(page);
    expect(await axeFaultsInBoth(page)).toEqual([]);
  });

  it.each([360, 320])("fits a phone of %i px with all of it open", async (width) => {
    const { page } = await open("your-car", { viewport: { width, height: 740 } });
    await typeCar(page, { "front.spring.rate": "9000" });
    await openAll(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
  });

  it("never says that a car is saved where the device refuses it, and keeps what was typed", async () => {
    const { page } = await open("your-car");
    await typeCar(page, { name: "Linnet", wheelbase: "2.3" });
    const refuse = (refusing: boolean) =>
      page.evaluate((refusing) => {
        const full = () => {
          if (refusing) throw new DOMException("full", "QuotaExceededError");
        };
        for (const store of [Storage.prototype, IDBObjectStore.prototype]) {
          const name = "put" in store ? "put" : "setItem";
          const first = Reflect.get(store, `first ${name}`) ?? Reflect.get(store, name);
          Reflect.set(store, `first ${name}`, first);
          Reflect.set(store, name, function (this: unknown, ...given: unknown[]) {
            full();
            return first.apply(this, given);
          });
        }
      }, refusing);
    await refuse(true);
    const said: string[] = [];
    await page.exposeFunction("told", (text: string) => said.push(text));
    await page.locator(".told .status").evaluate((line) =>
      new MutationObserver(() => {
        (window as unknown as { told(text: string): void }).told(line.textContent ?? "");
      }).observe(line, { childList: true, characterData: true, subtree: true }),
    );
    await page.locator("#save").click();
    await told(page, "This device keeps nothing, or is full");
    expect(await at(page, "wheelbase").inputValue()).toBe("2.3");
    const name = "rook.json";
    await page
      .locator("#files")
      .setInputFiles([file(name, formatCar({ ...demoCar, name: "Rook" }))]);
    await page.locator(".colophon .not-kept", { hasText: /Not kept: .*your cars/ }).waitFor();
    expect(said.filter((text) => /is saved|came in/.test(text))).toEqual([]);
    await refuse(false);
    await page.locator("#save").click();
    await told(page, "Linnet is saved.");
    await page.reload();
    expect(await at(page, "wheelbase").inputValue()).toBe("2.3");
    expect(await page.getByRole("radio", { name: "Linnet" }).count()).toBe(1);
  });

  it("is worked by keyboard alone: begin, name, save, choose", async () => {
    const { page } = await open("your-car");
    await page.getByRole("button", { name: "Start from a copy" }).focus();
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("at-name");
    await page.keyboard.press("Control+A");
    await page.keyboard.type("Linnet");
    await page.locator("#save").focus();
    await page.keyboard.press("Space");
    await expect.poll(() => status(page)).toBe("Linnet is saved.");
    await page.getByRole("radio", { name: "Pipit" }).focus();
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => status(page)).toBe("The course now shows Linnet.");
  });

  it("says without JavaScript what it is for and how to measure a car", async () => {
    const { page } = await open("your-car", { javaScriptEnabled: false });
    expect(await page.locator("#your-car dt").count()).toBeGreaterThan(40);
    expect(await page.locator("#your-car").textContent()).toContain("Centre of the front wheel");
    expect(await page.locator("input, button, select").count()).toBe(0);
  });

  it("is found under its former address, with what follows it, from a folder too", async () => {
    for (const former of [`${origin()}/garage.html`, fileUrl("garage")]) {
      const { page, errors } = await open(`${former}?from=link#measure`);
      await page.waitForURL(/your-car\.html\?from=link#measure$/);
      expect(await page.locator("h1").textContent()).toBe("Your car");
      expect(errors).toEqual([]);
    }
    const { page } = await open("garage", { javaScriptEnabled: false });
    await page.waitForURL(/your-car\.html$/);
    expect(await page.locator("h1").textContent()).toBe("Your car");
  });

  it("works in a page opened as a file", async () => {
    const { page, errors, foreign } = await open(fileUrl("your-car"));
    await typeCar(page, { name: "Linnet", "body.mass": "1100" });
    await page.getByRole("button", { name: "Save, and let the course show it" }).click();
    const body = { ...demoCar.body, mass: 1100 };
    await expectChapterFor(page, { ...demoCar, name: "Linnet", body });
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
  });
});

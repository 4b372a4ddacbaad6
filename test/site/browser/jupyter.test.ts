import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { parseHTML } from "linkedom";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readNotebooks } from "../../../site/build/build.js";
import { cachedOutputs } from "../../../site/build/cache.js";
import { frontEndWords } from "../../../site/cells/front-end-words.js";
import { words } from "../../../site/cells/words.js";
import { hasClassicNotebook } from "../../../site/commands/needs.js";
import { useBrowser } from "./browser.js";
import { exported, startClassic } from "./jupyter/classic.js";
import { executed, htmlOf } from "./jupyter/executed.js";
import { labPage } from "./jupyter/lab.js";

const { open } = useBrowser();
const chapter = "00-start-here";

let cells: ReturnType<typeof executed> = [];
beforeAll(() => {
  cells = executed(chapter, "signs-figure", (source) =>
    source.replace("Straight ahead: no", "Straight on, edited: no").replace("start: 6", "start: 5"),
  );
});

/** Pictures and sentences of a result, without what front ends want around them. */
function toldBy(html: string): string[] {
  const { document } = parseHTML(`<body>${html}</body>`);
  const images = [...document.querySelectorAll("img")].map(({ src }) => {
    const { document: own } = parseHTML(decodeURIComponent(src.replace("data:image/svg+xml,", "")));
    own.documentElement.removeAttribute("style");
    return own.documentElement.outerHTML;
  });
  const drawings = [...document.querySelectorAll("svg.panel")].map(({ outerHTML }) => outerHTML);
  const sentences = [...document.querySelectorAll(".says, .worked, .ask")];
  return [...images, ...drawings, ...sentences.map(({ textContent }) => textContent ?? "")];
}

describe("a Jupyter client with the tslab kernel", () => {
  it("runs a chapter from start to end without an error", () => {
    const outputs = cells.flatMap((cell) => cell.outputs ?? []);
    expect(outputs.length).toBeGreaterThan(10);
    expect(outputs.filter(({ output_type }) => output_type !== "display_data")).toEqual([]);
  });

  it("shows the pictures and sentences of the build's own kernel, to the letter", async () => {
    const notebook = readNotebooks().filter(({ name }) => name === chapter);
    const built =
      (await cachedOutputs(notebook, { progress() {}, typesChecked: true })).get(chapter) ?? {};
    for (const cell of cells.filter(({ id }) => built[id])) {
      const told = htmlOf(cell).flatMap(toldBy);
      expect(told.length, cell.id).toBeGreaterThanOrEqual(
        cell.id === "tools" ? 0 : (built[cell.id]?.length ?? 0),
      );
      expect(told, cell.id).toEqual(built[cell.id]?.flatMap(toldBy));
    }
  });

  it("carries what figures run on once, and with each no more than its cells", () => {
    const sizes = cells.flatMap(htmlOf).map(({ length }) => length);
    expect(sizes.filter((size) => size > 100_000)).toHaveLength(1);
  });
});

const alive = (page: Page): Locator => page.locator(".rollbook[data-taken]");
/** How many results of the chapter can live: figures, questions and exercises. */
const living = () =>
  cells.flatMap(htmlOf).filter((html) => html.startsWith('<div class="rollbook" data-')).length;

async function setSlider(figure: Locator, value: number): Promise<void> {
  await figure.locator("input[type=range]").first().fill(String(value));
}

/** Files the first prediction, and sees that its figure opens. */
async function predictAndLook(page: Page): Promise<void> {
  const question = alive(page).filter({ hasText: "you are sure that you felt it" });
  const figure = alive(page).filter({ hasText: "Two changes, and their sum" });
  const slider = figure.locator("input[type=range]").first();
  expect(await slider.isDisabled()).toBe(true);
  await question.getByText("C. That the car is better now").click();
  await question.locator("input[name$=reason]").fill("add two of them");
  await question.getByText(words.confidences[1]).click();
  await question.getByRole("button", { name: words.fileIt }).click();
  expect(await question.locator(".outcome").textContent()).toContain("You said C (fairly sure)");
  expect(await question.locator("details").isVisible()).toBe(false);
  expect(await slider.isDisabled()).toBe(false);
}

async function seeStills(page: Page): Promise<void> {
  await page.getByText(frontEndWords.stillHere).first().waitFor();
  expect(await alive(page).count()).toBe(0);
  const drawn = await page
    .locator(".rollbook img")
    .evaluateAll((images) => images.map((image) => (image as HTMLImageElement).naturalWidth));
  expect(drawn.length).toBeGreaterThan(8);
  expect(drawn.filter((width) => width !== 480)).toEqual([]); // all panels are this wide
  expect(await page.getByText("C. That the car is better now").isVisible()).toBe(true);
  expect(await page.locator(".rollbook").getByText(words.modelSays).first().isVisible()).toBe(
    false,
  );
}

describe("in JupyterLab's own renderer", () => {
  let [url, text] = ["", ""];
  const host = createServer((_, response) => {
    response.setHeader("content-type", "text/html; charset=utf-8").end(text);
  });
  beforeAll(async () => {
    text = await labPage();
    await new Promise<void>((resolve) => host.listen(0, "127.0.0.1", resolve));
    url = `http://127.0.0.1:${(host.address() as AddressInfo).port}/lab.html`;
  });
  afterAll(() => {
    host.close();
    host.closeAllConnections();
  });
  const show = (page: Page, outputs: readonly string[], trusted: boolean) =>
    page.evaluate(
      ([all, is]) =>
        (
          globalThis as unknown as { renderAll(o: readonly string[], t: boolean): Promise<void> }
        ).renderAll(all, is),
      [outputs, trusted] as const,
    );

  it("all of a trusted chapter lives, in whatever order its outputs come, dark as the front end is", async () => {
    const { page, errors } = await open(url);
    await show(page, cells.flatMap(htmlOf).reverse(), true);
    await expect.poll(() => alive(page).count()).toBe(living());
    expect(await page.locator("[data-still]").count()).toBe(0);
    expect(await alive(page).first().getAttribute("data-theme")).toBe("dark");
    const title = page.locator("figcaption").first();
    const ink = await title.evaluate((place) => getComputedStyle(place).color);
    expect(ink).toBe("rgb(230, 228, 221)"); // --ink of the dark theme
    await page.locator("body").evaluate((body) => {
      body.style.background = "#ffffff";
    });
    await expect.poll(() => alive(page).first().getAttribute("data-theme")).toBe("light");
    await predictAndLook(page);
    expect(errors).toEqual([]);
  });

  it("a cell that was edited and run again lives as edited, beside what it was", async () => {
    const { page } = await open(url);
    await show(page, cells.flatMap(htmlOf), true);
    await expect.poll(() => alive(page).count()).toBe(living());
    const both = alive(page).filter({ hasText: "Which way is above zero" });
    const [before, after] = [both.first(), both.last()];
    expect(await after.locator("input[type=range]").inputValue()).toBe("5");
    for (const figure of [before, after]) await setSlider(figure, 0);
    expect(await before.locator(".says").textContent()).toContain("Straight ahead: no lateral");
    expect(await after.locator(".says").textContent()).toContain("Straight on, edited: no lateral");
    const exercise = alive(page).filter({ hasText: "what did the air do?" });
    await exercise.locator("input[type=number]").fill("0.06"); // by hand: −0.10 − (−0.16)
    await exercise.getByRole("button", { name: words.check }).click();
    expect(await exercise.locator(".reply").textContent()).toMatch(/^Right: /);
  });

  it("an untrusted one shows stills, keeps its answers, and says how it would live", async () => {
    const { page } = await open(url);
    await show(page, cells.flatMap(htmlOf), false);
    await seeStills(page);
    expect(await page.getByText(frontEndWords.allStill).isVisible()).toBe(true);
  });
});

const without = hasClassicNotebook()
  ? ""
  : " (skipped: on Debian, apt-get install python3-notebook)";

describe.skipIf(without !== "")(`in the classic notebook${without}`, () => {
  let server: Awaited<ReturnType<typeof startClassic>>;
  beforeAll(async () => {
    server = await startClassic();
  });
  afterAll(() => server.stop());

  it("a trusted chapter lives, folds the cells that hold answers, and keeps its keys", async () => {
    const { page } = await open(`${server.url}/notebooks/${chapter}.ipynb`);
    await expect.poll(() => alive(page).count()).toBe(living());
    expect(await page.getByText('id: "two-changes",').isVisible()).toBe(false);
    expect(await page.getByText('id: "why-back"').first().isVisible()).toBe(true);
    const count = await page.locator(".cell").count();
    await predictAndLook(page);
    const figure = alive(page).filter({ hasText: "Which way is above zero" }).first();
    await setSlider(figure, 0);
    expect(await figure.locator(".says").textContent()).toContain("Straight ahead: no lateral");
    await alive(page).locator(".checking input").first().click();
    await page.keyboard.type("dd1"); // in command mode this deletes a cell
    expect(await page.locator(".cell").count()).toBe(count);
  });

  it("an untrusted one shows stills", async () => {
    const { page } = await open(`${server.url}/notebooks/unsigned.ipynb`);
    await seeStills(page);
  });

  it("the static page that nbconvert makes lives too", async () => {
    const { page } = await open(exported(chapter));
    await expect.poll(() => alive(page).count()).toBe(living());
  });
});

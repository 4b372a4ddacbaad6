import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { eachChapter, fileAllPredictions, shownBy, useBrowser } from "./browser.js";
import { pictureText } from "./picture-text.js";
import { measureWords } from "./words-outside.js";

const { open, fileUrl } = useBrowser();

/** Id of each live figure with the ids of its sliders, and of its rows of named settings. */
const figuresOn = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll(".figure[data-live]")].map((figure) => ({
      id: figure.id,
      sliders: [...figure.querySelectorAll("input[type=range]")].map(({ id }) => id),
      named: [...figure.querySelectorAll(".slider.named")].map(({ id }) => id),
    })),
  );

const NUMBER = /-?\d+\.?\d*/g;

/**
 * The kernel left the first picture, the page's own engine paints it anew: their sines differ in the
 * last digit, and a hardest turn or margin by up to 0.0001 m/s². Words are the same, lengths within a quarter of a pixel.
 */
function expectAlike(now: string, before: string, what: string): void {
  expect(now.replace(NUMBER, "#"), what).toBe(before.replace(NUMBER, "#"));
  const [a, b] = [now, before].map((text) => (text.match(NUMBER) ?? []).map(Number));
  const apart = (a ?? []).map((value, i) => Math.abs(value - (b?.[i] ?? Number.NaN)));
  expect(Math.max(0, ...apart), what).toBeLessThanOrEqual(0.25);
}

/** In every corner of its sliders' ranges a figure has numbers only, and its words inside the picture. */
async function expectWordsInside(page: Page) {
  for (const { id, sliders, named } of await figuresOn(page)) {
    const faults = await page.locator(`#${id}`).evaluate(
      (figure, ids) => {
        const movers = ids.map((one) => {
          const mover = document.getElementById(one) as HTMLElement;
          const buttons = [...mover.querySelectorAll("button")];
          if (!(mover instanceof HTMLInputElement))
            return (most: boolean) => buttons.at(most ? -1 : 0)?.click();
          return (most: boolean) => {
            mover.value = most ? mover.max : mover.min;
            mover.dispatchEvent(new Event("input", { bubbles: true }));
          };
        });
        const found: string[] = [];
        for (let corner = 0; corner < 2 ** movers.length; corner += 1) {
          for (const [index, move] of movers.entries()) move(((corner >> index) & 1) === 1);
          const parts = [...figure.querySelectorAll("[data-layer] *, .says")];
          const bad = parts
            .flatMap((part) => [
              ...[...part.attributes].map(({ value }) => value),
              part.textContent,
            ])
            .filter((text) => /NaN|Infinity|undefined|Not drawn/.test(text ?? ""));
          const lost = window.wordsOutside(figure);
          found.push(...[...bad, ...lost].map((what) => `corner ${corner}: ${what}`));
        }
        return found;
      },
      [...sliders, ...named],
    );
    expect(faults, id).toEqual([]);
  }
}

/** What is wrong with a figure's table: columns of one name, a row cut short, words in place of numbers, a slider that it does not follow. Runs in the page. */
function tableFaults(figure: Element): string[] {
  const fold = figure.querySelector("details.numbers") as HTMLDetailsElement;
  const tables = [...fold.querySelectorAll("table")];
  const faults = tables.length > 0 ? [] : ["no table"];
  for (const { tHead, tBodies } of tables) {
    const head = [...(tHead?.rows[0]?.cells ?? [])].map(({ textContent }) => textContent);
    const rows = [...(tBodies[0]?.rows ?? [])];
    if (new Set(head).size !== head.length) faults.push(`two columns of one name: ${head}`);
    if (rows.length === 0 || rows.some(({ cells }) => cells.length !== head.length))
      faults.push(`rows do not fit ${head}`);
  }
  const sliders = [...figure.querySelectorAll<HTMLInputElement>("input[type=range]")];
  const before = fold.textContent;
  for (const slider of sliders) {
    slider.value = slider.value === slider.max ? slider.min : slider.max;
    slider.dispatchEvent(new Event("input", { bubbles: true }));
  }
  if (sliders.length > 0 && fold.textContent === before) faults.push("does not follow");
  if (/NaN|undefined|Infinity/.test(`${before} ${fold.textContent}`)) faults.push("no number");
  return faults;
}

async function expectTables(page: Page) {
  const folds = page.locator(".figure[data-live] > details.numbers");
  await folds.evaluateAll((all) => {
    for (const fold of all as HTMLDetailsElement[]) fold.open = true;
  });
  for (const { id } of await figuresOn(page)) {
    const figure = page.locator(`#${id}`);
    await figure.locator("details.numbers table").first().waitFor();
    expect(await figure.evaluate(tableFaults), id).toEqual([]);
  }
}

/** A slider's row, and where its range lies once it is in view. Runs in the page. */
function rangeNow(input: Element) {
  input.scrollIntoView({ block: "center", behavior: "instant" });
  return input.getBoundingClientRect().toJSON() as DOMRect;
}

/**
 * What is wrong with a figure's rows of sliders for who has a mouse: something lies over a range, a step
 * button or a number box, a click on a button or a typed number moves nothing. Runs in the page.
 */
function rowFaults(figure: Element): string[] {
  const within = (part: Element, share: number) => {
    part.scrollIntoView({ block: "nearest", behavior: "instant" });
    const { x, y, width, height } = part.getBoundingClientRect();
    const on = document.elementFromPoint(x + width * share, y + height / 2);
    return on !== null && (part.contains(on) || on.contains(part));
  };
  return [...figure.querySelectorAll(".slider:has(input[type=range])")].flatMap((row) => {
    const [range, box] = [...row.querySelectorAll("input")] as [HTMLInputElement, HTMLInputElement];
    const [down, up] = [...row.querySelectorAll("button")] as [
      HTMLButtonElement,
      HTMLButtonElement,
    ];
    const moves = (act: () => void, how: string): string[] => {
      const before = box.value;
      act();
      return box.value === before ? [`${range.id} by ${how}`] : [];
    };
    const type = () => {
      box.value = range.min;
      box.dispatchEvent(new Event("input", { bubbles: true }));
    };
    const covered = [range, box, down, up].filter((part) =>
      [0.1, 0.5, 0.85].some((share) => !within(part, share)),
    );
    range.value = String((Number(range.min) + Number(range.max)) / 2);
    range.dispatchEvent(new Event("input", { bubbles: true }));
    return [
      ...covered.map(({ outerHTML }) => `${range.id}: something lies over ${outerHTML}`),
      ...moves(() => up.click(), "step up"),
      ...moves(() => down.click(), "step down"),
      ...moves(type, "number box"),
      ...(range.value === range.min ? [] : [`${range.id} does not follow its number box`]),
    ];
  });
}

/** The page starts, live, from the very picture that the kernel left. */
async function expectKernelPictures(page: Page) {
  const left = await (await page.request.get(page.url())).text();
  const ids = (await figuresOn(page)).map(({ id }) => id);
  expect(ids.length).toBeGreaterThanOrEqual(3);
  const still = await page.evaluateHandle(
    (html) => new DOMParser().parseFromString(html, "text/html"),
    left,
  );
  for (const id of ids) {
    const figure = await still.evaluateHandle((page, one) => page.getElementById(one), id);
    expect(await shownBy(page, id), id).toBe(await figure.evaluate(pictureText as never));
  }
}

/** What a figure shows and its axes, noted in the page to be compared there: pictures are long to send. */
interface Noted {
  readonly figure: Element;
  readonly axes: string;
  shown: string;
}

declare global {
  interface Window {
    noted: Noted;
    pictureText: typeof pictureText;
    axesOf: typeof axesOf;
  }
}

/** A figure's pictures without what moves in them. Runs in the page. */
function axesOf(figure: Element): string {
  const copy = figure.cloneNode(true) as Element;
  for (const layer of copy.querySelectorAll("[data-layer]")) layer.remove();
  return [...copy.querySelectorAll("svg")].map((svg) => svg.outerHTML).join("");
}

/** Notes a figure as it stands; gives what it shows. Runs in the page. */
function note(id: string): string {
  const figure = document.getElementById(id) as Element;
  const shown = window.pictureText(figure);
  window.noted = { figure, axes: window.axesOf(figure), shown };
  return shown;
}

/** Focuses a slider; gives the key that moves it furthest. Runs in the page. */
function takeHold(id: string): "Home" | "End" {
  const slider = document.getElementById(id) as HTMLInputElement;
  slider.focus();
  return slider.value === slider.max ? "Home" : "End";
}

/** Focuses the last named setting of a row that is not chosen. Runs in the page. */
function takeHoldOfOther(row: string): "Enter" {
  const others = `#${row} button:not([aria-pressed=true])`;
  [...document.querySelectorAll<HTMLButtonElement>(others)].at(-1)?.focus();
  return "Enter";
}

/** Whether the figure shows anything else than before, how many settings of a row are chosen, whether the axes stand. Runs in the page. */
function changes(row: string) {
  const { noted } = window;
  const before = noted.shown;
  noted.shown = window.pictureText(noted.figure);
  return {
    moved: noted.shown !== before,
    chosen: document.querySelectorAll(`#${row} button[aria-pressed=true]`).length,
    held: window.axesOf(noted.figure) === noted.axes,
  };
}

/** Figures follow every slider by keyboard, hold their axes, and go back on reset. */
async function expectKeyboard(page: Page) {
  await page.evaluate(`window.pictureText = ${pictureText}; window.axesOf = ${axesOf}`);
  for (const { id, sliders, named } of await figuresOn(page)) {
    if (sliders.length + named.length === 0) continue; // it stands still
    const start = await page.evaluate(note, id);
    for (const slider of sliders) {
      await page.keyboard.press(await page.evaluate(takeHold, slider));
      const { moved, held } = await page.evaluate(changes, slider);
      expect({ slider, moved, held }).toEqual({ slider, moved: true, held: true });
    }
    for (const row of named) {
      await page.keyboard.press(await page.evaluate(takeHoldOfOther, row));
      const { moved, held, chosen } = await page.evaluate(changes, row);
      expect({ row, moved, held, chosen }).toEqual({ row, moved: true, held: true, chosen: 1 });
    }
    await page.locator(`#${id} button.reset`).click();
    expectAlike(await shownBy(page, id), start, `${id} goes back`);
  }
}

/** Figures follow every slider by step buttons and number box, with nothing lying over any; and one by a real mouse. */
async function expectMouse(page: Page) {
  const figures = await figuresOn(page);
  for (const { id } of figures)
    expect(await page.locator(`#${id}`).evaluate(rowFaults)).toEqual([]);
  const [slider] = figures.flatMap(({ sliders }) => sliders);
  if (slider === undefined) return;
  const range = page.locator(`#${slider}`);
  for (const share of [0.85, 0.1]) {
    const before = await range.inputValue();
    const { x, y, width, height } = await range.evaluate(rangeNow); // its place moves as sentences grow
    await page.mouse.click(x + width * share, y + height / 2);
    expect(await range.inputValue(), `${slider} by mouse`).not.toBe(before);
  }
}

describe.each(eachChapter)("figures of %s", (chapter) => {
  it("start, live, from the very picture that the kernel left; follow every slider by keyboard, mouse, step buttons and number box; hold their axes, go back on reset, keep words inside the picture in every corner, and stand in a table too", async () => {
    const { page, errors } = await open(chapter, { bypassCSP: true }); // to read what the kernel left
    await expectKernelPictures(page);
    await fileAllPredictions(page);
    await expectKeyboard(page);
    await measureWords(page); // from here on all of the page is laid out
    await expectMouse(page);
    await expectWordsInside(page);
    await expectTables(page);
    expect(errors).toEqual([]);
  });

  it("are live in a page opened as a file, which asks no other host for anything", async () => {
    const { page, errors, foreign } = await open(fileUrl(chapter));
    expect((await figuresOn(page)).length).toBeGreaterThanOrEqual(3);
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
  });
});

describe("who listens to a figure", () => {
  it("hears its sentence once, when the slider stands still, and does not come upon it again", async () => {
    const { page } = await open("01-load-transfer");
    const aloud = page.locator("#turn-and-tip .aloud");
    const said = () => aloud.textContent();
    expect(await said()).toBe("");
    await page.locator("#turn-and-tip-track-range").focus();
    const heard = await page.evaluate(() => {
      const texts: string[] = [];
      const region = document.querySelector("#turn-and-tip .aloud");
      if (!region) return texts;
      new MutationObserver(() => {
        if (region.textContent) texts.push(region.textContent);
      }).observe(region, { childList: true });
      return Object.assign(window, { texts }).texts;
    });
    expect(heard).toEqual([]);
    for (let press = 0; press < 8; press += 1) await page.keyboard.press("ArrowRight");
    const sentence = await page.locator("#turn-and-tip .says").textContent();
    await page.waitForFunction(() => (window as unknown as { texts: string[] }).texts.length > 0);
    expect(await page.evaluate(() => (window as unknown as { texts: string[] }).texts)).toEqual([
      sentence,
    ]);
    await page.waitForFunction(
      () => document.querySelector("#turn-and-tip .aloud")?.textContent === "",
    );
  });
});

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { eachChapter, fileAllPredictions, shownBy, useBrowser } from "./browser.js";
import { pictureText } from "./picture-text.js";

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
        const outside = (svg: Element) => {
          const frame = svg.getBoundingClientRect();
          return [...svg.querySelectorAll("[data-layer] text")]
            .map((text) => [text.textContent, text.getBoundingClientRect()] as const)
            .filter(([, { left, right, top, bottom }]) => {
              const across = left < frame.left - 4 || right > frame.right + 4;
              return across || top < frame.top - 4 || bottom > frame.bottom + 4;
            })
            .map(([text]) => `outside: ${text}`);
        };
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
          const lost = [...figure.querySelectorAll("svg.panel")].flatMap(outside);
          found.push(...[...bad, ...lost].map((what) => `corner ${corner}: ${what}`));
        }
        return found;
      },
      [...sliders, ...named],
    );
    expect(faults, id).toEqual([]);
  }
}

/** Each figure stands in a table too, with its columns named apart, which follows the sliders. */
async function expectTables(page: Page) {
  for (const { id, sliders } of await figuresOn(page)) {
    const fold = page.locator(`#${id} > details.numbers`);
    await fold.locator("summary").click();
    await fold.locator("table").first().waitFor();
    const tables = await fold.locator("table").evaluateAll((all) =>
      (all as HTMLTableElement[]).map(({ tHead, tBodies }) => ({
        head: [...(tHead?.rows[0]?.cells ?? [])].map(({ textContent }) => textContent),
        cells: [...(tBodies[0]?.rows ?? [])].map(({ cells }) => cells.length),
      })),
    );
    expect(tables.length, id).toBeGreaterThan(0);
    for (const { head, cells } of tables) {
      expect(new Set(head).size, `${id}: ${head}`).toBe(head.length);
      expect(cells.length, id).toBeGreaterThan(0);
      expect(new Set(cells), id).toEqual(new Set([head.length]));
    }
    const before = await fold.textContent();
    for (const slider of sliders) {
      await page.locator(`#${slider}`).press("End");
      if ((await fold.textContent()) === before) await page.locator(`#${slider}`).press("Home");
    }
    if (sliders.length > 0) expect(await fold.textContent(), `${id} follows`).not.toBe(before);
    expect(await fold.textContent(), id).not.toMatch(/NaN|undefined|Infinity/);
  }
}

/** Where the parts of a slider's row are, once it is in view. Runs in the page. */
function rowNow(row: Element) {
  row.scrollIntoView({ block: "center", behavior: "instant" });
  const input = row.querySelector("input[type=range]") as HTMLInputElement;
  const middleOf = (part: Element) => {
    const { x, y, width, height } = part.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  };
  const { min, max, valueAsNumber } = input;
  return {
    range: input.getBoundingClientRect().toJSON() as DOMRect,
    buttons: [...row.querySelectorAll("button")].map(middleOf),
    low: valueAsNumber < (Number(min) + Number(max)) / 2,
    least: min,
  };
}

/** What the number box of a slider's row holds. Runs in the page. */
const numberIn = (row: Element): string =>
  (row.querySelector("input[type=number]") as HTMLInputElement).value;

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

/** Figures follow every slider by keyboard, hold their axes, and go back on reset. */
async function expectKeyboard(page: Page) {
  for (const { id, sliders, named } of await figuresOn(page)) {
    if (sliders.length + named.length === 0) continue; // it stands still
    const frame = () =>
      page.locator(`#${id}`).evaluate((figure) => {
        const copy = figure.cloneNode(true) as Element;
        for (const layer of copy.querySelectorAll("[data-layer]")) layer.remove();
        return [...copy.querySelectorAll("svg")].map((svg) => svg.outerHTML).join("");
      });
    const [start, axes] = [await shownBy(page, id), await frame()];
    for (const slider of sliders) {
      const before = await shownBy(page, id);
      await page.locator(`#${slider}`).focus();
      const atEnd = await page.locator(`#${slider}`).evaluate((input) => {
        const { value, max } = input as HTMLInputElement;
        return value === max;
      });
      await page.keyboard.press(atEnd ? "Home" : "End");
      expect(await shownBy(page, id), `${slider} moves its figure`).not.toBe(before);
    }
    for (const row of named) {
      const before = await shownBy(page, id);
      await page.locator(`#${row} button:not([aria-pressed=true])`).last().focus();
      await page.keyboard.press("Enter");
      expect(await page.locator(`#${row} button[aria-pressed=true]`).count()).toBe(1);
      expect(await shownBy(page, id), `${row} moves its figure`).not.toBe(before);
    }
    expect(await frame(), `${id} holds its axes`).toBe(axes);
    await page.locator(`#${id} button.reset`).click();
    expectAlike(await shownBy(page, id), start, `${id} goes back`);
  }
}

/** Figures follow every slider by mouse, step buttons and number box. */
async function expectMouse(page: Page) {
  for (const { id, sliders } of await figuresOn(page)) {
    for (const slider of sliders) {
      const row = page.locator(`#${id} .slider`, { has: page.locator(`#${slider}`) });
      const now = () => row.evaluate(rowNow); // its place moves as sentences grow
      const { low, least } = await now();
      const moves = async (act: () => Promise<void>, how: string) => {
        const before = await row.evaluate(numberIn);
        await act();
        expect(await row.evaluate(numberIn), `${slider} by ${how}`).not.toBe(before);
      };
      for (const share of low ? [0.85, 0.1] : [0.1, 0.85])
        await moves(async () => {
          const { x, y, width, height } = (await now()).range;
          await page.mouse.click(x + width * share, y + height / 2);
        }, "mouse");
      const atLeast = await row.locator("button").first().isDisabled();
      for (const which of atLeast ? [1, 0, 1] : [0, 1])
        await moves(async () => {
          const { x = 0, y = 0 } = (await now()).buttons[which] ?? {};
          await page.mouse.click(x, y);
        }, "step button");
      await moves(() => row.locator("input[type=number]").fill(least), "number box");
      expect(await row.locator("input[type=range]").inputValue()).toBe(least);
    }
  }
}

describe.each(eachChapter)("figures of %s", (chapter) => {
  it("start, live, from the very picture that the kernel left; follow every slider by keyboard, mouse, step buttons and number box; hold their axes, go back on reset, keep words inside the picture in every corner, and stand in a table too", async () => {
    const { page, errors } = await open(chapter, { bypassCSP: true }); // to read what the kernel left
    await expectKernelPictures(page);
    await fileAllPredictions(page);
    await expectKeyboard(page);
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

import { describe, expect, it } from "vitest";
import { eachChapter, fileAllPredictions, shownBy, useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();

/** Id of each live figure with the ids of its sliders. */
const figuresOn = (page: Awaited<ReturnType<typeof open>>["page"]) =>
  page.evaluate(() =>
    [...document.querySelectorAll(".figure[data-live]")].map((figure) => ({
      id: figure.id,
      sliders: [...figure.querySelectorAll("input[type=range]")].map(({ id }) => id),
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

describe.each(eachChapter)("figures of %s", (chapter) => {
  it("start, live, from the very picture that the kernel left", async () => {
    const still = await open(chapter, { javaScriptEnabled: false });
    const live = await open(chapter);
    const ids = (await figuresOn(live.page)).map(({ id }) => id);
    expect(ids.length).toBeGreaterThanOrEqual(3);
    for (const id of ids) {
      expect(await shownBy(live.page, id), id).toBe(await shownBy(still.page, id));
    }
  });

  it("follow every slider by keyboard, hold their axes, and go back on reset", async () => {
    const { page, errors } = await open(chapter);
    await fileAllPredictions(page);
    for (const { id, sliders } of await figuresOn(page)) {
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
      expect(await frame(), `${id} holds its axes`).toBe(axes);
      await page.locator(`#${id} button.reset`).click();
      expectAlike(await shownBy(page, id), start, `${id} goes back`);
    }
    expect(errors).toEqual([]);
  });

  it("follow every slider by mouse, step buttons and number box", async () => {
    const { page } = await open(chapter);
    await fileAllPredictions(page);
    for (const { id, sliders } of await figuresOn(page)) {
      for (const slider of sliders) {
        const row = page.locator(`#${id} .slider`, { has: page.locator(`#${slider}`) });
        const moves = async (act: () => Promise<void>, how: string) => {
          const before = await row.locator("input[type=number]").inputValue();
          await act();
          const after = await row.locator("input[type=number]").inputValue();
          expect(after, `${slider} by ${how}`).not.toBe(before);
        };
        const box = await row.locator("input[type=range]").boundingBox();
        if (!box) throw new Error(`${slider} is not on the page`);
        const at = (share: number) => ({ position: { x: box.width * share, y: box.height / 2 } });
        const low = await row.locator("input[type=range]").evaluate((input) => {
          const { min, max, valueAsNumber } = input as HTMLInputElement;
          return valueAsNumber < (Number(min) + Number(max)) / 2;
        });
        const ends = low ? [0.85, 0.1] : [0.1, 0.85];
        for (const share of ends)
          await moves(() => row.locator("input[type=range]").click(at(share)), "mouse");
        const less = row.getByRole("button", { name: "one step less" });
        const more = row.getByRole("button", { name: "one step more" });
        const presses = (await less.isDisabled()) ? [more, less, more] : [less, more];
        for (const button of presses) await moves(() => button.click(), "step button");
        const least = (await row.locator("input[type=range]").getAttribute("min")) ?? "";
        await moves(() => row.locator("input[type=number]").fill(least), "number box");
        expect(await row.locator("input[type=range]").inputValue()).toBe(least);
      }
    }
  });

  it("show no NaN and keep their words inside the picture in every corner of their ranges", async () => {
    const { page } = await open(chapter);
    await fileAllPredictions(page);
    for (const { id, sliders } of await figuresOn(page)) {
      for (let corner = 0; corner < 2 ** sliders.length; corner += 1) {
        for (const [index, slider] of sliders.entries()) {
          await page.locator(`#${slider}`).focus();
          await page.keyboard.press((corner >> index) & 1 ? "End" : "Home");
        }
        const shown = await shownBy(page, id);
        expect(shown, `${id}, corner ${corner}`).not.toMatch(/NaN|Infinity|undefined|Not drawn/);
        const outside = await page.locator(`#${id}`).evaluate((figure) =>
          [...figure.querySelectorAll("svg.panel")].flatMap((svg) => {
            const frame = svg.getBoundingClientRect();
            return [...svg.querySelectorAll("[data-layer] text")]
              .map((text) => [text.textContent, text.getBoundingClientRect()] as const)
              .filter(([, { left, right, top, bottom }]) => {
                const across = left < frame.left - 4 || right > frame.right + 4;
                return across || top < frame.top - 4 || bottom > frame.bottom + 4;
              })
              .map(([text]) => text);
          }),
        );
        expect(outside, `${id}, corner ${corner}`).toEqual([]);
      }
    }
  });

  it("stand in a table too, with its columns named apart, which follows the sliders", async () => {
    const { page, errors } = await open(chapter);
    await fileAllPredictions(page);
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
      expect(await fold.textContent(), `${id} follows`).not.toBe(before);
      expect(await fold.textContent(), id).not.toMatch(/NaN|undefined|Infinity/);
    }
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

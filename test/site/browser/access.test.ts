import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { eachPage, fileAllPredictions, type Opening, useBrowser } from "./browser.js";

const { open: openWith } = useBrowser();

/** Nothing here looks at what workers find. */
const open = (name: string, options: Opening = {}) =>
  openWith(name, { silentWorkers: true, ...options });

interface Stop {
  readonly name: string;
  readonly seen: boolean;
  readonly ring: boolean;
}

/** Notes of every Tab where it led: a name, whether anything lies over it, whether it has a ring. Runs in the page. */
function noteStops(): void {
  const noted: (Stop | null)[] = [];
  Object.assign(window, { noted });
  const stop = () => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement) || at === document.body) return null;
    const [line = new DOMRect()] = at.getClientRects(); // the first line of a link that breaks
    const { left, right, top, bottom } = line;
    const [x, y] = [(left + right) / 2, (top + bottom) / 2];
    const on = document.elementFromPoint(x, y);
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    return {
      name: `${at.tagName} ${at.id} ${at.textContent?.slice(0, 30)}`,
      seen: on !== null && (at.contains(on) || on.contains(at) || on.tagName === "LABEL"),
      ring: outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2,
    };
  };
  addEventListener("keyup", () => noted.push(stop()), { capture: true });
}

/** What was noted; `null` where the focus has left the page. */
const stopsOf = (page: Page) =>
  page.evaluate(() => (window as unknown as { noted: (Stop | null)[] }).noted);

describe.each(eachPage)("page %s", (name) => {
  it("shows the focus wherever the Tab key takes it, and lets it out again", async () => {
    const { page } = await open(name);
    await page.evaluate(noteStops);
    let stops: readonly (Stop | null)[] = [];
    while (stops.length < 400 && !stops.includes(null)) {
      for (let press = 0; press < 10; press += 1) await page.keyboard.press("Tab");
      stops = await stopsOf(page);
    }
    expect(stops, "the focus leaves the page at its end").toContain(null);
    const until = stops.slice(0, stops.indexOf(null)).filter((stop) => stop !== null);
    for (const stop of until) expect(stop).toMatchObject({ seen: true, ring: true });
    expect(new Set(until.map(({ name }) => name)).size).toBeGreaterThan(5);
  });

  it("keeps its words on the page when text is twice as large", async () => {
    const { page } = await open(name);
    await fileAllPredictions(page);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(1280);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll("button, summary, label, th, td, h1, h2, .says, a")]
        .filter((part) => part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0)
        .filter((part) => getComputedStyle(part).overflowX !== "visible")
        .map(({ outerHTML }) => outerHTML.slice(0, 80)),
    );
    expect(cut).toEqual([]);
  });

  it("moves nothing by itself for those who asked for less motion, and keeps lines and words of its figures apart from their ground in forced colours", async () => {
    const { page } = await open(name, { reducedMotion: "reduce" });
    await fileAllPredictions(page);
    const moving = await page.evaluate(() => ({
      animations: document.getAnimations().length,
      scrolling: getComputedStyle(document.documentElement).scrollBehavior,
    }));
    expect(moving).toEqual({ animations: 0, scrolling: "auto" });

    await page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
    const faint = await page.evaluate(() => {
      const parts = (colour: string) => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
      const light = (colour: string) => {
        const [r = 0, g = 0, b = 0] = parts(colour).map((part) => {
          const share = part / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const contrast = (one: string, other: string) => {
        const [low = 0, high = 0] = [light(one), light(other)].sort((a, b) => a - b);
        return (high + 0.05) / (low + 0.05);
      };
      return [...document.querySelectorAll<SVGElement>(".figure [data-layer] > *")].flatMap(
        (mark) => {
          const figure = mark.closest(".figure");
          if (!figure) return [];
          const ground = getComputedStyle(figure).backgroundColor;
          const { stroke, fill, strokeOpacity } = getComputedStyle(mark);
          const haloed = mark.tagName === "text" || mark.getAttribute("stroke")?.includes("paper");
          const colour = haloed ? fill : stroke;
          if (colour === "none" || Number(strokeOpacity) < 0.5) return [];
          return contrast(colour, ground) < 3
            ? [`${mark.outerHTML.slice(0, 90)} ${colour} on ${ground}`]
            : [];
        },
      );
    });
    expect(faint).toEqual([]);
  });
});

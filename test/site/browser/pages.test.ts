import type { CDPSession, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { axeFaults, axeFaultsInDark } from "./axe.js";
import { eachPage, fileAllPredictions, useBrowser } from "./browser.js";
import { fileEvery } from "./file-every.js";

const { open } = useBrowser();

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

/** Presses Tab so many times as a hand does; each press is sent before the one before it is answered, and they keep their order. */
async function pressTab(session: CDPSession, times: number): Promise<void> {
  const key = { key: "Tab", code: "Tab", windowsVirtualKeyCode: 9 };
  const strokes = Array.from({ length: times }, () => ["rawKeyDown", "keyUp"] as const).flat();
  await Promise.all(
    strokes.map((type) => session.send("Input.dispatchKeyEvent", { type, ...key })),
  );
}

/** Wherever the Tab key leads, the focus is seen, and it is let out again. */
async function expectFocusSeen(page: Page): Promise<void> {
  await page.evaluate(noteStops);
  const session = await page.context().newCDPSession(page);
  let stops: readonly (Stop | null)[] = [];
  while (stops.length < 400 && !stops.includes(null)) {
    await pressTab(session, 20);
    stops = await stopsOf(page);
  }
  await session.detach();
  expect(stops, "the focus leaves the page at its end").toContain(null);
  const until = stops.slice(0, stops.indexOf(null)).filter((stop) => stop !== null);
  for (const stop of until) expect(stop).toMatchObject({ seen: true, ring: true });
  expect(new Set(until.map(({ name }) => name)).size).toBeGreaterThan(5);
}

/** Whether there is such a file; each is asked for once for all pages. */
const found = new Map<string, Promise<boolean>>();
const isThere = (address: string): Promise<boolean> => {
  const answer = found.get(address) ?? fetch(address, { method: "HEAD" }).then(({ ok }) => ok);
  found.set(address, answer);
  return answer;
};

/** The links of a page, each once: where they lead, and how many elements of this page they name. Runs in the page. */
const linksOf = () =>
  [...new Set([...document.querySelectorAll("a[href]")].map((a) => a.getAttribute("href") ?? ""))]
    .map((link) => [link, ...link.split("#")] as const)
    .map(([link, file = "", anchor = ""]) => ({
      link,
      file: file && new URL(file, location.href).href,
      named: anchor && document.querySelectorAll(`[id="${CSS.escape(anchor)}"]`).length,
    }));

async function expectLinksLead(page: Page): Promise<void> {
  for (const { link, file, named } of await page.evaluate(linksOf)) {
    if (file) expect(await isThere(file), link).toBe(true);
    else if (named !== "") expect(named, link).toBe(1);
  }
}

const scrollWidth = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth);

/** No side scroll and a head of one line on a phone; no side scroll where text is twice as large, and no word cut off there. */
async function expectWordsInside(page: Page): Promise<void> {
  for (const width of [360, 320]) {
    await page.setViewportSize({ width, height: 740 });
    expect(await scrollWidth(page), `at ${width} px`).toBeLessThanOrEqual(width);
    const head = await page.locator(".masthead").boundingBox();
    expect(head?.height, `a head of one line at ${width} px`).toBeLessThan(64);
  }
  await page.setViewportSize({ width: 1280, height: 900 });
  const cut = await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
    return [...document.querySelectorAll("button, summary, label, th, td, h1, h2, .says, a")]
      .filter((part) => part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0)
      .filter((part) => getComputedStyle(part).overflowX !== "visible")
      .map(({ outerHTML }) => outerHTML.slice(0, 80));
  });
  expect(cut).toEqual([]);
  expect(await scrollWidth(page), "text twice as large").toBeLessThanOrEqual(1280);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "";
  });
}

/** Lines and words of figures that can hardly be told from their ground. Runs in the page. */
function faintMarks(): string[] {
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
  return [...document.querySelectorAll<SVGElement>(".figure [data-layer] > *")].flatMap((mark) => {
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
  });
}

/** What a page without scripts has. Runs in the page. */
function stillParts() {
  const count = (selector: string) => document.querySelectorAll(selector).length;
  return {
    titles: count("h1"),
    controls: count("input, button, fieldset"),
    unfolded: count(".exercise details[open]"),
    figures: [...document.querySelectorAll(".figure")].map((figure) => ({
      id: figure.id,
      marks: figure.querySelectorAll("svg.panel [data-layer] *").length,
      sentences: [...figure.querySelectorAll(".says")].map(({ textContent }) => textContent),
    })),
  };
}

/** Runs in the page. */
function openFolds(): void {
  for (const fold of document.querySelectorAll("details")) fold.open = true;
}

describe.each(eachPage)("page %s", (name) => {
  it("logs no error, asks no other host for anything, shows the focus wherever the Tab key takes it, has only links that lead somewhere, and prints without controls", async () => {
    const { page, errors, foreign } = await open(name);
    await expectFocusSeen(page);
    await page.locator(".offline:not(:empty)").waitFor(); // said last of all, once the page is loaded
    await expectLinksLead(page);
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);

    await page.emulateMedia({ media: "print" });
    expect(await page.locator("button:visible, input:visible, nav:visible").count()).toBe(0);
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("passes axe with all folds open, with a prediction still to file in light and with none in dark; keeps its words inside on a phone and when text is twice as large; and for those who asked for it moves nothing and keeps figures apart from their ground", async () => {
    // what workers find changes neither widths nor colours
    const { page } = await open(name, {
      silentWorkers: true,
      bypassCSP: true,
      reducedMotion: "reduce",
    });
    await page.evaluate(fileEvery, true); // one is left as it stands before it is filed
    await page.evaluate(openFolds);
    expect(await axeFaults(page)).toEqual([]);
    await fileAllPredictions(page);
    expect(await axeFaultsInDark(page)).toEqual([]);
    const moving = await page.evaluate(() => ({
      animations: document.getAnimations().length,
      scrolling: getComputedStyle(document.documentElement).scrollBehavior,
    }));
    expect(moving).toEqual({ animations: 0, scrolling: "auto" });
    await expectWordsInside(page);
    await page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
    expect(await page.evaluate(faintMarks)).toEqual([]);
  });

  it("is whole without JavaScript: pictures, sentences, folded answers, and no dead control", async () => {
    const { page } = await open(name, { javaScriptEnabled: false });
    const { titles, controls, figures, unfolded } = await page.evaluate(stillParts);
    expect([titles, controls, unfolded]).toEqual([1, 0, 0]);
    for (const { id, marks, sentences } of figures) {
      expect(marks, id).toBeGreaterThan(0);
      expect(sentences, id).toHaveLength(1);
      expect(sentences[0]?.length, id).toBeGreaterThan(20);
    }
  });
});

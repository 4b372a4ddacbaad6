import type { Page } from "playwright-core";

declare global {
  interface Window {
    wordsOutside: typeof wordsOutside;
  }
}

/** Words of the panels within this that reach over their panel's edge. Runs in the page. */
function wordsOutside(within: Element): string[] {
  return [...within.querySelectorAll("svg.panel")].flatMap((svg) => {
    const frame = svg.getBoundingClientRect();
    return [...svg.querySelectorAll("[data-layer] text, [data-frame] text")]
      .map((text) => [text.textContent, text.getBoundingClientRect()] as const)
      .filter(([, { left, right, top, bottom }]) => {
        const across = left < frame.left - 4 || right > frame.right + 4;
        return across || top < frame.top - 4 || bottom > frame.bottom + 4;
      })
      .map(([text]) => `${svg.getAttribute("aria-label")}: ${text}`);
  });
}

/**
 * Gives the page `window.wordsOutside` and lays all of it out: a part far below the window is passed
 * over until it comes near (`content-visibility`), and a place asked for in it may be an old one.
 */
export async function measureWords(page: Page): Promise<void> {
  await page.evaluate(`window.wordsOutside = ${wordsOutside}`);
  await page.evaluate(async () => {
    for (const part of document.querySelectorAll<HTMLElement>(".part"))
      part.style.contentVisibility = "visible";
    await document.fonts.ready;
    for (const _ of [1, 2]) await new Promise(requestAnimationFrame);
  });
}

import type { Page } from "playwright-core";
import { layOut } from "./laid-out.js";

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

/** Gives a page `window.wordsOutside`, and lays all of it out. */
export async function measureWords(page: Page): Promise<void> {
  await page.evaluate(`window.wordsOutside = ${wordsOutside}`);
  await layOut(page);
}

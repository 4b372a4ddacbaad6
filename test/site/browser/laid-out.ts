import type { Page } from "playwright-core";

/**
 * Lays all of a page out: a part far below the window is passed over until it comes near
 * (`content-visibility`), so that a place asked for in it may be an old one.
 */
export const layOut = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    for (const part of document.querySelectorAll<HTMLElement>(".part"))
      part.style.contentVisibility = "visible";
    await document.fonts.ready;
    for (const _ of [1, 2]) await new Promise(requestAnimationFrame);
  });

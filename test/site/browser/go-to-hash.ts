import type { Page } from "playwright-core";

/** Changes the end of a page's address, and waits until the page has heard of it. */
export const goToHash = (page: Page, hash: string): Promise<void> =>
  page.evaluate(
    (end) =>
      new Promise<void>((done) => {
        if (location.hash === end) return done();
        addEventListener("hashchange", () => done(), { once: true });
        location.hash = end;
      }),
    hash.replace(/^#?/, "#"),
  );

/**
 * The pages that each test file in a browser looks at, `index` and lists of cells among them. A test
 * that opens another fails, and `npm test -- --changed` takes from here what a page's change concerns.
 */
export const covers: Readonly<Record<string, readonly string[]>> = {
  "class.test.ts": ["your-car", "workshop", "practice"],
  "by-touch.test.ts": ["index", "00-start-here"],
  "by-keys.test.ts": ["01-load-transfer"],
  "figure-links.test.ts": ["00-start-here", "01-load-transfer", "09-your-workshop"],
  "figures.test.ts": ["every chapter"],
  "firefox.test.ts": ["every chapter", "index", "your-car", "workshop"],
  "frames.test.ts": ["every chapter"],
  "jupyter.test.ts": [],
  "your-car.test.ts": ["your-car", "01-load-transfer"],
  "tyre.test.ts": ["your-car"],
  "lent-pages.test.ts": ["index"],
  "living-car.test.ts": ["index", "03-distribution-between-axles", "07-how-fast-the-load-arrives"],
  "map.test.ts": ["map"],
  "measure.test.ts": ["measure", "index", "your-car"],
  "memory.test.ts": ["map", "01-load-transfer"],
  "nginx.test.ts": ["00-start-here", "01-load-transfer"],
  "offline.test.ts": ["every page"],
  "other-cars.test.ts": ["every chapter"],
  "paddock.test.ts": ["workshop"],
  "pages.test.ts": ["every page"],
  "path.test.ts": ["index", "01-load-transfer", "questions"],
  "policy.test.ts": ["00-start-here"],
  "practice.test.ts": ["practice", "03-distribution-between-axles"],
  "primer.test.ts": ["01-load-transfer", "03-distribution-between-axles"],
  "program-fault.test.ts": ["workshop"],
  "questions-page.test.ts": ["questions", "03-distribution-between-axles"],
  "questions.test.ts": ["every chapter"],
  "reading.test.ts": ["02-tyre-nonlinearity", "08-say-it-and-choose-the-lever"],
  "ride.test.ts": ["ride"],
  "search.test.ts": ["search", "words"],
  "share.test.ts": ["share", "03-distribution-between-axles"],
  "warm-up.test.ts": ["03-distribution-between-axles", "04-roll-centre", "questions"],
  "with-script.test.ts": [
    "workshop",
    "practice",
    "map",
    "share",
    "search",
    "questions",
    "measure",
    "ride",
  ],
  "words.test.ts": ["words"],
  "workbench-hostile.test.ts": ["01-load-transfer.code"],
  "workbench.test.ts": ["01-load-transfer.code", "01-load-transfer"],
  "workshop-day.test.ts": ["workshop"],
  "workshop-drafts.test.ts": ["workshop"],
  "workshop-glance.test.ts": ["workshop"],
  "workshop-store.test.ts": ["workshop"],
};

const isChapter = (page: string): boolean => /^\d\d-[^.]+$/.test(page);

/** Whether a test file says that it looks at a page. */
export function looksAt(file: string, page: string): boolean {
  const listed = covers[file] ?? [];
  if (listed.includes("every page") || listed.includes(page)) return true;
  return listed.includes("every chapter") && isChapter(page);
}

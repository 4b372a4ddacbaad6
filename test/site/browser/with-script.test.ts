import { describe, expect, it } from "vitest";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();

/** Something of each page that only its script puts there. */
const live = {
  workshop: "#plan h2",
  practice: "#ask-corner, .chips",
  map: ".map path.balance",
  share: ".acts button",
  search: "#query",
  questions: "nav.parts",
  measure: "#form-four-scales input",
  ride: "#ride-try",
} as const;

describe("a page whose script runs", () => {
  for (const [name, selector] of Object.entries(live))
    it(`${name} no longer shows what stands there without one`, async () => {
      const { page } = await open(name, { silentWorkers: true });
      await page.locator(selector).first().waitFor({ state: "attached" });
      // biome-ignore lint/performance/useDomNodeTextContent: what is shown, not what stands there
      const text = await page.locator("main").innerText();
      expect(text).not.toMatch(/JavaScript/);
      expect(await page.locator("main h1").count()).toBe(1);
    });
});

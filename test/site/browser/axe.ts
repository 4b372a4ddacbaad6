import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axePath = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** Besides what axe looks for by itself: the size of what is pressed, as WCAG 2.2 AA asks. */
const allRules = { rules: { "target-size": { enabled: true } } };

/** What alone can differ between a light and a dark page. */
const colourRules = {
  runOnly: { type: "rule", values: ["color-contrast", "link-in-text-block"] },
};

interface AxeReport {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { html: string }[];
  }[];
}

/** What axe finds wrong with a page as it stands; the page must have been opened with `bypassCSP`. */
export async function axeFaults(page: Page, rules: object = allRules): Promise<string[]> {
  await page.addStyleTag({ content: ".part { content-visibility: visible !important }" }); // as if all were near
  await page.addScriptTag({ path: axePath });
  const { violations } = (await page.evaluate(`axe.run(${JSON.stringify(rules)})`)) as AxeReport;
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
}

/** What axe finds wrong with a page in light, and with its colours in dark. */
export async function axeFaultsInBoth(page: Page): Promise<string[]> {
  const faults = await axeFaults(page);
  await page.emulateMedia({ colorScheme: "dark" });
  const dark = await axeFaults(page, colourRules);
  await page.emulateMedia({ colorScheme: "light" });
  return [...faults, ...dark];
}

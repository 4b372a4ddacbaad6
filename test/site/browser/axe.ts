import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axePath = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** Besides what axe looks for by itself: the size of what is pressed, as WCAG 2.2 AA asks. */
const rules = { rules: { "target-size": { enabled: true } } };

interface AxeReport {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { html: string }[];
  }[];
}

/** What axe finds wrong with a page as it stands; the page must have been opened with `bypassCSP`. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.addStyleTag({ content: ".part { content-visibility: visible !important }" }); // as if all were near
  await page.addScriptTag({ path: axePath });
  const { violations } = (await page.evaluate(`axe.run(${JSON.stringify(rules)})`)) as AxeReport;
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
}

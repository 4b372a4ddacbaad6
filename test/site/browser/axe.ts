import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axePath = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

interface AxeReport {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { html: string }[];
  }[];
}

/** What axe finds wrong with a page as it stands; the page must have been opened with `bypassCSP`. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.addScriptTag({ path: axePath });
  const { violations } = (await page.evaluate("axe.run()")) as AxeReport;
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
}

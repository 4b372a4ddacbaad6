import type { Page } from "playwright-core";
import { inject } from "vitest";
import { layOut } from "./laid-out.js";

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

/** Only faults are asked for: to say where all is well takes axe as long again. */
const faultsOnly = { resultTypes: ["violations"], reporter: "no-passes" };

/**
 * Makes plain text of every formula but the first: their parts are two thirds of all elements of a
 * chapter, and axe can find nothing wrong with one but its colour. A formula of several colours, or
 * with a ground of its own, stays as it is. Runs in the page.
 */
function plainFormulas(): void {
  const hasOneLook = (formula: Element): boolean => {
    const looks = [...formula.querySelectorAll("*")].map((part) => getComputedStyle(part));
    return new Set(looks.map((look) => `${look.color} on ${look.backgroundColor}`)).size < 2;
  };
  const [, ...others] = document.querySelectorAll(".katex");
  // All are looked at before one is changed: each look after a change has the page styled anew.
  for (const formula of others.filter(hasOneLook))
    for (const half of formula.children) half.textContent = `${half.textContent}`;
}

/** Readies a page for axe once: all of it as if it were near, and axe in it. */
async function readied(page: Page): Promise<void> {
  if (await page.evaluate("'axe' in globalThis")) return;
  await layOut(page);
  await page.evaluate(plainFormulas);
  await page.addScriptTag({ url: `${inject("origin")}/axe.min.js` });
}

/** What axe finds wrong with a page as it stands; the page must have been opened with `bypassCSP`. */
export async function axeFaults(page: Page, rules: object = allRules): Promise<string[]> {
  await readied(page);
  const how = JSON.stringify({ ...rules, ...faultsOnly });
  const { violations } = (await page.evaluate(`axe.run(${how})`)) as AxeReport;
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
}

/** What axe finds wrong with the colours of a page in dark. */
export async function axeFaultsInDark(page: Page): Promise<string[]> {
  await page.emulateMedia({ colorScheme: "dark" });
  const faults = await axeFaults(page, colourRules);
  await page.emulateMedia({ colorScheme: "light" });
  return faults;
}

/** What axe finds wrong with a page in light, and with its colours in dark. */
export const axeFaultsInBoth = async (page: Page): Promise<string[]> => [
  ...(await axeFaults(page)),
  ...(await axeFaultsInDark(page)),
];

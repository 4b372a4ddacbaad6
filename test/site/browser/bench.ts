import type { Page } from "playwright-core";
import { codeCells, readNotebook } from "../../../site/build/notebook.js";
import { inRoot } from "../../../site/build/paths.js";

const cells = codeCells(readNotebook(inRoot("notebooks/01-load-transfer.ipynb")));

/** The last cell of chapter 1: nothing after it needs it. */
export const last = cells.at(-1)?.id ?? "";

/** The page that lists a chapter's cells, as a reader uses it to edit and run them. */
export const bench = (page: Page) => {
  const status = page.locator(".bench-bar [role=status]");
  const section = (id: string) => page.locator(`.listing h2[id="${id}"] + .editor`);
  const says = async (text: string | RegExp) => {
    await status.filter({ hasText: text }).waitFor();
    return (await status.textContent()) ?? "";
  };
  return {
    status,
    says,
    text: (id: string) =>
      section(id)
        .locator(".cm-line")
        .evaluateAll((lines) => lines.map(({ textContent }) => textContent).join("\n")),
    write: (id: string, source: string) => section(id).locator(".cm-content").fill(source),
    faultOf: (id: string) => page.locator(`h2[id="${id}"] ~ .fault`).first(),
    resultsOf: (id: string) => page.locator(`h2[id="${id}"] ~ .results`).first(),
    press: (name: string | RegExp) => page.getByRole("button", { name }).first().click(),
    async open() {
      await page.getByRole("button", { name: "Edit and run" }).click();
      await says("All cells ran");
    },
  };
};

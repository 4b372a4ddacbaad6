import type { Page } from "playwright-core";
import { savedText } from "./browser.js";

/** Goes to a view of the workshop and waits until it is filled. */
export async function goTo(page: Page, view: string): Promise<void> {
  await page.locator(`nav.views a[href="#${view}"]`).click();
  await page.locator(`#${view} h2`).waitFor();
}

/** Opens the example and waits until its runs are worked out. */
export async function openExample(page: Page): Promise<void> {
  await page.locator("#open-example").click();
  await page.locator("#step-5-outcome .when").waitFor();
}

/** The log as the page saves it. */
export async function savedLog(page: Page): Promise<string> {
  await goTo(page, "log");
  const download = page.waitForEvent("download");
  await page.locator("#save-log").click();
  return savedText(await download);
}

/** Takes files into the log. */
export async function takeIn(page: Page, name: string, text: string): Promise<void> {
  await goTo(page, "log");
  const buffer = Buffer.from(text);
  await page.locator("#take-in").setInputFiles({ name, mimeType: "text/plain", buffer });
  await page.locator("#taken-in > *").first().waitFor();
}

/** Says who reports on which run. */
export async function sayWho(page: Page, driver: string, run: number): Promise<void> {
  await goTo(page, "report");
  const other = page.locator("#change-who");
  if (await other.isVisible()) await other.click();
  await page.locator("#who-name").fill(driver);
  await page.locator("#who-run .chip", { hasText: new RegExp(`^${run}$`) }).click();
  await page.locator("#who-go").click();
}

/** Taps answers of the report form, one chip for each question. */
export async function tap(page: Page, answers: Readonly<Record<string, string>>): Promise<void> {
  for (const [question, answer] of Object.entries(answers))
    await page
      .locator(`#ask-${question} .chip`)
      .filter({ hasText: exactly(answer) })
      .click();
}

const exactly = (text: string): RegExp => new RegExp(`^${text.replace(/[+]/g, "\\$&")}$`);

/** Waits until the device has answered for what was written last. */
export const kept = (page: Page): Promise<void> =>
  page.locator("html[data-kept]").waitFor({ state: "attached" });

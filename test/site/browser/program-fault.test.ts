import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { axeFaults } from "./axe.js";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();

/** Plants a fault in a script of the page, that comes up once it is loaded. */
async function plant(page: Page): Promise<void> {
  await page.route("**/workshop.js", async (route) => {
    const body = await (await route.fetch()).text();
    const planted = "addEventListener('load', () => setTimeout(() => (1).toFixed(101)));";
    await route.fulfill({ contentType: "text/javascript", body: `${body}\n${planted}` });
  });
  await page.reload();
}

it("a fault of the program is said in a sentence, with its text to be copied, and is not taken for advice", async () => {
  const { page } = await open("workshop", { bypassCSP: true });
  await plant(page);
  const notice = page.locator(".program-fault");
  await notice.waitFor();
  expect(await notice.count()).toBe(1);
  expect(await notice.locator("p").textContent()).toMatch(/fault of the program/);
  expect(await notice.locator("textarea").inputValue()).toMatch(
    /workshop\.html[\s\S]*toFixed[\s\S]*workshop\.js/,
  );
  await notice.getByRole("button").click();
  await expect.poll(() => notice.getByRole("button").textContent()).toMatch(/^Copied\.$|^Selected/);
  expect(await axeFaults(page)).toEqual([]);
});

it("what an extension of the browser throws is not said to be ours", async () => {
  const { page, errors } = await open("workshop");
  await page.evaluate(() => {
    setTimeout(() => {
      throw new Error("not of this page");
    });
  });
  await expect.poll(() => errors).toContain("not of this page");
  expect(await page.locator(".program-fault").count()).toBe(0);
});

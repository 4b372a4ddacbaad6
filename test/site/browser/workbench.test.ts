import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { packed } from "../workbench/packed.js";
import { axeFaultsInBoth } from "./axe.js";
import { bench, last } from "./bench.js";
import { chooseUnits, useBrowser, withWorker } from "./browser.js";
import { serveCopy } from "./served-folder.js";

const { open, fileUrl } = useBrowser();
const chapter = "01-load-transfer";
const listing = `${chapter}.code`;
const drawn = (page: Page) =>
  page
    .locator("#result-1 [data-layer] path")
    .evaluateAll((paths) => paths.map((path) => path.getAttribute("d")).join(" "));

describe("a page that lists cells", () => {
  it("is whole without JavaScript, loads the editor only when asked, and then fits a phone of 320 px", async () => {
    const still = await open(listing, { javaScriptEnabled: false });
    expect(await still.page.locator(".listing pre").count()).toBeGreaterThan(10);
    const { page } = await open(listing, { viewport: { width: 320, height: 700 } });
    expect(await page.locator("script[src='workbench.js']").count()).toBe(0);
    await bench(page).open();
    expect(await page.locator("script[src='workbench.js']").count()).toBe(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );
  });

  it("adds nothing to a chapter", async () => {
    const { page } = await open(chapter);
    const loaded = await page
      .locator("script[src]")
      .evaluateAll((scripts) => scripts.map((script) => script.getAttribute("src")));
    expect(loaded).not.toContain("listing.js");
    expect(loaded).not.toContain("workbench.js");
  });

  it("passes axe in light and dark with everything run", async () => {
    const { page } = await open(listing, { bypassCSP: true });
    expect(await axeFaultsInBoth(page)).toEqual([]);
    await bench(page).open();
    await page.locator("#result-1 .says:not(:empty)").waitFor();
    expect(await axeFaultsInBoth(page)).toEqual([]);
  });
});

describe.each([
  ["from a host", listing],
  ["from a folder", fileUrl(listing)],
])("cells opened %s", (_, address) => {
  it("give the numbers and sentences of the chapter, with no error and no request; change the figure when a number is edited, and go back when reset; and move it under sliders", async () => {
    const { page, errors, foreign } = await open(address);
    const { open: openBench, write, text, press, says } = bench(page);
    await openBench();
    const inside = await page.locator(".results .worked").allTextContents();
    await page.locator("#result-1 .says:not(:empty)").waitFor();
    const sentence = await page.locator("#result-1 .says").textContent();

    const [before, written] = [await drawn(page), await text("stiffer-bars-prediction")];
    await write("stiffer-bars-prediction", written.replace("turn = 7", "turn = 3"));
    await page.keyboard.press("Control+Enter");
    await says("All cells ran");
    await page.locator("#result-1 .says", { hasText: "At 3.0" }).waitFor();
    expect(await drawn(page)).not.toBe(before);
    await press("Reset cell stiffer-bars-prediction");
    expect(await text("stiffer-bars-prediction")).toBe(written);
    await press(/^Run/);
    await page.locator("#result-1 .says", { hasText: "At 7.0" }).waitFor();
    await expect.poll(() => drawn(page)).toBe(before);

    await page.locator("#result-1 input[type=range]").first().press("End");
    await expect.poll(() => drawn(page)).not.toBe(before);
    expect(errors).toEqual([]);
    expect(foreign.filter((url) => !url.startsWith("blob:null/"))).toEqual([]);
    await page.goto(
      address.includes(":") ? fileUrl(chapter) : new URL(`${chapter}.html`, page.url()).href,
    );
    expect(inside).toEqual(await page.locator("main .worked").allTextContents());
    expect(sentence).toBe(await page.locator("#bars-and-total .says").textContent());
  });
});

describe("edited cells", () => {
  it("tell cell and line of what cannot be read, of an exception, and of one while drawing; are kept on the device, and let go by Reset all", async () => {
    const { page } = await open(listing);
    const { open: openBench, write, text, press, says, faultOf } = bench(page);
    await openBench();
    const written = await text(last);
    await write(last, "const a = 1;\nconst b = (2;\nconst c = 3;");
    await press(/^Run/);
    await says(`Cell ${last}, line 2: `);
    await write(last, "const a: number = 1;\n\n(undefined as unknown as () => void)();");
    await press(/^Run/);
    await says(/, line 3: .*not a function/);
    expect(await faultOf(last).textContent()).toContain("line 3");
    await write(last, "const fine = 1;\nconst car = 2;");
    await press(/^Run/);
    await says(/, line 2: .*already been declared/);
    await write(
      last,
      'figure({\n  id: "x", title: "x", inputs: {}, says: () => "",\n  panels: [{ view: { x: [0, 1], y: [0, 1] }, label: "x", draw: () => {\n    throw new RangeError("Too far.");\n  } }],\n});',
    );
    await press(/^Run/);
    await page.locator(".says", { hasText: `Not drawn: Cell ${last}, line 4: Too far.` }).waitFor();

    await write(last, "const mine = 1;");
    await page.reload();
    await openBench();
    expect(await text(last)).toBe("const mine = 1;");
    await press("Reset all");
    await says("All cells ran");
    expect(await text(last)).toBe(written);
    await page.reload();
    await openBench();
    expect(await text(last)).toBe(written);
  });

  it("follow the reader's units", async () => {
    const { page } = await open(listing);
    await chooseUnits(page, "us");
    await bench(page).open();
    expect(await page.locator(".results .worked").first().textContent()).toContain("lbf");
  });
});

describe("cells without network", () => {
  it("run once the course is kept on the device and the bench was used before", async () => {
    const course = await serveCopy("workbench");
    try {
      const { page, errors } = await open(`${course.url}${listing}.html`, withWorker);
      await page.locator(".offline", { hasText: "Ready without network." }).waitFor();
      await page.reload();
      await bench(page).open();
      await page.locator("#result-1 .says:not(:empty)").waitFor();
      await course.stop();
      await page.reload();
      await bench(page).open();
      await page.locator("#result-1 .says:not(:empty)").waitFor();
      await page.locator("#result-1 .axis-title").first().waitFor();
      expect(errors).toEqual([]);
    } finally {
      course.remove();
    }
  });
});

describe("a link to edited cells", () => {
  it("opens them elsewhere, says so, runs nothing until asked, and keeps nothing; and is refused with a sentence when it would be too long", async () => {
    const { page } = await open(listing, { permissions: ["clipboard-read", "clipboard-write"] });
    const own = bench(page);
    await own.open();
    const source =
      'worked({ id: "n", label: "Mine “ü”", value: 42, quantity: "count", decimals: 0 });';
    await own.write(last, source);
    await own.press("Copy a link");
    await own.says(/Link copied|address bar/);
    const link = await page.evaluate(() => navigator.clipboard.readText());
    const noise = Array.from({ length: 9000 }, (_, i) => (i * 7919 * 7919) % 9973).join(" ");
    await own.write(last, `// ${noise}`);
    await own.press("Copy a link");
    await own.says("do not fit into a link of 16000");

    const other = await open(link);
    const { says, text, press } = bench(other.page);
    await says(/brings changes to one cell.*Nothing has run/);
    expect(await text(last)).toBe(source);
    expect(await other.page.locator(".results > *, iframe").count()).toBe(0);
    await press(/^Run/);
    await says("All cells ran");
    await other.page.locator(".worked", { hasText: "Mine “ü”: 42" }).waitFor();
    await other.page.reload(); // at the latest now it would keep them
    expect(await other.page.evaluate(() => Object.keys(localStorage))).toEqual([]);
    expect(other.errors).toEqual([]);
  });

  // each way in which a link can be unreadable: test/site/workbench/share.test.ts
  it("is refused with a sentence when it is broken, hostile, or about other cells", async () => {
    const { page, errors } = await open(listing);
    const address = page.url();
    for (const [hash, sentence] of [
      ["#edited=<img src=x onerror=alert(1)>", "cannot be read"],
      [await packed({ [last]: "x".repeat(5_000_000) }), "cannot be read"],
      [await packed({ nowhere: "1" }), "does not have"],
      [await packed({ "</h2><b>": "1" }), "does not have"],
    ] as const) {
      await page.goto("about:blank");
      await page.goto(address + hash);
      await bench(page).says(sentence);
      expect(await page.locator("iframe, .results > *, .edited:visible").count()).toBe(0);
    }
    expect(errors).toEqual([]);
  });
});

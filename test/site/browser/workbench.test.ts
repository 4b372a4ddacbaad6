import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
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
  it("is whole without JavaScript, and loads the editor only when asked", async () => {
    const still = await open(listing, { javaScriptEnabled: false });
    expect(await still.page.locator(".listing pre").count()).toBeGreaterThan(10);
    const { page } = await open(listing);
    expect(await page.locator("script[src='workbench.js']").count()).toBe(0);
    await bench(page).open();
    expect(await page.locator("script[src='workbench.js']").count()).toBe(1);
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

  it("fits a phone of 320 px", async () => {
    const { page } = await open(listing, { viewport: { width: 320, height: 700 } });
    await bench(page).open();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );
  });
});

describe.each([
  ["from a host", listing],
  ["from a folder", fileUrl(listing)],
])("cells opened %s", (_, address) => {
  it("give the numbers and sentences of the chapter, with no error and no request", async () => {
    const { page, errors, foreign } = await open(address);
    await bench(page).open();
    const inside = await page.locator(".results .worked").allTextContents();
    await page.locator("#result-1 .says:not(:empty)").waitFor();
    const sentence = await page.locator("#result-1 .says").textContent();
    expect(errors).toEqual([]);
    expect(foreign.filter((url) => !url.startsWith("blob:null/"))).toEqual([]);
    await page.goto(
      address.includes(":") ? fileUrl(chapter) : new URL(`${chapter}.html`, page.url()).href,
    );
    expect(inside).toEqual(await page.locator("main .worked").allTextContents());
    expect(sentence).toBe(await page.locator("#bars-and-total .says").textContent());
  });

  it("change the figure when a number is edited, and go back when reset", async () => {
    const { page } = await open(address);
    const { open: openBench, write, text, press, says } = bench(page);
    await openBench();
    await page.locator("#result-1 .says:not(:empty)").waitFor();
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
    expect(await drawn(page)).toBe(before);
  });
});

describe("edited cells", () => {
  it("move their figures under sliders", async () => {
    const { page } = await open(listing);
    await bench(page).open();
    await page.locator("#result-1 .says:not(:empty)").waitFor();
    const before = await drawn(page);
    await page.locator("#result-1 input[type=range]").first().press("End");
    await expect.poll(() => drawn(page)).not.toBe(before);
  });

  it("tell cell and line of what cannot be read, of an exception, and of one while drawing", async () => {
    const { page } = await open(listing);
    const { open: openBench, write, press, says, faultOf } = bench(page);
    await openBench();
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
  });

  it("are kept on the device, and let go by Reset all", async () => {
    const { page } = await open(listing);
    const { open: openBench, write, text, press, says } = bench(page);
    await openBench();
    const written = await text(last);
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
  const copy = async (page: Page, source: string) => {
    const { open: openBench, write, press, says } = bench(page);
    await openBench();
    await write(last, source);
    await press("Copy a link");
    await says(/Link copied|address bar|do not fit/);
  };

  it("opens them elsewhere, says so, runs nothing until asked, and keeps nothing", async () => {
    const { page } = await open(listing, { permissions: ["clipboard-read", "clipboard-write"] });
    const source =
      'worked({ id: "n", label: "Mine “ü”", value: 42, quantity: "count", decimals: 0 });';
    await copy(page, source);
    const link = await page.evaluate(() => navigator.clipboard.readText());
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

  it("is refused with a sentence when it would be too long", async () => {
    const { page } = await open(listing);
    const noise = Array.from({ length: 9000 }, (_, i) => (i * 7919 * 7919) % 9973).join(" ");
    await copy(page, `// ${noise}`);
    expect(await bench(page).status.textContent()).toContain("do not fit into a link of 16000");
  });

  it("is refused with a sentence when it is broken, hostile, or about other cells", async () => {
    const packed = (value: unknown) =>
      page.evaluate(async (json) => {
        const stream = new Blob([json]).stream().pipeThrough(new CompressionStream("deflate-raw"));
        const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
        const letters = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
        return `#edited=${letters.replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "")}`;
      }, JSON.stringify(value));
    const { page, errors } = await open(listing);
    const address = page.url();
    const unreadable = [
      "#edited=",
      "#edited=%%%",
      "#edited=<img src=x onerror=alert(1)>",
      `#edited=${"A".repeat(20_000)}`,
      "#edited=AAAA",
      await packed([last]),
      await packed({ [last]: 1 }),
      await packed({ [last]: { length: 1 } }),
      await packed(null),
      await packed({ [last]: "x".repeat(5_000_000) }),
    ];
    const strange = [await packed({ nowhere: "1" }), await packed({ "</h2><b>": "1" })];
    for (const [hashes, sentence] of [
      [unreadable, "cannot be read"],
      [strange, "does not have"],
    ] as const) {
      for (const hash of hashes) {
        await page.goto("about:blank");
        await page.goto(address + hash);
        await bench(page).says(sentence);
        expect(await page.locator("iframe, .results > *, .edited:visible").count()).toBe(0);
      }
    }
    expect(errors).toEqual([]);
  });
});

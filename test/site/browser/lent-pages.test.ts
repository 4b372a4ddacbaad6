import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();

/** Leaves in the page and on the device whatever a page can leave there. */
const leaveAll = (page: Page) =>
  page.evaluate(async () => {
    for (const storage of [localStorage, sessionStorage]) storage.setItem("left", "here");
    window.name = "left";
    await new Promise((resolve) => {
      indexedDB.open("left").onsuccess = resolve;
    });
    if (location.protocol !== "file:") {
      await caches.open("left");
      await cookieStore.set("left", "here");
    }
    history.pushState({}, "", "#left");
  });

/** What a page finds when it comes to a test. */
const found = (page: Page) =>
  page.evaluate(async () => ({
    stored: [localStorage, sessionStorage].map((storage) => storage.getItem("left")),
    cookie: document.cookie,
    name: window.name,
    databases: (await indexedDB.databases()).map(({ name }) => name).filter((n) => n === "left"),
    caches: location.protocol === "file:" ? [] : await caches.keys(),
    history: history.length,
    globals: "left" in globalThis,
    dark: matchMedia("(prefers-color-scheme: dark)").matches,
    still: matchMedia("(prefers-reduced-motion: reduce)").matches,
    forced: matchMedia("(forced-colors: active)").matches,
    printed: matchMedia("print").matches,
    size: [innerWidth, innerHeight, scrollY],
    online: navigator.onLine,
    worker: String(Worker).includes("[native code]"),
  }));

const addresses = [
  ["a host", () => "index"],
  ["a folder", () => fileUrl("index")],
] as const;

describe.each(addresses)("a page from %s that is lent to one test after another", (_, address) => {
  let fresh: Awaited<ReturnType<typeof found>>;
  let first: Page;
  const nobodyElses = { userAgent: `of this test from ${_}` };

  it("is left in disorder", async () => {
    const untouched = await open(address(), { userAgent: `of ${_}` });
    fresh = await found(untouched.page);
    const keeps = { left: "before" };
    const { page } = await open(address(), { ...nobodyElses, silentWorkers: true, keeps });
    first = page;
    expect(await page.evaluate(() => localStorage.getItem("left"))).toBe("before");
    expect(await page.evaluate(() => String(Worker))).not.toContain("[native code]");
    await leaveAll(page);
    await page.addScriptTag({ content: "left = 1" }).catch(() => {});
    await page.evaluate(() => scrollTo(0, 500));
    await page.setViewportSize({ width: 360, height: 500 });
    await page.emulateMedia({
      media: "print",
      colorScheme: "dark",
      reducedMotion: "reduce",
      forcedColors: "active",
    });
    await page.route("**/*", (route) => route.fulfill({ body: "not the course" }));
    await page.context().setOffline(true);
    page.on("dialog", (dialog) => dialog.accept());
  });

  it("comes to the next as if it were new", async () => {
    const { page, errors, foreign } = await open(address(), nobodyElses);
    expect(page).toBe(first);
    expect(await found(page)).toEqual(fresh);
    expect(await page.locator("h1").count()).toBe(1);
    expect(await page.evaluate(() => confirm("Is anyone there?"))).toBe(false);
    expect([...errors, ...foreign]).toEqual([]);
  });
});

import { cpSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { writeOffline } from "../../../site/build/offline.js";
import { inRoot } from "../../../site/build/paths.js";
import { chapters, useBrowser, withWorker } from "./browser.js";
import { type ServedFolder, serveCopy } from "./served-folder.js";

const { open, fileUrl } = useBrowser();
let course: ServedFolder;
beforeEach(async () => {
  course = await serveCopy("offline");
});
afterEach(async () => {
  await course.stop();
  course.remove();
});

const sign = (page: Page) => page.locator(".offline");
const says = (page: Page, text: string) => sign(page).filter({ hasText: text }).waitFor();
const firstVisit = async () => {
  const visit = await open(`${course.url}index.html`, { ...withWorker, silentWorkers: true });
  await says(visit.page, "Ready without network.");
  return visit;
};

/** Another course at the same address: a new heading on the first page. */
async function publish(heading: string): Promise<void> {
  const path = `${course.folder}/index.html`;
  const html = readFileSync(path, "utf8");
  writeFileSync(path, html.replace(/(<h1[^>]*>).*?(<\/h1>)/, `$1${heading}$2`));
  await writeOffline(course.folder);
}

describe("the course without network", () => {
  it("opens every page below a sub-path once the foot of the first page says ready", async () => {
    const { page, errors } = await firstVisit();
    await course.stop();
    const kept = /^(?!404|.*\.code\.).*\.html$/; // the cells of a chapter are kept once they were opened
    const pages = readdirSync(course.folder).filter((file) => kept.test(file));
    for (const file of pages) {
      await page.goto(course.url + file);
      expect(await page.locator("h1").count(), file).toBe(1);
      await says(page, "Ready without network.");
    }
    await page.goto(`${course.url}${chapters[0]}.html?from=link#why`);
    await page.locator(".figure[data-live]").first().waitFor();
    await page.goto(`${course.url}search.html`);
    await page.fill("#search input", "sway bar");
    await page.locator("#search .answers a").first().waitFor();
    await page.goto(course.url);
    expect(await page.locator("h1").count()).toBe(1);
    expect(errors).toEqual([]);
  });

  it("keeps four megabytes at most, and no file that is not there", async () => {
    const worker = readFileSync(`${course.folder}/sw.js`, "utf8");
    const kept = readdirSync(course.folder).filter(
      (file) =>
        worker.includes(file) && !/^workbench\.|\.code\.html$|^NOTICES\.txt$|^sw\.js$/.test(file),
    );
    const sizes = kept.map((file) => statSync(`${course.folder}/${file}`).size);
    expect(sizes.length).toBeGreaterThan(10);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(4_000_000);
  });

  it("shows a newer course only when the reader asks, then whole, and drops the old one", async () => {
    const { page } = await firstVisit();
    const heading = () => page.locator("h1").textContent();
    const old = await heading();
    await publish("The newer course");
    await page.reload();
    await says(page, "A newer course is there.");
    expect(await heading()).toBe(old);
    await page.reload();
    expect(await heading()).toBe(old);
    await sign(page).getByRole("button", { name: "Show it" }).click();
    await page.locator("h1", { hasText: "The newer course" }).waitFor();
    await says(page, "Ready without network.");
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
    await course.stop();
    await page.reload();
    expect(await heading()).toBe("The newer course");
  });

  it("tells another window that the course was renewed, and leaves what is typed there alone", async () => {
    const { page } = await firstVisit();
    const other = await page.context().newPage();
    await other.goto(`${course.url}search.html`);
    await other.fill("#search input", "wedge");
    await publish("The newer course");
    await page.reload();
    await sign(page).getByRole("button", { name: "Show it" }).click();
    await says(other, "The course was renewed in another window");
    expect(await other.inputValue("#search input")).toBe("wedge");
  });

  it("stays with the old course while a newer one has not arrived whole", async () => {
    const { page } = await firstVisit();
    await publish("Half a course");
    rmSync(`${course.folder}/course.css`);
    await page.reload();
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => {});
      while (registration.installing) await new Promise((wait) => setTimeout(wait, 50));
    });
    expect(await sign(page).textContent()).toContain("Ready without network.");
    await course.stop();
    await page.reload();
    expect(await page.locator("h1").textContent()).not.toBe("Half a course");
  });

  it("takes no page to log in for a page of the course, though it comes with status 200", async () => {
    writeFileSync(`${course.folder}/${chapters[2]}.html`, "<h1>Please log in</h1>");
    const { page } = await open(`${course.url}index.html`, withWorker);
    await says(page, "Not yet ready without network: not all of it arrived");
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(0);
  });

  it("takes no course of which only a half was put in place, and shows no code of another one", async () => {
    const { page } = await firstVisit();
    const code = readdirSync(course.folder).find((file) => file.endsWith(".code.html")) ?? "";
    writeFileSync(`${course.folder}/${code}`, "<h1>Code of a newer course</h1>");
    await page.goto(course.url + code);
    await page.locator("p", { hasText: "an older course" }).waitFor();
    await page.goto(course.url);
    await publish("The newer course");
    writeFileSync(`${course.folder}/index.html`, "<h1>Half of yet another</h1>");
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => {});
      while (registration.installing) await new Promise((wait) => setTimeout(wait, 50));
    });
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
    await course.stop();
    await page.reload();
    expect(await page.locator("h1").textContent()).not.toMatch(/newer|another/);
  });

  it("says so when the first visit could not keep everything", async () => {
    rmSync(`${course.folder}/LICENSE`);
    const { page } = await open(`${course.url}index.html`, withWorker);
    await says(page, "Not yet ready without network: not all of it arrived");
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(0);
  });

  it("lets go of everything where the host withdraws the worker", async () => {
    const { page } = await firstVisit();
    cpSync(inRoot("site/offline/withdraw.js"), `${course.folder}/sw.js`);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const left = () =>
      page.evaluate(async () => [
        (await caches.keys()).length,
        (await navigator.serviceWorker.getRegistrations()).length,
      ]);
    await expect.poll(left).toEqual([0, 0]);
  });

  it("tells users of an iPhone that their browser may clear it", async () => {
    const userAgent =
      "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Mobile/15E148";
    const { page } = await open(`${course.url}index.html`, { ...withWorker, userAgent });
    await says(page, "put the course on the Home Screen");
  });

  it("needs no worker when opened from a folder", async () => {
    const { page, errors } = await open(fileUrl("index"));
    await says(page, "Opened from a folder: nothing here needs the network.");
    expect(errors).toEqual([]);
  });

  it("can be installed: a manifest with names, icons and a start below its own folder", async () => {
    const { page } = await open(`${course.url}index.html`, withWorker);
    const href = await page.locator("link[rel=manifest]").getAttribute("href");
    const manifest = await (await page.request.get(new URL(href ?? "", course.url).href)).json();
    expect(new URL(manifest.start_url, course.url).href).toBe(`${course.url}index.html`);
    expect(new URL(manifest.scope, course.url).href).toBe(course.url);
    for (const { src } of manifest.icons) {
      expect((await page.request.get(new URL(src, course.url).href)).ok(), src).toBe(true);
    }
  });
});

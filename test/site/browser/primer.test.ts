import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { carInClass, demoCar } from "@rollbook/lib";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { partsOfCourse, scriptsOf } from "../../../site/primer/parts.js";
import { writePdf } from "../../../site/primer/pdf.js";
import { primerHtml } from "../../../site/primer/primer.js";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();
const folder = mkdtempSync(join(tmpdir(), "rollbook-primer-"));
const file = join(folder, "primer.html");
const paper = join(folder, "paper.html");
const url = pathToFileURL(file).href;

beforeAll(async () => {
  const parts = await partsOfCourse(["01", "03"], () => {});
  const to = { ...parts, name: "Hill Climb & Sprint Club", date: "25 November 2026", url: "" };
  writeFileSync(file, primerHtml({ ...to, scripts: await scriptsOf(parts.chapters) }));
  writeFileSync(paper, primerHtml({ ...to, scripts: [] }));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("a primer for a car and its class, in US units", () => {
  const rules = [
    { kind: "springRate", name: "4.2", end: "front", greatest: 62e3 },
    { kind: "fixed", name: "4.3", levers: ["camber"] },
  ] as const;
  const carClass = { name: "Club", rules, briefing: "Helmets on.\n\nBlue: let them by." };
  const { spring } = demoCar.front;
  const stiff = {
    ...demoCar,
    name: "Heron",
    front: { ...demoCar.front, spring: { ...spring, rate: 70e3 } },
  };
  const madeFor = { car: carInClass(stiff, carClass), units: "us" } as const;
  const own = join(folder, "own.html");

  beforeAll(async () => {
    const parts = await partsOfCourse(["01"], () => {}, madeFor);
    const to = { ...parts, name: "", date: "25 November 2026", url: "https://club.example/c/" };
    const scripts = await scriptsOf(parts.chapters);
    writeFileSync(own, primerHtml({ ...to, madeFor, carClass, filed: stiff, scripts }));
  });

  const numbers = (page: Page) =>
    page.locator(".worked").evaluateAll((all) => all.map((one) => one.textContent));

  it("says its figures, the rules it breaks and the briefing, and a script works out the same", async () => {
    const still = await open(pathToFileURL(own).href, { javaScriptEnabled: false, offline: true });
    const first = (await still.page.locator("main").textContent())?.replace(/\s/g, " ");
    expect(first).toContain("Figures and sums for Heron.");
    expect(first).toContain(
      "rule 4.2, spring rate at most 354 lbf/in: broken by 46 lbf/in (front)",
    ); // 8 N/mm
    expect(first).toContain("rule 4.3: camber may not be moved");
    expect(first).toContain("Blue: let them by.");
    expect(first).not.toMatch(/\btyre/i);
    const drawn = await numbers(still.page);
    const { page, errors } = await open(pathToFileURL(own).href, { offline: true });
    await page.locator(".figure[data-live]").last().waitFor();
    expect(await numbers(page)).toEqual(drawn);
    expect(drawn.join(" ")).toContain("lb");
    expect(await page.locator(".fault:not([hidden])").count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it("links a state of a figure into the course, where it says where that is", async () => {
    const { page } = await open(pathToFileURL(own).href, { offline: true });
    await page.evaluate(() => {
      navigator.clipboard.writeText = async (text) => {
        document.documentElement.dataset.copied = text;
      };
    });
    const figure = page.locator("#c01-turn-and-tip");
    await page.locator("button", { hasText: "open everything" }).first().click();
    await figure.getByRole("button", { name: "one step more" }).first().click();
    await figure.getByRole("button", { name: "Link to this state" }).click();
    await page.locator("html[data-copied]").waitFor();
    expect(await page.locator("html").getAttribute("data-copied")).toMatch(
      /^https:\/\/club\.example\/c\/01-load-transfer\.html#turn-and-tip\?lateralAcceleration=/,
    );
  });
});

describe("the primer", () => {
  it("is one file of two megabytes at most", () => {
    expect(statSync(file).size).toBeLessThanOrEqual(2_000_000);
  });

  it("is whole with neither network nor JavaScript", async () => {
    const { page, errors } = await open(url, { javaScriptEnabled: false, offline: true });
    expect(await page.locator(".for").textContent()).toContain("Hill Climb & Sprint Club");
    expect(await page.locator(".cover .caution").count()).toBe(1);
    expect(await page.locator("article").count()).toBe(2);
    expect(await page.locator("input, button, fieldset, select").count()).toBe(0);
    for (const figure of await page.locator(".figure").all()) {
      expect(await figure.locator("svg.panel [data-layer] *").count()).toBeGreaterThan(0);
    }
    expect(errors).toEqual([]);
  });

  it("asks for nothing but itself, and has no id twice and no link that leads nowhere", async () => {
    const { page } = await open(url, { offline: true });
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.reload();
    await page.locator(".figure[data-live]").last().waitFor();
    expect(asked.filter((address) => !address.startsWith("data:"))).toEqual([url]);
    const { twice, nowhere, away } = await page.evaluate(() => {
      const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
      const links = [...document.querySelectorAll("a")].map((a) => a.getAttribute("href") ?? "");
      const target = (href: string) => decodeURIComponent(href.slice(1).replace(/\?.*/, ""));
      return {
        twice: ids.filter((id, index) => ids.indexOf(id) !== index),
        nowhere: links.filter((href) => href.startsWith("#") && !ids.includes(target(href))),
        away: links.filter((href) => !href.startsWith("#") && !href.startsWith("https://doi.org/")),
      };
    });
    expect({ twice, nowhere, away }).toEqual({ twice: [], nowhere: [], away: [] });
  });

  it("brings the figures of each chapter to life, each by its own sliders, in either unit system", async () => {
    const { page, errors } = await open(url, { offline: true });
    const figures = page.locator(".figure");
    expect(await page.locator(".figure[data-live]").count()).toBe(await figures.count());
    const inChapter = (number: string) =>
      page
        .locator(`#chapter-${number} .figure`, { has: page.locator(".slider input:enabled") })
        .first();
    const says = (number: string) => inChapter(number).locator(".says").textContent();
    const before = [await says("01"), await says("03")];
    await inChapter("03").locator("input[type=range]").first().press("End");
    expect(await says("01")).toBe(before[0]);
    expect(await says("03")).not.toBe(before[1]);
    await page.getByLabel("Units").selectOption("us");
    await page.locator("#chapter-03 .slider label span", { hasText: "lb" }).first().waitFor();
    expect(await page.locator(".fault:not([hidden])").count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it("opens the figure of its own chapter when that chapter's prediction is filed", async () => {
    const { page } = await open(url, { offline: true });
    const locked = page.locator("article .figure[data-locked]");
    const before = await locked.count();
    const form = page.locator("#chapter-03 form.filing").first();
    await form.locator("input[type=radio]").first().check();
    await form.locator("input[name$=reason]").fill("it feels so");
    await form.locator(".inline input[type=radio]").first().check();
    await form.locator("button[type=submit]").click();
    expect(await locked.count()).toBeLessThan(before);
    expect(await page.locator("#chapter-01 .figure[data-locked]").count()).toBeGreaterThan(0);
  });

  it.each([
    ["A4", 595, 842],
    ["Letter", 612, 792],
  ] as const)(
    "prints on %s, chapter by chapter, nothing wider than the page",
    async (size, wide, high) => {
      const out = join(folder, `${size}.pdf`);
      await writePdf(paper, out, size);
      const pdf = readFileSync(out, "latin1");
      const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
      expect(Math.abs(Number(width) - wide)).toBeLessThan(2);
      expect(Math.abs(Number(height) - high)).toBeLessThan(2);
      expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeGreaterThan(6);
      expect(pdf).toContain("/StructTreeRoot");
      const pixels = Math.floor(((wide - 2 * 45.4) / 72) * 96); // – 16 mm on either side
      const { page } = await open(pathToFileURL(paper).href, {
        viewport: { width: pixels, height: 900 },
      });
      await page.emulateMedia({ media: "print" });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        pixels,
      );
    },
  );
});

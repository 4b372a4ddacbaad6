import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inRoot } from "../../site/build/paths.js";
import { policy, policyWithSandbox } from "../../site/build/shell.js";

const dist = process.env.DIST ?? inRoot("dist");
const files = readdirSync(dist);
const read = (file: string): string => readFileSync(`${dist}/${file}`, "utf8");
/** All but the page for an address that leads nowhere, which holds all that it needs. */
const pages = files.filter((file) => file.endsWith(".html") && file !== "404.html");

/** Hosts of published sources, to which a page may link. Nothing is ever loaded from there. */
const sources = ["doi.org", "github.com"];

/** Hosts in scripts that are names or examples and are never asked for. */
const names = ["www.w3.org", "club.example"];

const hostOf = (address: string): string => /^https?:\/\/([^/]*)/.exec(address)?.[1] ?? "";

const attributes = (html: string, name: string): string[] =>
  [...html.matchAll(new RegExp(`\\s${name}="([^"]*)"`, "g"))].map(([, value = ""]) => value);

/** What a page loads or links to inside the course. */
function insideLinks(html: string): string[] {
  const all = [...attributes(html, "href"), ...attributes(html, "src")];
  return all.filter((address) => !/^(#|data:|https:)/.test(address));
}

describe.each(pages)("page %s", (page) => {
  const html = read(page);
  const tags = html.match(/<[a-zA-Z][^>]*>/g) ?? [];

  it("carries the policy before anything it loads", () => {
    const [, found] =
      /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html) ?? [];
    const [hash = ""] = /sha256-[\w+/=]{44}/.exec(found ?? "") ?? [];
    expect(found).toBe(page.endsWith(".code.html") ? policyWithSandbox(hash) : policy);
    const first = html.search(/<(script|link|style|img|iframe)\b/);
    expect(html.indexOf("Content-Security-Policy")).toBeLessThan(first);
  });

  it("has no code of its own in the page: no inline script, handler, style sheet or frame", () => {
    expect(html.match(/<script(?![^>]*\ssrc=)[^>]*>/g) ?? []).toEqual([]);
    expect(tags.filter((tag) => /\son[a-z]+\s*=/i.test(tag.replace(/"[^"]*"/g, '""')))).toEqual([]);
    expect(html.match(/<(style|iframe|object|embed|base|form)\b/g) ?? []).toEqual([]);
  });

  it("loads from its own folder alone, and links only to the course and to published sources", () => {
    const loaded = [...attributes(html, "src"), ...attributes(html, "srcset")];
    const linked = attributes(html, "href");
    for (const address of loaded) expect(address).toMatch(/^(data:image\/|[\w.-]+$)/);
    const foreign = linked.filter((address) => /^([a-z]+:|\/)/i.test(address));
    const undocumented = foreign.filter(
      (address) => !address.startsWith("data:image/") && !sources.includes(hostOf(address)),
    );
    expect(undocumented).toEqual([]);
  });

  it("names no file that is not there", () => {
    const missing = insideLinks(html)
      .map((address) => address.replace(/[?#].*$/, ""))
      .filter((file) => !existsSync(`${dist}/${file}`));
    expect(missing).toEqual([]);
  });
});

it("the page for an address that leads nowhere names no file beside it, and allows its own code by hash", () => {
  const html = read("404.html");
  expect([...attributes(html, "src"), ...attributes(html, "href")]).toEqual([]);
  expect(html).toMatch(/script-src 'sha256-[\w+/=]{44}'; style-src 'sha256-[\w+/=]{44}'/);
});

describe("the course", () => {
  it("allows scripts from its own folder alone", () => {
    expect(policy).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self';/);
    expect(policy).not.toMatch(/script-src[^;]*unsafe|\*|https?:/);
  });

  it("lets only the pages with a sandbox start a worker from text, and names every way to a script", () => {
    expect(policy).not.toContain("blob:");
    expect(policyWithSandbox("x")).toMatch(/worker-src 'self' blob:/);
    expect(policyWithSandbox("x").match(/blob:/g)).toHaveLength(1);
    for (const one of [policy, policyWithSandbox("x")])
      expect(one).toMatch(/require-trusted-types-for 'script'; trusted-types rollbook/);
  });

  it("has no address of another host in its scripts and styles", () => {
    const code = files.filter((file) => /\.(js|css|webmanifest)$/.test(file));
    const foreign = code.flatMap((file) =>
      (read(file).match(/https?:\/\/[a-z][\w.-]*/gi) ?? [])
        .filter((address) => ![...sources, ...names].includes(hostOf(address)))
        .map((address) => `${file}: ${address}`),
    );
    expect(foreign).toEqual([]);
  });

  it("goes with the notice of every package that its scripts name, and of the formulas", () => {
    const notices = read("NOTICES.txt");
    for (const name of [
      "katex",
      "preact",
      "@preact/signals-core",
      "@codemirror/view",
      "minisearch",
    ])
      expect(notices).toContain(`\n${name} `);
    expect(notices.split("\n---").length).toBeGreaterThan(10);
    expect(notices).not.toMatch(/\n(vitest|esbuild|typescript|playwright-core) \d/);
    for (const part of notices.split(/\n-{72}\n/).slice(1)) expect(part).toMatch(/copyright/i);
  });

  it("never builds code from text", () => {
    const code = files.filter((file) => file.endsWith(".js"));
    const building = code.filter((file) => /\bnew Function\b|\beval\(/.test(read(file)));
    expect(building).toEqual([]);
  });
});

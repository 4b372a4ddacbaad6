import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bench, last } from "./bench.js";
import { useBrowser } from "./browser.js";

const { open, fileUrl } = useBrowser();
const listing = "01-load-transfer.code";

let canary: Server;
let url = "";
let hits = 0;
beforeAll(async () => {
  canary = createServer((_request, response) => {
    hits += 1;
    response.writeHead(200, { "Access-Control-Allow-Origin": "*" }).end("1");
  });
  canary.on("upgrade", (_request, socket) => {
    hits += 1;
    socket.destroy();
  });
  await new Promise<void>((resolve) => canary.listen(0, "127.0.0.1", resolve));
  url = `http://127.0.0.1:${(canary.address() as AddressInfo).port}/`;
});
afterAll(() => {
  canary.close();
});

/** Tries each way out; a figure's sentence tells what became of it. */
const attempts = (address: string, own: string) => `
const found: Record<string, string> = {};
const every = globalThis as any;
const attempt = (name: string, way: () => unknown) => {
  found[name] = "waits";
  const refused = (error: any) => { found[name] = "refused"; };
  try { Promise.resolve(way()).then((got) => { found[name] = "GOT " + String(got).slice(0, 40); }, refused); } catch (error) { refused(error); }
};
attempt("fetch", () => every.fetch("${address}"));
attempt("no-cors fetch", () => every.fetch("${address}", { mode: "no-cors" }));
attempt("fetch from the course", () => every.fetch("${own}", { mode: "no-cors" }));
attempt("request", () => { const r = new every.XMLHttpRequest(); r.open("GET", "${address}", false); r.send(); return r.status; });
attempt("importScripts", () => every.importScripts("${address}"));
attempt("import", () => import("${address}"));
attempt("import of data", () => import("data:text/javascript,1"));
attempt("eval", () => every.eval("1"));
attempt("Function", () => new every.Function("return 1")());
attempt("event source", () => new Promise((yes, no) => { const s = new every.EventSource("${address}"); s.onopen = yes; s.onerror = no; }));
attempt("web socket", () => new Promise((yes, no) => { const s = new every.WebSocket("${address}".replace("http", "ws")); s.onopen = yes; s.onerror = no; }));
attempt("web transport", () => new every.WebTransport("${address}".replace("http", "https")).ready);
attempt("database", () => new Promise((yes, no) => { const r = every.indexedDB.open("x"); r.onsuccess = yes; r.onerror = no; }));
attempt("caches", () => every.caches.open("x"));
attempt("files", () => every.navigator.storage.getDirectory());
attempt("locks", () => every.navigator.locks.request("x", () => 1));
attempt("cookies", () => every.cookieStore.getAll());
attempt("local storage", () => every.localStorage.length);
attempt("document", () => every.document.title);
attempt("parent", () => every.parent.location.href);
attempt("window", () => every.window.top);
attempt("far worker", () => new Promise((yes, no) => { const w = new every.Worker("${address}"); w.onmessage = yes; w.onerror = no; }));
attempt("inner worker", () => new Promise((yes, no) => {
  const w = new every.Worker(every.URL.createObjectURL(new every.Blob(['fetch("${address}").then(() => postMessage("GOT"), () => postMessage("refused"))'])));
  w.onmessage = ({ data }: any) => (data === "GOT" ? yes(data) : no(data)); w.onerror = no;
}));
const channel = new every.BroadcastChannel("rollbook");
channel.postMessage("hello");
figure({
  id: "probe", title: "Probe", inputs: { n: from(parameters.mass, {}) },
  panels: [{ view: { x: [0, 1], y: [0, 1] }, label: "nothing", draw: () => [] }],
  says: () => JSON.stringify(found),
});
`;

/** Brings back the chapter's own cells, which run. */
const lives = async (page: Page) => {
  const own = bench(page);
  await own.press("Reset all");
  await own.says("All cells ran");
};

/** A page whose cells have run: to open one takes longer than to bring it back to them. */
async function opened(address = listing) {
  const { page } = await open(address);
  await bench(page).open();
  return page;
}

/** Runs a cell in place of one of the chapter's. */
async function run(page: Page, source: string): Promise<void> {
  const own = bench(page);
  await own.write(last, source);
  await own.press(/^Run/);
}

/** Counts on until the page says that the cells gave no answer. Runs in the page. */
async function ticksUntilStopped(): Promise<number> {
  const told = document.querySelector(".bench-bar [role=status]");
  let count = 0;
  while (!told?.textContent?.includes("no answer")) {
    await new Promise((wait) => setTimeout(wait, 10));
    count += 1;
  }
  return count;
}

describe.each([
  ["a host", listing],
  ["a folder", fileUrl(listing)],
])("hostile cells on a page from %s", (_, address) => {
  it("reach neither network nor storage nor page, and are stopped in a loop without end, also in a getter", async () => {
    hits = 0;
    const page = await opened(address);
    await run(page, attempts(url, page.url()));
    await page.evaluate(() => {
      new BroadcastChannel("rollbook").onmessage = () => {
        document.title = "reached";
      };
    });
    const probe = page.locator(".figure", { hasText: "Probe" });
    const told = async () => {
      await probe.getByRole("button", { name: /one step more/ }).click();
      return JSON.parse((await probe.locator(".says").textContent()) || '{"":"waits"}');
    };
    await expect.poll(async () => Object.values(await told()).includes("waits")).toBe(false);
    const found: Record<string, string> = await told();
    const through = Object.entries(found).filter(([, what]) => what !== "refused");
    expect(through).toEqual([]);
    expect(Object.keys(found).length).toBe(23);
    expect(hits).toBe(0);
    await fetch(url);
    expect(hits, "the host that counts is there").toBe(1);
    expect(await page.title()).not.toBe("reached");

    for (const source of [
      "for (;;) {}",
      "const o = { get x() { for (;;); } };\nconst y: number = o.x;",
    ]) {
      await run(page, source);
      const ticks = page.evaluate(ticksUntilStopped);
      await bench(page).says(`Cell ${last}: no answer for 2 seconds`);
      expect(await ticks, "the page goes on meanwhile").toBeGreaterThan(5);
      expect(await page.locator("iframe").count(), source).toBe(0);
      await lives(page);
    }
  });
});

const figure = (draw: string) => `figure({
  id: "x", title: "Mine", inputs: { n: from(parameters.mass, {}) }, says: () => "",
  panels: [{ view: { x: [0, 1], y: [0, 1] }, label: "x", draw: (v) => { ${draw} } }],
});`;

const SILENCE = 2_100; // ms: what has not answered by then is stopped

/** Until nothing has come from the cells for so long, ms. Runs in the page. */
function untilSilent(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    let timer = 0;
    const wait = () => {
      clearTimeout(timer);
      timer = window.setTimeout(resolve, milliseconds);
    };
    addEventListener("message", wait);
    wait();
  });
}

describe("hostile cells", () => {
  it("are stopped in a loop that begins while drawing; when they send what nobody asked for, once, without end, later, as steps or too much; and with marks of no kind, tone or place", async () => {
    const page = await opened();
    const { says } = bench(page);
    await run(page, figure("for (;;) {}"));
    await says(`Cell ${last}: no answer for 2 seconds`);
    expect(await page.locator("fieldset:enabled.controls").count()).toBe(0);
    await lives(page);

    for (const source of [
      'postMessage("hello");',
      "for (;;) postMessage('x'.repeat(100_000));",
      "setTimeout(() => { for (;;) postMessage(1); }, 500);",
      'for (;;) postMessage(JSON.stringify({ kind: "at", cell: 0 }));',
      'postMessage("x".repeat(50_000_000));',
    ]) {
      await run(page, source);
      await says(/nobody asked for|no answer for 2 seconds/); // whichever is seen first on a busy machine
      expect(await page.locator("iframe").count(), source).toBe(0);
      await lives(page);
    }

    for (const marks of [
      '[{ kind: "html" }] as any',
      '[label([0, 0], "x", "red" as any)]',
      "7 as any",
    ]) {
      await run(page, figure(`return ${marks};`));
      await says("nobody asked for");
      await lives(page);
    }
  });

  it("run on unseen for ten seconds at most, not at all out of sight, and again for a slider", async () => {
    const { page } = await open(listing, { userAgent: "with a clock of its own" });
    await page.clock.install();
    await page.reload();
    const { open: openBench, says, status } = bench(page);
    await openBench();
    const sandboxes = page.locator("iframe[sandbox]");
    expect(await sandboxes.count()).toBe(1);
    await page.evaluate(untilSilent, SILENCE); // a question under way would be cut short by the leap
    expect(await sandboxes.count()).toBe(1);
    await page.clock.fastForward(11_000);
    await says("nothing was asked of them for 10 seconds");
    expect(await sandboxes.count()).toBe(0);
    await page.locator(".results input[type=range]").first().press("ArrowRight");
    await says("All cells ran again.");
    expect(await sandboxes.count()).toBe(1);
    await page.evaluate(() => {
      Object.defineProperty(document, "hidden", { value: true, configurable: true });
      document.dispatchEvent(new Event("visibilitychange"));
    });
    expect(await status.textContent()).toContain("out of sight");
    expect(await sandboxes.count()).toBe(0);
  });

  it("put text where they meant HTML, and are told what cannot be shown", async () => {
    const bad = '<img src=x onerror="document.title=1"><script>document.title=1</script>';
    const page = await opened();
    const { says, resultsOf } = bench(page);
    await run(
      page,
      `
const bad = ${JSON.stringify(bad)};
worked({ id: bad, label: bad, value: 1, quantity: "count", decimals: 0, how: bad });
predict({ id: bad, ask: bad, choices: [{ text: bad, because: bad }, { text: bad, because: bad }], answer: 0 });
exercise({ id: bad, ask: bad, answer: 1, quantity: "count", decimals: 0, hint: bad, solution: bad });
figure({ id: bad, title: bad, says: () => bad, inputs: { [bad]: from(parameters.mass, { name: bad }) },
  panels: [{ x: { label: bad, quantity: "count", domain: [0, 1] }, y: { label: bad, quantity: "count", domain: [0, 1], names: [[0, bad]] },
    draw: () => [label([0, 0], bad), dot([0, 0], "ink", bad)] }] });`,
    );
    await says("All cells ran");
    await resultsOf(last).locator(".says", { hasText: "<img" }).waitFor();
    await resultsOf(last).locator(".axis-title").first().waitFor();
    expect(await resultsOf(last).locator("img, script").count()).toBe(0);
    expect(await page.title()).toContain("Cells of");

    for (const [what, source, field] of [
      [
        "a quantity nobody knows",
        'worked({ id: "x", label: "x", value: 1, quantity: "constructor" as any, decimals: 0 });',
        "quantity",
      ],
      [
        "no number",
        'worked({ id: "x", label: "x", value: NaN, quantity: "count", decimals: 0 });',
        "value",
      ],
      [
        "an axis without length",
        'figure({ id: "x", title: "x", says: () => "", inputs: {}, panels: [{ x: { label: "x", quantity: "count", domain: [1, 1] }, y: { label: "x", quantity: "count", domain: [0, 1] }, draw: () => [] }] });',
        "panels",
      ],
      [
        "a thousand decimals",
        'worked({ id: "x", label: "x", value: 1, quantity: "count", decimals: 1000 });',
        "decimals",
      ],
    ] as const) {
      await run(page, source);
      await says("All cells ran");
      const told = await resultsOf(last).textContent();
      expect(told, what).toMatch(new RegExp(`^Cannot be shown: .*${field}`));
    }
  });
});

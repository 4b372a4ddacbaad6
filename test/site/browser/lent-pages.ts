import type {
  Browser,
  BrowserContext,
  BrowserContextOptions,
  CDPSession,
  Page,
} from "playwright-core";

/**
 * A new page takes a new process, and that takes twice as long as to load a chapter in it. So pages
 * are lent to one test after the other, and emptied in between: of what the device kept, of what was
 * emulated, of what listened and of where it had been. What cannot be taken back needs another page.
 */
export type Lasting = Pick<
  BrowserContextOptions,
  "javaScriptEnabled" | "bypassCSP" | "hasTouch" | "userAgent" | "permissions" | "serviceWorkers"
>;

/** How a page looks at the world, set anew for each test. */
export interface Seen {
  readonly viewport?: { width: number; height: number } | undefined;
  readonly colorScheme?: "light" | "dark" | undefined;
  readonly reducedMotion?: "reduce" | "no-preference" | undefined;
  readonly forcedColors?: "active" | "none" | undefined;
  readonly offline?: boolean | undefined;
}

interface LentPage {
  readonly kind: string;
  readonly context: BrowserContext;
  readonly page: Page;
  readonly session: CDPSession;
  /** Where it has been, since what the device keeps is kept by origin. */
  readonly origins: Set<string>;
}

const listenedTo = [
  "console",
  "dialog",
  "download",
  "framenavigated",
  "pageerror",
  "request",
  "requestfailed",
  "response",
  "websocket",
  "worker",
];

/** Pages of one kind that wait to be lent: two, for a test of two readers. */
const most = 2;

/** Where nothing of a page is left, and yet its process is kept. */
const nowhere = "about:blank";

async function newPage(browser: Browser, kind: string, lasting: Lasting): Promise<LentPage> {
  const context = await browser.newContext({ serviceWorkers: "block", ...lasting });
  const page = await context.newPage();
  return { kind, context, page, session: await context.newCDPSession(page), origins: new Set() };
}

async function show(page: Page, seen: Seen): Promise<void> {
  const { viewport = { width: 1280, height: 900 } } = seen;
  const { colorScheme = "light", reducedMotion = "no-preference", forcedColors = "none" } = seen;
  await page.context().setOffline(seen.offline ?? false);
  await page.setViewportSize(viewport);
  await page.emulateMedia({ media: null, colorScheme, reducedMotion, forcedColors });
}

/** Takes back all that a test has done to a page. */
async function empty({ context, page, session, origins }: LentPage): Promise<void> {
  for (const event of listenedTo) page.removeAllListeners(event);
  await page.unrouteAll({ behavior: "ignoreErrors" });
  for (const other of context.pages()) if (other !== page) await other.close();
  await page.goto(nowhere);
  await page.mouse.move(0, 0);
  await page.evaluate(() => {
    window.name = "";
  });
  for (const origin of origins)
    await session.send("Storage.clearDataForOrigin", { origin, storageTypes: "all" });
  await session.send("Page.resetNavigationHistory");
}

/** The pages of one worker. */
export function lentPages(browser: Browser) {
  const free: LentPage[] = [];
  const lent: LentPage[] = [];
  return {
    async lend(address: string, look: Seen & Lasting): Promise<Page> {
      const { viewport, colorScheme, reducedMotion, forcedColors, offline, ...lasting } = look;
      const kind = JSON.stringify([new URL(address).protocol, lasting]);
      const at = free.findIndex((one) => one.kind === kind);
      const [one = await newPage(browser, kind, lasting)] = at < 0 ? [] : free.splice(at, 1);
      lent.push(one);
      one.page.on("framenavigated", (frame) => {
        if (/^(http|file)/.test(frame.url())) one.origins.add(originOf(frame.url()));
      });
      await show(one.page, { viewport, colorScheme, reducedMotion, forcedColors, offline });
      return one.page;
    },
    /** What a failing test leaves may be anything, and a worker of the offline course stays: neither is lent again. */
    async takeBack(sound: boolean): Promise<void> {
      for (const one of lent.splice(0)) {
        const alike = free.filter(({ kind }) => kind === one.kind).length;
        const again =
          sound && alike < most && !one.page.isClosed() && !one.kind.includes('"allow"');
        if (!again) await one.context.close();
        else {
          await empty(one);
          free.push(one);
        }
      }
    },
  };
}

const originOf = (url: string): string =>
  url.startsWith("file:") ? "file://" : new URL(url).origin;

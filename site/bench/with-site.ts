import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { type Browser, chromium } from "playwright-core";
import { inRoot } from "../build/paths.js";
import { filesOf } from "../commands/files-of.js";
import { chromiumPath } from "../commands/needs.js";

/** The folder of the built course. */
export const courseFolder = process.env.DIST ?? inRoot("dist");

/** Selects the sliders of its pages. */
export const courseSliders = ".slider input[type=range]";

/** Does something with a built site served, and a browser to look at it. */
export async function withSite<Found>(
  work: (browser: Browser, origin: string) => Promise<Found>,
  folder = courseFolder,
): Promise<Found> {
  const server = createServer(filesOf(folder, { dev: true }));
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const browser = await chromium.launch({
    executablePath: chromiumPath() ?? "chromium",
    args: ["--no-sandbox"],
  });
  try {
    return await work(browser, origin);
  } finally {
    await browser.close();
    server.close();
  }
}

import { createServer } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { dirname } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { buildIfChanged } from "../../../site/build/build-if-changed.js";
import { inRoot } from "../../../site/build/paths.js";
import { filesOf } from "../../../site/commands/files-of.js";
import { quickChromiumPath } from "../../../site/commands/needs.js";

declare module "vitest" {
  export interface ProvidedContext {
    /** Where the one browser of all tests listens. */
    browser: string;
    /** Where the one course of all tests is served. */
    origin: string;
  }
}

/** What is looked for in a folder; it does not change, so that the browser asks for each file once. */
const unchanging = (folder: string) => filesOf(folder, { maxAge: 3600 });
const axeFolder = dirname(createRequire(import.meta.url).resolve("axe-core/axe.min.js"));

/** One course, one server of it and one browser for all tests in a browser; `DIST` is a course that is built already. */
export default async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  if (process.env.DIST === undefined) await buildIfChanged(() => {});
  const course = unchanging(process.env.DIST ?? inRoot("dist"));
  const axe = unchanging(axeFolder); // beside the course, so that its script is compiled once and not sent page by page
  const host = createServer((asked, answer) => course(asked, answer, () => axe(asked, answer)));
  await new Promise<void>((resolve) => host.listen(0, "127.0.0.1", resolve));
  const browser = await chromium.launchServer({
    executablePath: quickChromiumPath() ?? "chromium",
    args: ["--no-sandbox"],
  });
  provide("origin", `http://127.0.0.1:${(host.address() as AddressInfo).port}`);
  provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    host.close();
    host.closeAllConnections();
  };
}

import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { chromium } from "playwright-core";
import sirv from "sirv";
import type { TestProject } from "vitest/node";
import { buildIfChanged } from "../../../site/build/build-if-changed.js";
import { inRoot } from "../../../site/build/paths.js";
import { quickChromiumPath } from "../../../site/commands/needs.js";

declare module "vitest" {
  export interface ProvidedContext {
    /** Where the one browser of all tests listens. */
    browser: string;
    /** Where the one course of all tests is served. */
    origin: string;
  }
}

/** One course, one server of it and one browser for all tests in a browser; `DIST` is a course that is built already. */
export default async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  if (process.env.DIST === undefined) await buildIfChanged(() => {});
  const host = createServer(sirv(process.env.DIST ?? inRoot("dist"), { maxAge: 3600 })); // it does not change
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

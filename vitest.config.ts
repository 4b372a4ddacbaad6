import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import LongestFirst from "./test/longest-first.js";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const browser = "test/site/browser/**/*.test.ts";

export default defineConfig({
  resolve: { alias: { "@rollbook/lib": here("lib/index.ts") } },
  test: {
    reporters: ["default", here("test/seconds.ts")],
    pool: "threads",
    isolate: false,
    // One more than cores: tests in a browser wait for it now and then.
    maxWorkers: availableParallelism() + 1,
    sequence: { sequencer: LongestFirst },
    setupFiles: [here("test/cases.ts")],
    // Only a failing test waits as long as the limits here: a busy machine may be ten times as slow.
    expect: { poll: { timeout: 60_000 } },
    projects: [
      {
        extends: true,
        test: {
          name: "lib",
          include: ["test/{lib,outside,packages,site/say,site/paddock}/**/*.test.ts"],
          testTimeout: 300_000,
        },
      },
      {
        extends: true,
        test: {
          name: "course",
          include: ["test/{site,notebooks,worked-figures}/**/*.test.ts"],
          exclude: [browser, "test/site/{say,paddock}/**"],
          globalSetup: "test/site/build-course.ts",
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: [browser],
          globalSetup: "test/site/browser/shared.ts",
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
});

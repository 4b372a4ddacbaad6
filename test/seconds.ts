import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import type { Reporter, TestModule } from "vitest/node";
import { inRoot } from "../site/build/paths.js";

const kept = inRoot(".cache/test-seconds.json");

/** A file that takes longer is named. */
const most = 20;

/** How long each test file took when it last ran on this machine, s. */
export function secondsKept(): Record<string, number> {
  try {
    return JSON.parse(readFileSync(kept, "utf8"));
  } catch {
    return {};
  }
}

/** Names each test file that takes long by itself, and keeps how long each took. */
export default class Seconds implements Reporter {
  readonly #seconds = secondsKept();
  readonly #long: string[] = [];

  onTestModuleEnd(module: TestModule): void {
    const { duration, collectDuration } = module.diagnostic();
    const file = relative(inRoot("."), module.moduleId);
    const seconds = (duration + collectDuration) / 1000;
    this.#seconds[file] = seconds;
    if (seconds > most) this.#long.push(`${file} alone took ${seconds.toFixed(0)} s`);
  }

  onTestRunEnd(): void {
    mkdirSync(inRoot(".cache"), { recursive: true });
    writeFileSync(kept, JSON.stringify(this.#seconds));
    if (this.#long.length > 0) console.log(`${this.#long.join("\n")} (more than ${most} s)`);
  }
}

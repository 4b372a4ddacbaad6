import { readFileSync, writeFileSync } from "node:fs";
import { cacheFile } from "../build/cache-folder.js";

/** Seconds that each chapter took when it last ran, by its name. */
type Seconds = Readonly<Record<string, number>>;

function recall(): Seconds {
  try {
    return JSON.parse(readFileSync(cacheFile("seconds.json"), "utf8"));
  } catch {
    return {};
  }
}

/** What chapters took before, and a place to note what they take now. */
export function secondsOfChapters() {
  const known = recall();
  const now: Record<string, number> = {};
  return {
    known,
    took(name: string, seconds: number): void {
      now[name] = Math.round(10 * seconds) / 10;
    },
    keep(): void {
      writeFileSync(cacheFile("seconds.json"), JSON.stringify({ ...known, ...now }));
    },
  };
}

import { accessSync, constants, mkdirSync } from "node:fs";
import { homedir } from "node:os";
import { inRoot } from "./paths.js";

/** Of this user, so that every clone finds what one of them worked out; in the clone where that cannot be written. */
function usable(): string {
  const { ROLLBOOK_CACHE, XDG_CACHE_HOME } = process.env;
  if (ROLLBOOK_CACHE) return ROLLBOOK_CACHE;
  const shared = `${XDG_CACHE_HOME || `${homedir()}/.cache`}/rollbook`;
  try {
    mkdirSync(shared, { recursive: true });
    accessSync(shared, constants.W_OK);
    return shared;
  } catch {
    return inRoot(".cache");
  }
}

let folder: string | undefined;

/** A file among what is kept by its content, wherever a clone lies; `ROLLBOOK_CACHE` names another folder. */
export function cacheFile(name: string): string {
  folder ??= usable();
  mkdirSync(folder, { recursive: true });
  return `${folder}/${name}`;
}

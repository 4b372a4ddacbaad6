import { cut } from "./in-short.js";

/** What a text holds, or a sentence on why it cannot be read. */
export type ReadJson =
  | { readonly json: unknown; readonly fault?: undefined }
  | { readonly json?: undefined; readonly fault: string };

/**
 * Reads JSON so that writing it again gives the same: a zero has no sign in it, and a number too
 * large to be held, which would be written as nothing, is refused. A byte order mark in front is no
 * part of it.
 */
export function readJson(text: string): ReadJson {
  try {
    const held = { "The file": JSON.parse(text.replace(/^\uFEFF/, "")) as unknown };
    const fault = tidyNumbers(held);
    return fault === undefined ? { json: held["The file"] } : { fault };
  } catch (error) {
    return { fault: `The file is not JSON: ${error instanceof Error ? error.message : error}.` };
  }
}

/** Takes the sign from every zero, part by part however deep; a sentence on the first number that is none. */
function tidyNumbers(whole: object): string | undefined {
  const waiting = [whole as Record<string, unknown>];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
    for (const [key, value] of Object.entries(part)) {
      if (value === 0) part[key] = 0;
      else if (typeof value === "number" && !Number.isFinite(value))
        return `${cut(key)} is larger than any number that can be kept.`;
      else if (typeof value === "object" && value !== null)
        waiting.push(value as Record<string, unknown>);
    }
  }
  return undefined;
}

/** Whether a value has parts inside parts inside parts, more than so many times. */
export function deeperThan(value: unknown, levels: number): boolean {
  if (typeof value !== "object" || value === null) return false;
  return levels === 0 || Object.values(value).some((part) => deeperThan(part, levels - 1));
}

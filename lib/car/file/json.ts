/** What a text holds, or a sentence on why it cannot be read. */
export type ReadJson =
  | { readonly json: unknown; readonly fault?: undefined }
  | { readonly json?: undefined; readonly fault: string };

/**
 * Reads JSON so that writing it again gives the same: a zero has no sign in it, and a number too
 * large to be held, which would be written as nothing, is refused.
 */
export function readJson(text: string): ReadJson {
  try {
    const held = { "The file": JSON.parse(text) as unknown };
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
        return `${key} is larger than any number that can be kept.`;
      else if (typeof value === "object" && value !== null)
        waiting.push(value as Record<string, unknown>);
    }
  }
  return undefined;
}

const LONGEST = 40;

/** A value from a file as JSON, short enough for a sentence, however long or deep it is. */
export function inShort(value: unknown): string {
  return cut(beginning(value, LONGEST), LONGEST);
}

/** A text that a file chose, such as the name of a field, short enough for a sentence. */
export const cut = (text: string, longest = 100): string =>
  text.length > longest ? `${text.slice(0, longest)}…` : text;

/** The JSON of a value, at least so many letters of it; each part inside another takes one. */
function beginning(value: unknown, letters: number): string {
  if (typeof value === "string") return JSON.stringify(value.slice(0, letters));
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "missing";
  const [open, close] = Array.isArray(value) ? "[]" : "{}";
  let text = open ?? "";
  for (const [name, part] of Object.entries(value)) {
    if (text.length > 1) text += ",";
    if (close === "}") text += `${JSON.stringify(name.slice(0, letters))}:`;
    if (text.length > letters) return text;
    text += beginning(part, letters - text.length);
  }
  return text + close;
}

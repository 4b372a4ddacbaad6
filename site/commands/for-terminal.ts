/** What a terminal obeys, or what turns or hides letters: controls but the line end, and marks of direction. */
const OBEYED =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** A text from somebody else's file for a terminal: what the terminal would obey is written out, as \u001b. */
export const forTerminal = (text: string): string =>
  text.replace(OBEYED, (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`);

/** The same on one line. */
export const inOneLine = (text: string): string => forTerminal(text).replaceAll("\n", "\\n");

/** How a reader of those units spells. */
export const spellingFor = (units) => (units === "us" ? "tire" : "tyre");
/** The reader who chose those units. */
export const readerWith = (units) => ({ units, spelling: spellingFor(units) });
/** A text as the reader spells it. */
export function spelt(text, { spelling }) {
  return spelling === "tire" ? text.replace(/\b([Tt])yre(s?)\b/g, "$1ire$2") : text;
}

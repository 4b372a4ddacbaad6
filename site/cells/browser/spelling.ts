import { reader, spell } from "../reader.js";

/** Spells the prose of a chapter or of the contents as the reader's units suggest; code stays as it is. */
export function spellProse(): void {
  const { page = "" } = document.documentElement.dataset;
  if (reader.units !== "us" || !/^(index|primer|\d\d-[^.]+)$/.test(page)) return;
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode as Text;
    const spelt = spell(text.data);
    if (spelt !== text.data) text.data = spelt;
  }
}

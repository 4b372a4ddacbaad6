import { documentOf } from "@rollbook/page";
import { prefix } from "../model/link-prefix.js";
import { asEdits, type Edits, editsFrom } from "../model/share.js";
import { words } from "../words.js";
import type { CellView } from "./cell.js";

const kept = documentOf<Edits>({
  key: `cells:${document.documentElement.dataset.page}`,
  empty: {},
  read: asEdits,
});

export const editsOf = (cells: readonly CellView[]): Edits =>
  Object.fromEntries(
    cells.filter((cell) => cell.isEdited()).map(({ id, editor }) => [id, editor.text()]),
  );

function take(cells: readonly CellView[], edits: Edits): void {
  for (const { id, editor } of cells) {
    const text = Object.hasOwn(edits, id) ? edits[id] : undefined;
    if (text !== undefined) editor.replace(text);
  }
}

/** Takes what the address brings into the editors, and says what it was; undefined where it brings nothing. */
export async function takeFromLink(cells: readonly CellView[]): Promise<string | undefined> {
  if (!location.hash.startsWith(prefix)) return undefined;
  const edits = await editsFrom(location.hash);
  if (!edits) return words.badLink;
  const strange = Object.keys(edits).find((id) => !cells.some((cell) => cell.id === id));
  if (strange !== undefined) return words.strangeCell(strange.slice(0, 40));
  take(cells, edits);
  return words.fromLink(Object.keys(edits).length);
}

export function takeFromDevice(cells: readonly CellView[]): void {
  take(cells, kept.now.value);
}

export function keepOnDevice(cells: readonly CellView[]): void {
  const edits = editsOf(cells);
  if (Object.keys(edits).length > 0) void kept.setTyped(edits);
  else kept.clear();
}

/** Lines of a document between which a table is kept. */
export interface Marks {
  readonly opening: string;
  readonly ending: string;
}

/** The document with the table between the marks, all else as it was. */
export function keepTable(document: string, { opening, ending }: Marks, table: string): string {
  const from = document.indexOf(`${opening}\n`);
  const to = document.indexOf(ending, from);
  if (from < 0 || to < 0) throw new Error(`no table between ${opening} and ${ending}`);
  return `${document.slice(0, from)}${opening}\n${table}\n${document.slice(to)}`;
}

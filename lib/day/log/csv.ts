/** Rows of cells. */
export type Table = readonly (readonly string[])[];

const FORMULA = /^'*\s*[=+\-@＝＋－＠\t\r\n]/; // what a spreadsheet may take for a formula – OWASP, CSV injection
const GUARDED = /^'+\s*[=+\-@＝＋－＠\t\r\n]/;
const NUMBER = /^-?\d+(\.\d+)?$/;

/**
 * A table as text that any spreadsheet opens: commas, CRLF, quotes where needed (RFC 4180).
 *
 * A cell that a spreadsheet could run as a formula gets an apostrophe in front; plain numbers do not.
 */
export function formatCsv(table: Table): string {
  return table.map((row) => `${row.map(formatCell).join(",")}\r\n`).join("");
}

function formatCell(cell: string): string {
  const safe = FORMULA.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell;
  return /[",;\r\n\t]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table that was read, or what is wrong with its text. */
export type ReadTable =
  | { readonly table: Table; readonly lines: readonly number[]; readonly fault?: undefined }
  | { readonly table?: undefined; readonly fault: string };

/**
 * Reads what `formatCsv` wrote, or what a spreadsheet made of it: commas, semicolons or tabs (the
 * first line tells which), any line ends, with or without a byte order mark. An empty line is a row
 * with one empty cell. `lines` gives the line of the text on which each row begins; 1 is the first.
 */
export function parseCsv(text: string): ReadTable {
  const clean = text.replace(/^\uFEFF/, "");
  const separator = separatorOf(clean);
  const rows: string[][] = [];
  const lines: number[] = [];
  let row: string[] = [];
  let [at, start, line] = [0, 0, 1];
  while (at < clean.length) {
    const cell = cellAt(clean, at, separator);
    if (cell === undefined)
      return {
        fault: `Line ${line + lineEndsIn(clean, start, at)} has a quote that is not closed properly.`,
      };
    row.push(unguarded(cell.text));
    at = cell.end;
    if (clean[at] === separator && at + 1 < clean.length) at += 1;
    else {
      if (clean[at] === separator) row.push("");
      rows.push(row);
      lines.push(line);
      row = [];
      at = clean.startsWith("\r\n", at) ? at + 2 : at + 1;
      line += lineEndsIn(clean, start, at);
      start = at;
    }
  }
  return { table: rows, lines };
}

const lineEndsIn = (text: string, from: number, to: number): number =>
  text.slice(from, to).match(/\r\n|\r|\n/g)?.length ?? 0;

/** The separator that is most frequent in the first line. */
function separatorOf(text: string): string {
  const first = text.split(/\r\n|\n|\r/, 1)[0] ?? "";
  const count = (separator: string) => first.split(separator).length;
  return [",", ";", "\t"].reduce((best, one) => (count(one) > count(best) ? one : best));
}

/** One cell and where it ends; nothing when its quotes do not close before a separator. */
function cellAt(text: string, start: number, separator: string) {
  if (text[start] !== '"') {
    const end = endOfPlain(text, start, separator);
    return { text: text.slice(start, end), end };
  }
  const close = closingQuote(text, start + 1);
  const end = close + 1;
  const ends = end === text.length || text[end] === separator || /[\r\n]/.test(text[end] ?? "");
  if (close < 0 || !ends) return undefined;
  return { text: text.slice(start + 1, close).replaceAll('""', '"'), end };
}

function endOfPlain(text: string, start: number, separator: string): number {
  let end = start;
  while (end < text.length && text[end] !== separator && text[end] !== "\r" && text[end] !== "\n")
    end += 1;
  return end;
}

/** The next quote that is not doubled; −1 when there is none. */
function closingQuote(text: string, start: number): number {
  let at = text.indexOf('"', start);
  while (at >= 0 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at;
}

function unguarded(cell: string): string {
  return GUARDED.test(cell) ? cell.slice(1) : cell;
}

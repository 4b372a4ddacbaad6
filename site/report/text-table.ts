/** Rows of text in columns: the first is set to the left, the others to the right. */
export function textTable(rows: readonly (readonly string[])[]): string {
  const count = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) =>
    Math.max(...rows.map((row) => (row[i] ?? "").length)),
  );
  const line = (row: readonly string[]) =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)));
  return rows.map((row) => `  ${line(row).join("   ")}`.trimEnd()).join("\n");
}

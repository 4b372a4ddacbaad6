import type { ComponentChildren } from "preact";

/** A table that scrolls in itself where it is wider than the page. */
export function Table({
  label,
  columns,
  rows,
}: {
  readonly label: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly ComponentChildren[])[];
}) {
  return (
    <div class="table" role="region" tabIndex={0} aria-label={label}>
      <table>
        <thead>
          <tr>
            {columns.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={i}>
              {row.map((cell, j) => (
                <td key={j}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

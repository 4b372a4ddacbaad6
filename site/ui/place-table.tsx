import type { ComponentChildren } from "preact";

/** A row of a table of places: where and when, then its cells. */
export interface PlaceRow {
  readonly corner: string;
  readonly phase: string;
  readonly cells: readonly ComponentChildren[];
}

/**
 * A table with a row for each part of each corner; on a narrow screen each is a block of its own.
 *
 * The roles are written out because a browser forgets them where a row is laid out as a block.
 */
export function PlaceTable({
  label,
  columns,
  rows,
}: {
  readonly label: string;
  readonly columns: readonly [corner: string, phase: string, ...others: string[]];
  readonly rows: readonly PlaceRow[];
}) {
  const [, , ...others] = columns;
  return (
    <div class="table" role="region" tabIndex={0} aria-label={label}>
      <table class="by-place" role="table">
        <thead role="rowgroup">
          <tr role="row">
            {columns.map((name) => (
              <th key={name} scope="col" role="columnheader">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <Place key={`${row.corner} ${row.phase}`} row={row} columns={others} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** A row, whose cells say on a narrow screen what column they are of. */
function Place({
  row: { corner, phase, cells },
  columns,
}: {
  readonly row: PlaceRow;
  readonly columns: readonly string[];
}) {
  return (
    <tr role="row">
      <th role="rowheader" scope="row">
        {corner}
      </th>
      <td role="cell" class="phase">
        {phase}
      </td>
      {cells.map((cell, i) => (
        <td role="cell" key={columns[i]} data-label={columns[i] ?? ""}>
          {cell}
        </td>
      ))}
    </tr>
  );
}

import { phaseNames } from "../../lib/balance/phases.js";
import type { Car } from "../../lib/car/car.js";
import { labelOf } from "../../lib/change/label.js";
import { movedInWords, signed } from "../../lib/change/moved.js";
import { parameters } from "../../lib/parameters.js";
import type { UnitSystem } from "../../lib/units.js";
import type { SetUpReport } from "./set-up-report.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

type Row = SetUpReport["changes"][number];
type Moved = NonNullable<Row["moved"]>;

/** What every single change does to balance, and what else it moves. */
export function changes(
  rows: SetUpReport["changes"],
  car: Car,
  system: UnitSystem,
  write: Writer,
): string {
  const named = rows.map((row) => ({ ...row, label: labelOf(row.change, car, system) }));
  const table = textTable([["", ...phaseNames], ...named.flatMap((row) => shifts(row, write))]);
  const unit = write.unit("acceleration");
  return [
    `Single changes: shift of the margin, ${unit} (above 0: towards understeer)`,
    table,
    "",
    "What else each change moves",
    ...named.map((row) => alsoMoved(row, system)),
  ].join("\n");
}

/** The change alone and, where the seats can bring the body back, with them turned. */
function shifts({ label, moved, putBack }: Row, { change }: Writer): string[][] {
  const cells = ({ phases }: Moved) =>
    phaseNames.map((name) => change("acceleration", phases[name].understeerMargin, 3));
  const alone = moved === undefined ? [label] : [label, ...cells(moved)];
  return putBack === undefined ? [alone] : [alone, [PUT_BACK, ...cells(putBack.moved)]];
}

const PUT_BACK = "  … with the seats put back";

function alsoMoved(row: Row, system: UnitSystem): string {
  if (row.moved === undefined) return `  ${row.label}: ${row.refused}`;
  const parts = [...movedInWords(row.moved.figures, system), ...seats(row), ...broken(row)];
  return `  ${row.label}: ${parts.length === 0 ? "nothing else" : parts.join("; ")}.`;
}

function seats({ putBack }: Row): string[] {
  if (putBack === undefined) return [];
  const { front, rear } = putBack.turns;
  const four = [front.left, front.right, rear.left, rear.right].map((turns) => signed(turns, 1));
  return [`put back with seat turns ${four.join(" / ")}`];
}

function broken({ broken: margins = [] }: Row): string[] {
  return margins.map(
    ({ parameter, where }) => `BREAKS ${parameters[parameter].name.toLowerCase()} ${where}`,
  );
}

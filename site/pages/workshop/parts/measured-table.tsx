import { type Compared, type MeasuredChange, median } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { signed } from "../../../say/figures.js";
import {
  besideInWords,
  changedAmount,
  measuredFigures,
  measured as said,
  signedAmount,
  whetherMeasured,
} from "../../../say/workshop/measured.js";
import { List } from "../../../ui/list.js";
import { shiftText } from "../../../ui/shift-bars.js";
import { Table } from "../../../ui/table.js";

/** Few drivers are not told: who said what could be guessed. */
const SMALLEST_GROUP = 3;

interface Of {
  /** What was measured; nothing where nothing was. */
  readonly found: MeasuredChange | undefined;
  /** What drivers felt, each by themselves. */
  readonly compared: readonly Compared[];
  /** One driver's own page tells what that one felt. */
  readonly isOwn: boolean;
}

/** One change: what was felt, predicted and measured, a kind a row. */
export function MeasuredTable(of: Of) {
  const rows = [balanceRow(of), ...figureRows(of.found)].filter((row) => row !== undefined);
  if (rows.length === 0) return <p class="quiet">{said.nothing}</p>;
  const notes = of.found === undefined ? [] : besideInWords(of.found, reader);
  return (
    <>
      <Table label={said.heading} columns={Object.values(said.columns)} rows={rows} />
      {notes.length > 0 && <List texts={notes} />}
    </>
  );
}

function balanceRow({ compared, isOwn }: Of) {
  const cells = compared.flatMap((one) => one.cells);
  const felt = cells.flatMap((cell) => cell.felt ?? []);
  const drivers = compared.filter((one) => one.cells.some((cell) => cell.felt !== undefined));
  if (cells.length === 0) return undefined;
  const isTold = felt.length > 0 && (isOwn || drivers.length >= SMALLEST_GROUP);
  const points = isTold ? said.points(signed(median(felt), 1)) : said.none;
  const predicted = shiftText(median(cells.map((cell) => cell.predicted)));
  return [said.rows.balance, points, predicted, said.none];
}

function figureRows(found: MeasuredChange | undefined) {
  return measuredFigures.map(([key, quantity, decimals]) => {
    const one = found?.[key];
    if (one === undefined) return undefined;
    const { difference } = one;
    const predicted = "predicted" in one ? one.predicted : undefined;
    return [
      said.rows[key],
      said.none,
      predicted === undefined ? said.none : signedAmount(quantity, predicted, decimals, reader),
      <>
        {changedAmount(difference, quantity, decimals, reader)}
        <br />
        <small>{whetherMeasured(difference)}</small>
      </>,
    ];
  });
}

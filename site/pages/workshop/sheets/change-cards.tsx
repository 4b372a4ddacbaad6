import { type SheetRow, safetyOf } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { toDoInWords, undoInWords } from "../../../say/plan.js";
import { safetyLines } from "../../../say/workshop/safety.js";
import { List } from "../../../ui/list.js";
import { tippingOf } from "../day/beware.js";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";
import { Blank, type OfDay, Paper } from "./paper.js";

const { sheets: said } = words;

/** Whether hands go to the car before that run. */
export const isOnCard = ({ toDo }: SheetRow): boolean => toDo.length > 0;

/** One card for each time that hands go to the car. */
export function ChangeCards({ day, rows }: OfDay) {
  return (
    <Paper day={day} title={said.kinds.cards}>
      {rows.map(
        (row, i) =>
          isOnCard(row) && (
            <Card key={row.run} day={day} row={row} before={rows[i - 1]?.car ?? day.car} />
          ),
      )}
    </Paper>
  );
}

function Card({
  day,
  row,
  before,
}: {
  readonly day: Draft;
  readonly row: SheetRow;
  readonly before: Draft["car"];
}) {
  const title = row.step.kind === "return" ? said.backTitle(row.run) : said.cardTitle(row.run);
  return (
    <section class="card">
      <h4>{title}</h4>
      <p>
        <b>{said.doThis}</b>
      </p>
      <List texts={toDoInWords(row, before, reader)} kind="to-do" />
      <p>{said.takes(row.minutes.change)}</p>
      <div class="safety">
        <h5>{said.safety}</h5>
        <List texts={[...tippingOf(row), ...safetyLines(safetyOf(day, row))]} />
      </div>
      <p>
        <b>{said.undo}</b>
      </p>
      <List texts={undoInWords(row, reader)} />
      <Blank label={said.responsible} />
      <Blank label={said.checkedBy} />
    </section>
  );
}

import { type SheetRow, safetyOf } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { toDoInWords, undoInWords } from "../../../say/plan.js";
import { safetyLines } from "../../../say/workshop/safety.js";
import { List } from "../../../ui/list.js";
import { tippingOf } from "../day/beware.js";
import { carTitle } from "../day/car-names.js";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";
import { Blank, type CarRun, carsIn, type OfDay, Paper } from "./paper.js";
import { PartPictures } from "./part-picture.js";

const { sheets: said } = words;

/** Whether hands go to the car before that run. */
export const isOnCard = ({ toDo }: SheetRow): boolean => toDo.length > 0;

/** One card for each time that hands go to the car. */
export function ChangeCards({ day, rows, sheets }: OfDay) {
  const cards = rows.flatMap(({ run }) => carsIn(sheets, run)).filter(({ row }) => isOnCard(row));
  return (
    <Paper day={day} title={said.kinds.cards}>
      {cards.map((one) => (
        <Card key={`${one.row.run} ${one.car}`} day={day} one={one} />
      ))}
    </Paper>
  );
}

function Card({ day, one: { car, row } }: { readonly day: Draft; readonly one: CarRun }) {
  const run = row.step.kind === "return" ? said.backTitle(row.run) : said.cardTitle(row.run);
  const whose = carTitle(day, car);
  const title = whose === undefined ? run : `${whose}. ${run}`;
  const came = day.others?.find(({ carNumber }) => carNumber === car) ?? day;
  return (
    <section class="card">
      <PartPictures car={row.stood} changes={row.toDo} />
      <h4>{title}</h4>
      <p>
        <b>{said.doThis}</b>
      </p>
      <List texts={toDoInWords(row, reader)} kind="to-do" />
      <p>{said.takes(row.minutes.change)}</p>
      <div class="safety">
        <h5>{said.safety}</h5>
        <List texts={[...tippingOf(row), ...safetyLines(safetyOf(came, row))]} />
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

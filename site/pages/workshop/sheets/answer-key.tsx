import type { Car, SheetRow, Venue } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { toDoInWords } from "../../../say/plan.js";
import { asides, bewares } from "../day/beware.js";
import { carTitle } from "../day/car-names.js";
import { RunShifts } from "../parts/sure-shifts.js";
import { readyQuestions } from "../run/vote-state.js";
import { words } from "../words.js";
import { carsIn, type OfDay, Paper } from "./paper.js";

const { sheets: said } = words;

/** What the model predicts for each run, and the right letters: for the instructor alone. */
export function AnswerKey({ day, rows, sheets }: OfDay) {
  const runs = rows.flatMap(({ run }) => carsIn(sheets, run));
  return (
    <Paper day={day} title={said.key} secret>
      <p>{said.keyHelp}</p>
      <div class="keys">
        {runs.map(({ car, row }) => (
          <RunKey
            key={`${row.run} ${car}`}
            row={row}
            id={`key-${row.run}-${car}`}
            whose={carTitle(day, car)}
            measured={(day.others?.find(({ carNumber }) => carNumber === car) ?? day).car}
            venue={day.venue}
          />
        ))}
      </div>
      <h4>{said.votes}</h4>
      <Votes />
    </Paper>
  );
}

function RunKey({
  row,
  id,
  whose = "",
  ...sampled
}: {
  readonly row: SheetRow;
  readonly id: string;
  readonly measured: Car;
  readonly venue: Venue;
  /** Which car it is, where cars differ. */
  readonly whose: string | undefined;
}) {
  if (row.phases === undefined || row.toDo.length === 0) return null;
  const toDo = toDoInWords(row, reader);
  return (
    <section class="key">
      <h4>
        {[words.plan.run(row.run), whose, toDo.join("; ")].filter((one) => one !== "").join(": ")}
      </h4>
      <RunShifts id={id} row={row} caption={said.keyShifts} {...sampled} />
      {bewares(row).map((sentence) => (
        <p key={sentence} class="beware">
          {spell(sentence)}
        </p>
      ))}
      {asides(row).map((sentence) => (
        <p key={sentence}>{spell(sentence)}</p>
      ))}
    </section>
  );
}

/** The question of each idea with its right letter. */
function Votes() {
  const asked = useMemo(
    () => readyQuestions.filter(({ form }) => form === "first").map(({ ask }) => ask()),
    [],
  );
  return (
    <ol class="votes">
      {asked.map(({ ask, choices, answer }) => {
        const right = choices[answer];
        const because = spell(`${right?.text ?? ""} ${right?.because ?? ""}`);
        return (
          <li key={ask}>
            <p>{spell(ask)}</p>
            <p>
              <b>{said.right(words.run.letters[answer] ?? "", because)}</b>
            </p>
          </li>
        );
      })}
    </ol>
  );
}

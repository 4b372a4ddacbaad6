import { words } from "../words.js";
import { type OfDay, Paper } from "./paper.js";

/** Four letters, one on each quarter of the page. */
export function LetterCards({ day }: OfDay) {
  return (
    <Paper day={day} title={words.sheets.kinds.letters}>
      <p>{words.sheets.lettersHelp}</p>
      <div class="letters-a-d">
        {words.run.letters.map((letter) => (
          <div key={letter}>{letter}</div>
        ))}
      </div>
    </Paper>
  );
}

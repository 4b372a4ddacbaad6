import { textUnder } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { LinesField } from "../../../ui/field.js";
import { sayKept } from "../parts/say-kept.js";
import { words } from "../words.js";

const { run: said } = words;
const note = textUnder("workshop/run-note");

function keep(): void {
  const text = note.now.value.trim();
  if (text === "") return;
  write({ kind: "note", words: text });
  note.clear();
  sayKept(said.noted);
}

/** A note that goes into the log while it is fresh. */
export function Note() {
  return (
    <div class="part">
      <LinesField
        id="run-note"
        label={said.addNote}
        rows={2}
        maxLength={5000}
        value={note.now.value}
        type={(text) => void note.setTyped(text)}
      />
      <p class="tools">
        <Button id="keep-note" work={keep}>
          {said.keepNote}
        </Button>
      </p>
    </div>
  );
}

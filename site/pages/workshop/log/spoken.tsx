import { useSignal } from "@preact/signals";
import { type Log, type SaidEntry, saidIn } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { log as said } from "../../../say/workshop/log.js";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { LinesField } from "../../../ui/field.js";
import { sayKept } from "../parts/say-kept.js";
import { note } from "./drafts.js";
import { timeOf } from "./time.js";
import { Withdraw } from "./withdraw.js";

/** Predictions, votes and notes, and a place to add a note. */
export function Spoken({ log }: { readonly log: Log }) {
  const entries = saidIn(log);
  return (
    <>
      <h3>{said.other}</h3>
      {entries.length === 0 ? (
        <p class="quiet">{said.nothing}</p>
      ) : (
        <ul class="filed">
          {entries.map((entry, i) => (
            <li key={entry.id}>
              <span>{`${timeOf(entry.at)}: ${inWords(entry)}`}</span>
              <Withdraw id={`withdraw-spoken-${i}`} of={entry.id} what={inWords(entry)} />
            </li>
          ))}
        </ul>
      )}
      <NoteField />
    </>
  );
}

function inWords(entry: SaidEntry): string {
  if (entry.kind === "prediction")
    return said.prediction(entry.by ?? said.somebody, entry.expects, entry.reason);
  if (entry.kind === "note") return entry.words;
  const { a, b, c, d } = entry.count;
  return spell(said.poll(entry.question, entry.vote, `A ${a}, B ${b}, C ${c}, D ${d}`));
}

function NoteField() {
  const fault = useSignal<string | undefined>(undefined);
  const add = () => {
    const text = note.now.value.trim();
    fault.value = text === "" ? said.noteFault : undefined;
    if (text === "") return;
    write({ kind: "note", words: text });
    note.clear();
    sayKept(said.noteAdded);
  };
  return (
    <>
      <LinesField
        id="log-note"
        label={said.noteLabel}
        rows={2}
        maxLength={5000}
        value={note.now.value}
        fault={fault.value}
        type={(text) => void note.setTyped(text)}
      />
      <p class="tools">
        <Button id="add-note" work={add}>
          {said.addNote}
        </Button>
      </p>
    </>
  );
}

import { reader, spell } from "@rollbook/page";
import { refusalInWords } from "../../../say/refusal.js";
import { words } from "../words.js";
import type { Put } from "./run-question.js";

/** A question as it is asked: nothing tells which answer is right. */
export function AskedToAll({ asked }: { readonly asked: Put }) {
  return (
    <>
      <p class="ask">{spell(asked.ask)}</p>
      <ol type="A" class="answers-a-d">
        {asked.choices.map(({ text }) => (
          <li key={text}>{spell(text)}</li>
        ))}
      </ol>
      {asked.instead !== undefined && (
        <p class="quiet">{words.run.instead(refusalInWords(asked.instead, reader))}</p>
      )}
    </>
  );
}

import { element } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";

const { run: said } = words;

/** A note that goes into the log while it is fresh. */
export function noteField(): HTMLElement {
  const input = element("textarea", { id: "run-note", rows: 2, maxlength: 5000 });
  const keep = () => {
    const text = input.value.trim();
    if (text === "") return;
    write({ kind: "note", words: text });
    input.value = "";
    say(said.noted);
  };
  const label = element("label", { for: "run-note" }, said.addNote);
  return element(
    "div",
    { class: "part" },
    element("div", { class: "field" }, label, input),
    element("p", { class: "tools" }, button("keep-note", said.keepNote, keep)),
  );
}

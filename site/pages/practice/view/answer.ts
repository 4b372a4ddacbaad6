import type { Change, Practice } from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { changeSize, leverName } from "../../../say/change.js";
import { practiceLabel } from "../../../say/practice.js";
import { causesFor, nextChoices } from "../puzzle/answers.js";
import type { Level } from "../puzzle/puzzle.js";
import { words } from "../words.js";
import { button, part } from "./parts.js";

/** What was changed: one of the changes that can be felt on this car. */
export function causePart(
  practice: Practice,
  level: Level,
  file: (cause: Change) => void,
): HTMLElement {
  let cause: Change | undefined;
  const rows = causesFor(practice, level).map((change, i) => {
    const input = element("input", { type: "radio", name: "cause", id: `cause-${i}` });
    input.addEventListener("change", () => {
      cause = change;
    });
    return element("label", {}, input, practiceLabel(change, practice.car, reader));
  });
  const fault = element("p", { class: "fault", role: "alert" });
  const send = () => {
    if (cause === undefined) fault.textContent = words.causeFault;
    else file(cause);
  };
  return part(
    "cause",
    words.cause,
    element(
      "fieldset",
      { class: "causes" },
      element("legend", {}, words.causeAsk),
      element("div", {}, ...rows),
    ),
    element("p", { class: "quiet" }, words.causeHelp),
    fault,
    button("file-cause", words.fileCause, send, "go"),
  );
}

/** One change of the car as it is now. */
export function nextPart({ changed }: Practice, drive: (next: Change) => void): HTMLElement {
  const choices = nextChoices(changed);
  const places = choices.map(({ changes: [first] }) => (first ? leverName(first, reader) : ""));
  const where = select("next-where", places);
  const by = select("next-by", []);
  const changes = () => choices[Number(where.value)]?.changes ?? [];
  const fill = () => {
    by.replaceChildren(...options(changes().map((change) => changeSize(change, reader))));
  };
  where.addEventListener("change", fill);
  const fault = element("p", { class: "fault", role: "alert" });
  const send = () => {
    const next = by.value === "" ? undefined : changes()[Number(by.value)];
    fault.textContent = next === undefined ? words.nextFault : "";
    if (next !== undefined) drive(next);
  };
  return part(
    "next",
    words.next,
    element("p", {}, words.nextIntro),
    field(words.nextWhere, where),
    field(words.nextBy, by),
    fault,
    button("drive-again", words.makeIt, send, "go"),
  );
}

/** Nothing is chosen until the learner chooses. */
const options = (texts: readonly string[]): HTMLElement[] => [
  element("option", { value: "" }, words.chooseOne),
  ...texts.map((text, i) => element("option", { value: i }, text)),
];

function select(id: string, texts: readonly string[]): HTMLSelectElement {
  const made = element("select", { id });
  made.append(...options(texts));
  return made;
}

const field = (label: string, input: HTMLElement): HTMLElement =>
  element("div", { class: "field" }, element("label", { for: input.id }, label), input);

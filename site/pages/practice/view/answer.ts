import { type Change, labelOf, type Practice } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { causesFor, nextChoices, placeLabel, stepLabel } from "../puzzle/answers.js";
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
    return element("label", {}, input, spell(labelOf(change, practice.car, reader.units)));
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

/** One change of the car as it is now; `drive` gives back why it cannot be driven. */
export function nextPart({ changed }: Practice, drive: (next: Change) => void): HTMLElement {
  const choices = nextChoices(changed);
  const where = element("select", { id: "next-where" });
  const by = element("select", { id: "next-by" });
  where.append(
    ...choices.map(({ changes: [first] }, i) =>
      element("option", { value: i }, first === undefined ? "" : spell(placeLabel(first))),
    ),
  );
  const changes = () => choices[Number(where.value)]?.changes ?? [];
  const fill = () =>
    by.replaceChildren(
      ...changes().map((change, i) =>
        element("option", { value: i }, stepLabel(change, reader.units)),
      ),
    );
  where.addEventListener("change", fill);
  fill();
  const send = () => {
    const next = changes()[Number(by.value)];
    if (next !== undefined) drive(next);
  };
  return part(
    "next",
    words.next,
    element("p", {}, words.nextIntro),
    element(
      "div",
      { class: "field" },
      element("label", { for: "next-where" }, words.nextWhere),
      where,
    ),
    element("div", { class: "field" }, element("label", { for: "next-by" }, words.nextBy), by),
    button("drive-again", words.makeIt, send, "go"),
  );
}

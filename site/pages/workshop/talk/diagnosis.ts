import { type Diagnosis, isBrakesRearwards, type Proposal } from "@rollbook/lib";
import { element, format, spell } from "@rollbook/page";
import {
  easedNotes,
  leanNote,
  nearTippingNotes,
  onStopClauses,
} from "../../../report/balance-notes.js";
import { change as changeDay, theDay } from "../day/open-day.js";
import { button, listOf } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { say } from "../parts/notice.js";
import { shiftBars } from "../parts/shift-bars.js";
import { words } from "../words.js";

const { talk: said } = words;

/** What to ask, what to change next, and why not the others. */
export function told(diagnosis: Diagnosis): HTMLElement[] {
  const { summary, asks, proposals, notProposed, nearTipping, eased } = diagnosis;
  const asked = [...new Set(asks.map(({ ask }) => ask))];
  const items = proposals.map(proposal);
  const others = notProposed.map(({ name, why }) => said.because(name, why));
  return [
    element("p", { class: "summary" }, spell(summary)),
    ...bewares(nearTippingNotes(nearTipping, [], format)),
    ...easedNotes(eased, format).map((note) => element("p", { class: "quiet" }, spell(note))),
    ...(asked.length > 0 ? [element("h3", {}, said.asks), listOf(asked)] : []),
    ...(items.length > 0
      ? [element("h3", {}, said.proposals), element("ol", { class: "proposals" }, ...items)]
      : []),
    ...(others.length > 0
      ? [fold("not-proposed", said.others(others.length), listOf(others))]
      : []),
  ];
}

const bewares = (sentences: readonly string[]): HTMLElement[] =>
  sentences.map((sentence) => element("p", { class: "beware" }, spell(sentence)));

/** What to know of a change besides what it does to balance. */
function asideOf({ change, onStops, eased, leanCostUnknown }: Proposal): string[] {
  const end = "end" in change ? [change.end] : [];
  return [
    ...onStopClauses(onStops, "comes to be").map(said.clause),
    ...easedNotes(eased, format),
    ...(leanCostUnknown ? leanNote(end) : []),
  ].map((sentence) => spell(sentence));
}

function proposal(one: Proposal, index: number): HTMLElement {
  const add = () => {
    const day = theDay();
    if (day === undefined) return;
    changeDay({ ...day, steps: [...day.steps, { kind: "change", change: one.change }] });
    say(said.added);
  };
  return element(
    "li",
    {},
    element("h4", {}, spell(one.label)),
    ...(isBrakesRearwards(one.change)
      ? [element("p", { class: "beware" }, words.safety.brakesRearwards)]
      : []),
    ...bewares(nearTippingNotes(one.nearTipping, [], format)),
    listOf([...one.reasons, ...asideOf(one)]),
    element("p", { class: "quiet" }, said.minutes(one.minutes)),
    shiftBars(one.phases, said.effect),
    one.putBack.length > 0
      ? element("div", {}, element("p", {}, `${said.putBack}:`), listOf(one.putBack))
      : element("p", { class: "quiet" }, said.nothingBack),
    ...(one.sideEffects.length > 0
      ? [fold(`side-${index}`, said.sideEffects, listOf(one.sideEffects))]
      : []),
    element("p", { class: "tools" }, button(`to-plan-${index}`, said.addToPlan, add)),
  );
}

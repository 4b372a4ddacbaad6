import { type Diagnosis, isBrakesRearwards, type Proposal } from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import { change as changeDay, theDay } from "../day/open-day.js";
import { button, listOf } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { say } from "../parts/notice.js";
import { shiftBars } from "../parts/shift-bars.js";
import { words } from "../words.js";

const { talk: said } = words;

/** What to ask, what to change next, and why not the others. */
export function told({ summary, asks, proposals, notProposed }: Diagnosis): HTMLElement[] {
  const asked = [...new Set(asks.map(({ ask }) => ask))];
  const items = proposals.map(proposal);
  const others = notProposed.map(({ name, why }) => said.because(name, why));
  return [
    element("p", { class: "summary" }, spell(summary)),
    ...(asked.length > 0 ? [element("h3", {}, said.asks), listOf(asked)] : []),
    ...(items.length > 0
      ? [element("h3", {}, said.proposals), element("ol", { class: "proposals" }, ...items)]
      : []),
    ...(others.length > 0
      ? [fold("not-proposed", said.others(others.length), listOf(others))]
      : []),
  ];
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
    listOf(one.reasons),
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

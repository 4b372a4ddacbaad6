import {
  type Car,
  type Diagnosis,
  isBrakesRearwards,
  type Proposal,
  placesOf,
  venueSpeed,
} from "@rollbook/lib";
import { element, format, reader, spell } from "@rollbook/page";
import {
  easedNotes,
  leanNote,
  nearTippingNotes,
  onStopClauses,
} from "../../../say/balance-notes.js";
import { changeLabel, leverName } from "../../../say/change.js";
import {
  askInWords,
  outcomeInWords,
  putBackInWords,
  reasonInWords,
  whyNotInWords,
} from "../../../say/diagnosis.js";
import { movedInWords } from "../../../say/figures.js";
import { type BandsOf, bandsFrom } from "../../bands/bands.js";
import { change as changeDay, theDay } from "../day/open-day.js";
import { button, listOf } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { say } from "../parts/notice.js";
import { sureShiftBars } from "../parts/shift-bars.js";
import { words } from "../words.js";

const { talk: said } = words;

/** The car that the diagnosis is of. */
type Of = Pick<BandsOf, "car" | "measured">;

/** One at a time: a new diagnosis ends what was being worked out for the last. */
const bands = bandsFrom("workshop-worker.js");

/** What to ask, what to change next, and why not the others. */
export function told(diagnosis: Diagnosis, { car, measured }: Of): HTMLElement[] {
  const { outcome, asks, targets, proposals, notProposed, nearTipping, eased } = diagnosis;
  const asked = [...new Set(asks.map((ask) => askInWords(ask, reader)))];
  const sure = proposals.map(({ phases }) => sureShiftBars(phases, said.effect));
  const items = proposals.map((one, i) => proposal(one, car, i, sure[i]?.whole));
  const progress = element("p", { class: "quiet" }, words.sure.working);
  const changes = proposals.map(({ change }) => change);
  if (changes.length === 0) bands.drop();
  else
    bands.begin({ car, measured, changes, speed: venueSpeed(placesOf(targets)) }, (told) => {
      progress.textContent = words.sure.progress(told.count, told.of);
      told.changes.forEach((band, i) => {
        if (band.phases) sure[i]?.tell(band.putBack ?? band.phases);
      });
    });
  const others = notProposed.map(({ place, why }) =>
    said.because(leverName(place, reader), whyNotInWords(why, car, reader)),
  );
  return [
    element("p", { class: "summary" }, outcomeInWords(outcome, car, reader)),
    ...bewares(nearTippingNotes(nearTipping, [], format)),
    ...easedNotes(eased, format).map((note) => element("p", { class: "quiet" }, spell(note))),
    ...(asked.length > 0 ? [element("h3", {}, said.asks), listOf(asked)] : []),
    ...(items.length > 0
      ? [
          element("h3", {}, said.proposals),
          progress,
          element("p", { class: "quiet" }, words.sure.help),
          element("ol", { class: "proposals" }, ...items),
        ]
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

function proposal(
  one: Proposal,
  car: Car,
  index: number,
  shifts = element("div", {}),
): HTMLElement {
  const moves = movedInWords(one.moved, reader);
  const putBack = one.putBack.map(putBackInWords);
  const add = () => {
    const day = theDay();
    if (day === undefined) return;
    changeDay({ ...day, steps: [...day.steps, { kind: "change", change: one.change }] });
    say(said.added);
  };
  return element(
    "li",
    {},
    element("h4", {}, changeLabel(one.change, car, reader)),
    ...(isBrakesRearwards(one.change)
      ? [element("p", { class: "beware" }, words.safety.brakesRearwards)]
      : []),
    ...bewares(nearTippingNotes(one.nearTipping, [], format)),
    listOf([...one.reasons.map((reason) => reasonInWords(reason, reader)), ...asideOf(one)]),
    element("p", { class: "quiet" }, said.minutes(one.minutes)),
    shifts,
    putBack.length > 0
      ? element("div", {}, element("p", {}, `${said.putBack}:`), listOf(putBack))
      : element("p", { class: "quiet" }, said.nothingBack),
    ...(moves.length > 0 ? [fold(`side-${index}`, said.sideEffects, listOf(moves))] : []),
    element("p", { class: "tools" }, button(`to-plan-${index}`, said.addToPlan, add)),
  );
}

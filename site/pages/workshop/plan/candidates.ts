import {
  type Candidate,
  candidatesFor,
  Refusal,
  standingCar,
  venueSpeed,
  whyNotRanked,
} from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { dampersNote, pressureNote } from "../../../say/balance-notes.js";
import { changeLabel } from "../../../say/change.js";
import { theDay } from "../day/open-day.js";
import { button } from "../parts/fields.js";
import { shiftText } from "../parts/shift-bars.js";
import { soon } from "../parts/soon.js";
import { words } from "../words.js";
import { edit } from "./people.js";

const { plan } = words;

/** Changes that are large enough to feel, worked out when the fold is opened. */
export function candidates(added: () => void): HTMLElement {
  const list = element("ul", { class: "candidates" });
  const unknownPressure = element("p", { class: "quiet" });
  const fold = element(
    "details",
    { id: "candidates" },
    element("summary", {}, plan.candidates),
    element("p", { class: "quiet" }, plan.candidatesHelp),
    element("p", { class: "quiet" }, dampersNote),
    unknownPressure,
    list,
  );
  const later = soon();
  fold.addEventListener("toggle", () => {
    if (!fold.open) return;
    unknownPressure.textContent = pressureNote(endsNotRanked())
      .map((note) => spell(note))
      .join("");
    list.replaceChildren(element("li", {}, plan.working));
    later(() => list.replaceChildren(...items(added)));
  });
  return fold;
}

/** Ends of the day's car whose changes of pressure are in no order. */
function endsNotRanked() {
  const car = theDay()?.car;
  if (car === undefined) return [];
  return (["front", "rear"] as const).filter(
    (end) => whyNotRanked(car, { lever: "tyrePressure", end }) !== undefined,
  );
}

function items(added: () => void): HTMLElement[] {
  const found = candidatesOfDay();
  if (found.length === 0) return [element("li", {}, plan.noCandidates)];
  return found.map((candidate, i) => item(candidate, i, added));
}

function candidatesOfDay(): Candidate[] {
  const day = theDay();
  try {
    return day === undefined ? [] : candidatesFor(standingCar(day.car), venueSpeed(day.venue));
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

function item({ change, shift }: Candidate, index: number, added: () => void): HTMLElement {
  const car = theDay()?.car;
  const label = car === undefined ? "" : changeLabel(change, car, reader);
  const add = () => {
    edit((day) => ({ ...day, steps: [...day.steps, { kind: "change", change }] }));
    added();
  };
  return element(
    "li",
    {},
    button(`candidate-${index}`, plan.add, add, { "aria-label": plan.addThis(label) }),
    element("span", {}, label),
    element("span", { class: "number" }, shiftText(shift)),
  );
}

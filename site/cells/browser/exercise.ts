import { effect } from "@preact/signals-core";
import { today } from "@rollbook/lib";
import { fromShown, unitOf } from "../../say/units.js";
import { answeredTo } from "../../store/exercises.js";
import { isDue, recallOf, type Time } from "../../store/times.js";
import { exerciseInner } from "../inner-html.js";
import { format, reader, spell } from "../reader.js";
import type { ExerciseSpec } from "../spec.js";
import { words } from "../words.js";
import { element, placeOf } from "./element.js";
import { fill } from "./trusted.js";

const usualTolerance = 0.02;

/** What is said of an answer in SI, and whether it is right. */
function judged(spec: ExerciseSpec, given: number): { isRight: boolean; reply: string } {
  const { answer, quantity, decimals, tolerance = usualTolerance, slips = [] } = spec;
  const isNear = (value: number) =>
    Math.abs(given - value) <= tolerance * Math.max(Math.abs(value), 1e-12);
  if (isNear(answer))
    return { isRight: true, reply: words.rightValue(format(quantity, answer, decimals)) };
  const [slip] = slips
    .filter(({ value }) => isNear(value))
    .sort((a, b) => Math.abs(a.value - given) - Math.abs(b.value - given));
  const sided = given > answer ? words.tooHigh : words.tooLow;
  return { isRight: false, reply: slip ? words.slip(spell(slip.because)) : sided };
}

/** Where an exercise stands, before it is tried in this visit. */
function standing(times: readonly Time[]): string {
  const last = times.at(-1);
  if (last === undefined) return "";
  if (isDue(times, today())) return words.dueAgain;
  if (!last.isRight) return words.notYetSolved;
  const due = recallOf(times)?.due;
  return due === undefined ? words.solvedForGood : words.solved(due - today());
}

/** A box for a number in a unit, and a place for what is said of it. */
function checking(unit: string) {
  const box = element("input", {
    type: "number",
    step: "any",
    inputmode: "decimal",
    "aria-label": words.inUnit(words.yourAnswer, unit),
  });
  const reply = element("p", { class: "reply", role: "status" });
  const form = element(
    "form",
    { class: "checking", novalidate: true },
    box,
    element("span", {}, unit),
    element("button", { type: "submit" }, words.check),
    reply,
  );
  return { form, box, reply };
}

/** Checks the reader's number, keeps whether it was right, and says by which slip it went wrong. */
export function exercise(spec: ExerciseSpec): void {
  const place = placeOf(spec.id);
  if (!place) return;
  fill(place, exerciseInner(spec));
  const { form, box, reply } = checking(unitOf(spec.quantity, reader.units));
  const answered = answeredTo(spec.id);
  let isTried = false;
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    if (!Number.isFinite(box.valueAsNumber)) {
      reply.textContent = words.typeNumber;
      return;
    }
    isTried = true;
    const { isRight, reply: said } = judged(
      spec,
      fromShown(spec.quantity, box.valueAsNumber, reader.units),
    );
    reply.textContent = said;
    const { times } = answered.now.value;
    void answered.set({ ask: spell(spec.ask), times: [...times, { day: today(), isRight }] });
  });
  effect(() => {
    const { times } = answered.now.value;
    place.toggleAttribute("data-solved", times.at(-1)?.isRight === true);
    if (!isTried) reply.textContent = standing(times);
  });
  place.querySelector("details")?.before(form);
}

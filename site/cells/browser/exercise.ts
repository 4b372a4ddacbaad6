import { fromShown, unitOf } from "../../say/units.js";
import { exerciseInner } from "../inner-html.js";
import { format, reader } from "../reader.js";
import type { ExerciseSpec } from "../spec.js";
import { words } from "../words.js";
import { element, placeOf } from "./element.js";
import { fill } from "./trusted.js";

function feedback(spec: ExerciseSpec, given: number): string {
  if (!Number.isFinite(given)) return words.typeNumber;
  const allowed = (spec.tolerance ?? 0.02) * Math.max(Math.abs(spec.answer), 1e-12);
  const difference = fromShown(spec.quantity, given, reader.units) - spec.answer;
  if (Math.abs(difference) <= allowed) {
    return words.rightValue(format(spec.quantity, spec.answer, spec.decimals));
  }
  return difference > 0 ? words.tooHigh : words.tooLow;
}

/** Checks the reader's number; the worked answer stays folded. */
export function exercise(spec: ExerciseSpec): void {
  const place = placeOf(spec.id);
  if (!place) return;
  fill(place, exerciseInner(spec));
  const unit = unitOf(spec.quantity, reader.units);
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
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    reply.textContent = feedback(spec, box.valueAsNumber);
  });
  place.querySelector("details")?.before(form);
}

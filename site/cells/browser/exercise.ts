import { format, fromShown, unitOf } from "@rollbook/lib";
import type { ExerciseSpec } from "../spec.js";
import { element, placeOf } from "./element.js";

function feedback(spec: ExerciseSpec, given: number): string {
  if (!Number.isFinite(given)) return "Type a number, such as 12.5.";
  const allowed = (spec.tolerance ?? 0.02) * Math.max(Math.abs(spec.answer), 1e-12);
  const difference = fromShown(spec.quantity, given) - spec.answer;
  if (Math.abs(difference) <= allowed) {
    return `Right: ${format(spec.quantity, spec.answer, spec.decimals)}.`;
  }
  return `Not yet: that is too ${difference > 0 ? "high" : "low"}. The hint may help.`;
}

/** Checks the reader's number; the worked answer stays folded. */
export function exercise(spec: ExerciseSpec): void {
  const place = placeOf(spec.id);
  const firstFold = place?.querySelector("details");
  if (!place || !firstFold) return;
  const unit = unitOf(spec.quantity);
  const box = element("input", {
    type: "number",
    step: "any",
    inputmode: "decimal",
    "aria-label": unit ? `Your answer in ${unit}` : "Your answer",
  });
  const reply = element("p", { class: "reply", role: "status" });
  const form = element(
    "form",
    { class: "checking", novalidate: true },
    box,
    element("span", {}, unit),
    element("button", { type: "submit" }, "Check"),
    reply,
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    reply.textContent = feedback(spec, box.valueAsNumber);
  });
  firstFold.before(form);
}

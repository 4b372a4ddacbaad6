import { exerciseInner, predictInner, workedInner } from "../../../cells/inner-html.js";
import type { ExerciseSpec, PredictSpec, WorkedSpec } from "../../../cells/spec.js";
import { element } from "./element.js";

function withHtml(made: HTMLElement, id: string, html: string): HTMLElement {
  made.id = id;
  made.innerHTML = html;
  return made;
}

/** A number worked out. */
export const worked = (spec: WorkedSpec): HTMLElement =>
  withHtml(element("p", "worked"), spec.id, workedInner(spec));

/** A question to answer before looking. */
export const predict = (spec: PredictSpec): HTMLElement =>
  withHtml(element("section", "predict"), spec.id, predictInner(spec));

/** A sum for the reader, its answer folded. */
export const exercise = (spec: ExerciseSpec): HTMLElement =>
  withHtml(element("section", "exercise"), spec.id, exerciseInner(spec));

import { workedInner } from "../inner-html.js";
import type { WorkedSpec } from "../spec.js";
import { placeOf } from "./element.js";
import { fill } from "./trusted.js";

/** Shows the number as worked out in the page, for the car and in the units of the page. */
export function worked(spec: WorkedSpec): void {
  const place = placeOf(spec.id);
  if (!place) return;
  fill(place, workedInner(spec));
  place.dataset.worked = String(spec.value);
}

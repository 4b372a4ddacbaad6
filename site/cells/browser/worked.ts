import { format } from "@rollbook/lib";
import type { WorkedSpec } from "../spec.js";
import { placeOf } from "./element.js";

/** Shows the number as worked out in the page, for the car of the page. */
export function worked(spec: WorkedSpec): void {
  const place = placeOf(spec.id);
  const output = place?.querySelector("output");
  if (!place || !output) return;
  output.textContent = format(spec.quantity, spec.value, spec.decimals);
  const how = place.querySelector(".how");
  if (how && spec.how) how.textContent = `${spec.how} =`;
  place.dataset.worked = String(spec.value);
}

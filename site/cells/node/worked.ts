import { workedInner } from "../inner-html.js";
import type { WorkedSpec } from "../spec.js";
import { showStill } from "./show.js";

/** A number worked out for the current car; a test pins it by its id. */
export function worked(spec: WorkedSpec): void {
  if (!Number.isFinite(spec.value)) throw new RangeError(`${spec.id}: the value is not a number`);
  const { id, value } = spec;
  showStill(`<p class="worked" id="${id}" data-worked="${value}">${workedInner(spec)}</p>`);
}

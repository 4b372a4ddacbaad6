import { format } from "@rollbook/lib";
import { escapeHtml } from "../escape.js";
import type { WorkedSpec } from "../spec.js";
import { show } from "./show.js";

/** A number worked out for the current car; a test pins it by its id. */
export function worked(spec: WorkedSpec): void {
  if (!Number.isFinite(spec.value)) throw new RangeError(`${spec.id}: the value is not a number`);
  const how = spec.how ? `<span class="how">${escapeHtml(spec.how)} =</span> ` : "";
  show(
    `<p class="worked" id="${spec.id}" data-worked="${spec.value}">` +
      `<span class="label">${escapeHtml(spec.label)}:</span> ${how}` +
      `<output>${escapeHtml(format(spec.quantity, spec.value, spec.decimals))}</output></p>`,
  );
}

import { demoCar } from "@rollbook/lib";
import { reader } from "../reader.js";
import { words } from "../words.js";

const results = ".worked, .figure, .predict, .exercise";

/**
 * Takes away what the kernel worked out for the workbook's own car where no cell took it up for the
 * reader's: the car's file may not give what it needs, or a cell may have failed.
 */
export function dropLeftOvers(): void {
  if (reader.car === demoCar) return;
  const places = [...document.querySelectorAll<HTMLElement>(results)]; // a page's own script adds others
  let reason = "";
  addEventListener("error", ({ error }) => {
    if (error instanceof Error) reason ||= error.message;
  });
  document.addEventListener("DOMContentLoaded", () => {
    for (const place of places)
      if (place.dataset.own === undefined)
        place.textContent = words.notForThisCar(reader.car.name, reason);
  });
}

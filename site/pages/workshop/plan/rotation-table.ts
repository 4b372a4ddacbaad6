import { type Round, rotation } from "@rollbook/lib";
import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";

const { plan } = words;

/** Who drives which car when, run by run; nothing for one driver. */
export function rotationTable({ drivers, cars, steps }: Draft): HTMLElement[] {
  if (drivers.length < 2 || steps.length === 0) return [];
  const runs = steps.map((_, i) => rotation(drivers, cars, i + 1));
  const rounds = runs[0]?.map((_, i) => element("th", { scope: "col" }, plan.round(i + 1))) ?? [];
  const rows = runs.map((run, i) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, plan.run(i + 1)),
      ...run.map((round) => element("td", {}, roundInWords(round))),
    ),
  );
  const head = element("thead", {}, element("tr", {}, element("td", {}), ...rounds));
  const table = element("table", {}, head, element("tbody", {}, ...rows));
  const attributes = { class: "table", role: "region", tabindex: 0, "aria-label": plan.rotation };
  return [element("div", attributes, table)];
}

/** Who is out and who watches. */
export function roundInWords({ stints, waiting }: Round): string {
  const out = stints.map(({ car, driver }) => plan.inCar(car, driver));
  return [...out, ...(waiting.length > 0 ? [plan.waiting(waiting.join(", "))] : [])].join("; ");
}

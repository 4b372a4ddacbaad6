import { type Car, type MarginBands, phaseNames, unitOf } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { type BandsSoFar, bandsFrom } from "../../../bands/bands.js";
import { speed, type ToldSureness, toldSureness, widestDoubts } from "../model/summary.js";
import { words } from "../words.js";

const { sure: said } = words;
const pause = 400; // ms without a change of the car until it is sampled

/** How sure limit and balance are, worked out while the page is read. */
export interface SurenessView {
  readonly whole: HTMLElement;
  /** Begins for a car, unless it is the one under way; tells its bands each time they are refined. */
  begin(car: Car, onBands: (bands: MarginBands) => void): void;
  drop(): void;
}

export function surenessView(): SurenessView {
  const bands = bandsFrom("your-car-worker.js");
  const [table, progress, widest] = [
    element("div"),
    element("p", { class: "note progress" }),
    element("p", { class: "note widest" }),
  ];
  const help = said.help(unitOf("acceleration", reader.units));
  const whole = element(
    "div",
    { class: "sureness" },
    element("h3", {}, said.heading),
    table,
    progress,
    element("p", { class: "note" }, help),
    widest,
  );
  let [timer, key] = [0, ""];
  let last: BandsSoFar | undefined;
  let onBands: (bands: MarginBands) => void = () => undefined;

  function show(told: BandsSoFar): void {
    last = told;
    table.replaceChildren(tableOf(toldSureness(told.margins, reader.units)));
    progress.textContent = said.progress(told.count, told.of);
    const doubts = widestDoubts(told.margins);
    widest.textContent = doubts.length > 0 ? spell(said.widest(doubts.join(", "))) : "";
    onBands(told.margins);
  }
  function drop(): void {
    clearTimeout(timer);
    [key, last] = ["", undefined];
    bands.drop();
  }
  return {
    whole,
    begin(car, tell) {
      onBands = tell;
      const asked = JSON.stringify(car);
      if (asked === key) {
        if (last) tell(last.margins);
        return;
      }
      drop();
      key = asked;
      table.replaceChildren(tableOf(phaseNames.map(nothingYet)));
      progress.textContent = said.working;
      widest.textContent = "";
      const of = { car, measured: car, speed, changes: [] };
      timer = window.setTimeout(() => bands.begin(of, show), pause);
    },
    drop,
  };
}

const nothingYet = (name: (typeof phaseNames)[number]): ToldSureness => ({
  phase: words.phase[name],
  limit: said.waiting,
  margin: said.waiting,
  verdict: said.waiting,
});

function tableOf(rows: readonly ToldSureness[]): HTMLElement {
  const { phase, limit, margin, verdict } = said.columns;
  const head = [phase, limit, margin, verdict].map((text) => element("th", { scope: "col" }, text));
  const lines = rows.map((row) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, row.phase),
      ...[row.limit, row.margin, row.verdict].map((text) => element("td", {}, text)),
    ),
  );
  return element(
    "table",
    {},
    element("thead", {}, element("tr", {}, ...head)),
    element("tbody", {}, ...lines),
  );
}

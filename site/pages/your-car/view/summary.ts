import { type Car, carFromJson } from "@rollbook/lib";
import { element, format, reader, spell } from "@rollbook/page";
import type { Content } from "../model/path.js";
import { type Summary, summaryOf, toldSpeed } from "../model/summary.js";
import { words } from "../words.js";
import { pairs } from "./parts.js";
import { type SurenessView, surenessView } from "./sureness.js";

/** What the car on the form comes to, beside it. */
export interface SummaryView {
  readonly whole: HTMLElement;
  /** Shows a content; where it is not sound, the last one that was stays, and says so. */
  settle(content: Content, sound: boolean): void;
}

export function summaryView(): SummaryView {
  const note = element("p", { class: "note" }, words.none);
  const body = element("div");
  const title = element("h2", { id: "summary-title" }, words.summary);
  const whole = element(
    "aside",
    { class: "summary", "aria-labelledby": title.id, tabindex: 0 },
    title,
    note,
    body,
  );
  let shown = false;
  const sure = surenessView();
  return {
    whole,
    settle(content, sound) {
      const { car } = sound ? carFromJson(content) : {};
      whole.classList.toggle("stale", car === undefined && shown);
      note.hidden = car !== undefined;
      note.textContent = shown ? words.stale : words.none;
      if (!car) return;
      body.replaceChildren(...parts(car, sure));
      shown = true;
    },
  };
}

function parts(car: Car, sure: SurenessView): HTMLElement[] {
  try {
    return told(car, summaryOf(car, reader.units, format), sure);
  } catch (error) {
    sure.drop();
    const reason = error instanceof Error ? error.message : String(error);
    return [element("p", { class: "fault" }, words.cannotStand(reason))];
  }
}

const heading = (text: string) => element("h3", {}, text);

function told(car: Car, summary: Summary, sure: SurenessView): HTMLElement[] {
  const { corners, weights, axles, turn, balance, balanceWithin, bewares, notes, limits } = summary;
  const balanceList = element("div", {}, pairs(balance));
  sure.begin(car, (bands) => {
    balanceList.style.minHeight = `${balanceList.offsetHeight}px`; // fewer digits move nothing
    balanceList.replaceChildren(pairs(balanceWithin(bands)));
  });
  const corner = (value: string) => element("span", {}, value);
  const { front, rear } = corners;
  return [
    heading(words.corners),
    element(
      "div",
      { class: "corners" },
      ...[front.left, front.right, rear.left, rear.right].map(corner),
    ),
    pairs(weights),
    heading(words.axles),
    axleTable(axles),
    heading(words.turn),
    pairs(turn),
    heading(words.balance(toldSpeed(format))),
    balanceList,
    sure.whole,
    ...bewares.map((beware) => element("p", { class: "beware" }, spell(beware))),
    ...notes.map((note) => element("p", { class: "note" }, spell(note))),
    heading(words.margins),
    limitList(limits),
  ];
}

function axleTable(rows: Summary["axles"]): HTMLElement {
  const head = element(
    "tr",
    {},
    element("td"),
    ...[words.front, words.rear].map((end) => element("th", { scope: "col" }, end)),
  );
  const lines = rows.map(([name, front, rear]) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, spell(name)),
      element("td", {}, front),
      element("td", {}, rear),
    ),
  );
  return element("table", {}, element("thead", {}, head), element("tbody", {}, ...lines));
}

function limitList(limits: Summary["limits"]): HTMLElement {
  if (limits.length === 0) return element("p", {}, words.noLimits);
  const lines = limits.map(({ name, at }) => {
    const margins = at.map(({ where, value, verdict, told: text }) => {
      const what = [where, " ", element("b", {}, value), " ", element("small", {}, text)];
      return element("li", { "data-verdict": verdict }, ...what);
    });
    return element("li", {}, spell(name), element("ul", {}, ...margins));
  });
  return element("ul", { class: "limits" }, ...lines);
}

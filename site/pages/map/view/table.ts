import {
  type MapAxis,
  type MapOf,
  type MapReading,
  parameters,
  Refusal,
  readMap,
} from "@rollbook/lib";
import { element, format, spell } from "@rollbook/page";
import { acceleration, nearTippingOf } from "../tell.js";
import { ticksOf } from "../ticks.js";
import { words } from "../words.js";

const most = 7; // columns and rows

/** The map as numbers, each worked out in full, while it is unfolded. */
export function table() {
  const body = element("div", {
    class: "table",
    tabindex: 0,
    role: "region",
    "aria-label": words.table,
  });
  const node = element("details", { class: "numbers" }, element("summary", {}, words.table), body);
  let of: MapOf | undefined;
  const fill = () => {
    if (node.open && of) body.replaceChildren(filled(of));
  };
  node.addEventListener("toggle", fill);
  return {
    node,
    show(shown: MapOf): void {
      of = shown;
      fill();
    },
  };
}

function filled(of: MapOf): HTMLElement {
  const { along, up } = of;
  const columns = ticksOf(along, most);
  const caption = words.caption(along.name.toLowerCase(), up.name.toLowerCase());
  const value = ({ parameter }: MapAxis, si: number) =>
    format(parameters[parameter].quantity, si, parameters[parameter].decimals);
  const head = columns.map((x) => element("th", { scope: "col" }, value(along, x)));
  const rows = ticksOf(up, most).map((y) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, value(up, y)),
      ...columns.map((x) => element("td", {}, cellText(of, x, y))),
    ),
  );
  return element(
    "table",
    {},
    element("caption", {}, spell(caption)),
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        element("th", { scope: "col" }, spell(words.corner(up.name, along.name))),
        ...head,
      ),
    ),
    element("tbody", {}, ...rows),
  );
}

function cellText(of: MapOf, x: number, y: number): string {
  const reading = readOrRefused(of, x, y);
  if (typeof reading === "string") return reading;
  const { balance, broken } = reading;
  const cross = broken.length > 0 ? words.cross : "";
  const { tips, given } = balance;
  if (!given) return words.cellEased + cross;
  const margin = acceleration(balance.understeerMargin, format);
  const sign = balance.understeerMargin > 0 && !/^0[.0]*\D*$/.test(margin) ? "+" : "";
  const turn = acceleration(balance.lateralAcceleration, format);
  const tipping = nearTippingOf(of, reading) === undefined ? "" : words.tipping;
  return tips ? words.cellTips(turn) + cross : `${sign}${margin}; ${turn}${cross}${tipping}`;
}

function readOrRefused(of: MapOf, x: number, y: number): MapReading | string {
  try {
    return readMap(of, x, y);
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
}

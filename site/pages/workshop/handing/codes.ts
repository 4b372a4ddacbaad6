import type { LogEntry } from "@rollbook/lib";
import { courseAddress, element } from "@rollbook/page";
import { codeOf } from "../../share/code.js";
import { courseAt, isOnlyHere } from "../../share/target.js";
import type { View } from "../route.js";
import { words } from "../words.js";
import { parcelsOf } from "./parcels.js";

const { handing: said } = words;

/** Where other devices find the workbook; nothing where only this device can open it. */
function course(): URL | undefined {
  const here = new URL("./", location.href.replace(/[?#].*$/s, ""));
  if (!isOnlyHere(here)) return here;
  const address = courseAddress.now.value;
  return address === "" ? undefined : courseAt(address);
}

/** Codes that bring entries to whoever points a camera at them; they are links, and nothing is sent. */
export async function codes(entries: readonly LogEntry[], view: View): Promise<HTMLElement[]> {
  const address = course();
  if (address === undefined) {
    const share = element("a", { href: "share.html" }, said.share);
    return [element("p", {}, said.noAddress, " ", share, ".")];
  }
  const { packed, tooLarge } = await parcelsOf(entries);
  const figures = packed.map((letters, i) => {
    const link = new URL(`workshop.html#${view}?take=${letters}`, address).href;
    const label = said.code(i + 1, packed.length);
    const figure = element("figure", { class: "code-to-take" });
    figure.append(picture(link, label), element("figcaption", {}, label));
    return figure;
  });
  const rest = tooLarge.length > 0 ? [element("p", {}, said.tooLarge(tooLarge.length))] : [];
  return [
    element("p", { class: "quiet" }, said.help),
    element("div", { class: "codes" }, ...figures),
    ...rest,
  ];
}

const svg = "http://www.w3.org/2000/svg";

/** Black on white in any light. */
function picture(link: string, label: string): SVGSVGElement {
  const { path, side } = codeOf(link);
  const drawn = document.createElementNS(svg, "svg");
  const part = (name: "rect" | "path", values: Record<string, string>) => {
    const made = document.createElementNS(svg, name);
    for (const [key, value] of Object.entries(values)) made.setAttribute(key, value);
    drawn.append(made);
  };
  drawn.setAttribute("viewBox", `0 0 ${side} ${side}`);
  drawn.setAttribute("role", "img");
  drawn.setAttribute("aria-label", label);
  drawn.setAttribute("shape-rendering", "crispEdges");
  part("rect", { width: "100%", height: "100%", fill: "#fff" });
  part("path", { d: path, fill: "#000" });
  return drawn;
}

import { codeOf } from "../../hand-over/code.js";
import { words } from "./words.js";

const svg = "http://www.w3.org/2000/svg";

/** The code as a picture, black on white in any light. */
export function picture(link: string): SVGSVGElement {
  const { path, side } = codeOf(link);
  const drawn = document.createElementNS(svg, "svg");
  drawn.setAttribute("viewBox", `0 0 ${side} ${side}`);
  drawn.setAttribute("role", "img");
  drawn.setAttribute("aria-label", words.codeOf(link));
  drawn.setAttribute("shape-rendering", "crispEdges");
  const ground = document.createElementNS(svg, "rect");
  ground.setAttribute("width", "100%");
  ground.setAttribute("height", "100%");
  ground.setAttribute("fill", "#fff");
  const modules = document.createElementNS(svg, "path");
  modules.setAttribute("d", path);
  modules.setAttribute("fill", "#000");
  drawn.append(ground, modules);
  return drawn;
}

import { decimalsOfStep, hasLimits, type SetUpMap } from "@rollbook/lib";
import { element, format, spell } from "@rollbook/page";
import { undrawnIn } from "../drawn.js";
import type { Scales } from "../scales.js";
import { words } from "../words.js";
import { svg } from "./svg.js";

/** What lines, marks and colours mean, with their numbers. */
export function legend() {
  const [balance, grip] = [element("span"), element("span")];
  const [deepOver, deepUnder] = [element("span"), element("span")];
  const [limits, why] = [element("span"), element("span")];
  const undrawn = element("li", { hidden: true }, sample("undrawn"), why);
  const node = element(
    "div",
    { class: "legend" },
    element(
      "div",
      { class: "scale" },
      deepOver,
      element("span", { class: "colours", "aria-hidden": "true" }),
      deepUnder,
    ),
    element(
      "ul",
      { "aria-label": words.legend },
      element("li", {}, sample("balance"), balance),
      element("li", {}, sample("neutral"), words.neutral),
      element("li", {}, sample("grip"), grip),
      element("li", {}, sample("limit"), limits),
      undrawn,
      element("li", {}, sample("present"), words.car),
      element("li", {}, sample("mark"), words.mark),
    ),
  );
  return {
    node,
    show({ balance: between, grip: turns, deepest }: Scales, map: SetUpMap): void {
      const text = (value: number, step: number) =>
        format("acceleration", value, Math.max(2, decimalsOfStep(step)));
      balance.textContent = words.solid(text(between, between));
      grip.textContent = words.dashed(text(turns, turns));
      deepOver.textContent = words.oversteer(text(deepest, between));
      deepUnder.textContent = words.understeer(text(deepest, between));
      limits.textContent = spell(hasLimits(map) ? words.hatched : words.noLimits);
      const reasons = undrawnIn(map).map((state) => words.why[state]);
      undrawn.hidden = reasons.length === 0;
      why.textContent = spell(words.undrawn(reasons.join(words.or)));
    },
  };
}

type Kind = "balance" | "neutral" | "grip" | "limit" | "undrawn" | "present" | "mark";

function sample(kind: Kind): SVGElement {
  const shape = {
    balance: () => svg("path", { class: "balance", d: "M2,9H38" }),
    neutral: () => svg("path", { class: "neutral", d: "M2,9H38" }),
    grip: () => svg("path", { class: "grip", d: "M2,9H38" }),
    limit: () => svg("rect", { class: "limit", x: 2, y: 1, width: 36, height: 16 }),
    undrawn: () => svg("rect", { class: "undrawn", x: 2, y: 1, width: 36, height: 16 }),
    present: () => svg("path", { class: "present", d: "M20,1l8,8l-8,8l-8,-8z" }),
    mark: () => svg("circle", { class: "mark", cx: 20, cy: 9, r: 7 }),
  }[kind]();
  return svg("svg", { class: "sample", width: 40, height: 18, "aria-hidden": "true" }, shape);
}

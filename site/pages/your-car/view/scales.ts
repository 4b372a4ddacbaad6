import { format, sumOfWheels, unitOf, type Wheels } from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { shownRangeOf } from "../model/number.js";
import { shapeAt } from "../model/path.js";
import { fromScales, readingAt } from "../model/scales.js";
import { words } from "../words.js";
import type { Desk } from "./desk.js";
import { button, idOf } from "./parts.js";

const wheels = (["front", "rear"] as const).flatMap((end) =>
  (["left", "right"] as const).map((side) => ({ end, side })),
);

function reading(desk: Desk, end: "front" | "rear", side: "left" | "right"): HTMLElement {
  const path = readingAt(end, side);
  const unit = unitOf("mass", reader.units);
  const input = element("input", {
    id: idOf(path),
    class: "number",
    inputmode: "decimal",
    autocomplete: "off",
    "aria-label": `${words.scales}, ${end} ${side}, ${unit}`,
  });
  input.value = desk.draft().typed[path]?.text ?? "";
  input.addEventListener("input", () => desk.type(path, input.value));
  const caption = element("span", { class: "caption" }, `${end} ${side}`);
  return element(
    "label",
    { class: "box" },
    caption,
    input,
    element("span", { class: "unit" }, unit),
  );
}

function told({ front, rear }: Wheels<number>): string {
  const total = sumOfWheels({ front, rear });
  const share = (part: number) => format("share", part / total, 1, reader.units);
  return words.scalesDone(
    format("mass", total, 0, reader.units),
    share(front.left + front.right),
    share(front.left + rear.left),
    share(front.right + rear.left),
  );
}

function refusal(refused: "incomplete" | "off"): string {
  const shape = shapeAt("body.mass");
  if (refused === "incomplete" || shape?.type !== "number") return words.scalesIncomplete;
  return words.scalesOff(shownRangeOf(shape, reader.units));
}

/** Four scale readings, and a button that works the body out from them. */
export function scales(desk: Desk, said: string, say: (text: string) => void): HTMLElement {
  const use = button(words.scalesUse, () => {
    const { draft, readings, refused } = fromScales(desk.draft(), reader.units);
    say(readings ? told(readings) : refusal(refused));
    desk.change(draft ?? desk.draft(), "scales-use");
  });
  use.id = "scales-use";
  return element(
    "fieldset",
    { class: "part scales" },
    element("legend", {}, words.scalesTitle),
    element("div", { class: "boxes" }, ...wheels.map(({ end, side }) => reading(desk, end, side))),
    use,
    element("p", { class: "said", role: "status" }, said),
    element("p", { class: "note" }, words.scalesCross),
  );
}

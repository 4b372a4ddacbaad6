import { carShape, demoCar } from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import { type Draft, withoutEntry, withPart } from "../model/draft.js";
import { beginning } from "../model/mend.js";
import { keyOf, type Path, shapeAt, valueAt } from "../model/path.js";
import type { Item, List, Optional, Reach } from "../sections.js";
import { fields, levers, nameOf, partWords, reachEnds, whereOf, words } from "../words.js";
import type { Desk } from "./desk.js";
import { button, idOf } from "./parts.js";
import { boxes, how, row } from "./row.js";

/** One line or part of the form. */
export function item(desk: Desk, one: Item): HTMLElement {
  if ("row" in one) return row(desk, one.row);
  if ("part" in one) return optional(desk, one);
  if ("list" in one) return list(desk, one);
  return reach(desk, one);
}

const has = (desk: Desk, path: Path): boolean => valueAt(desk.draft().base, path) !== undefined;

/** A part as it was before it was taken out, else the demo car's, else the middle of its ranges. */
function partToPutIn({ removed }: Draft, path: Path): unknown {
  return removed[path] ?? valueAt(demoCar, path) ?? beginning(shapeAt(path) ?? carShape);
}

function tick(desk: Desk, path: Path, text: string): HTMLElement {
  const input = element("input", { type: "checkbox", id: idOf(path), checked: has(desk, path) });
  input.addEventListener("change", () => {
    const part = input.checked ? partToPutIn(desk.draft(), path) : undefined;
    desk.change(withPart(desk.draft(), path, part), input.id);
  });
  return element("label", { class: "tick" }, input, element("span", {}, spell(text)));
}

function optional(desk: Desk, { part, items }: Optional): HTMLElement {
  const title = partWords[part] ?? nameOf(part);
  const group = element(
    "fieldset",
    { class: "part" },
    element("legend", {}, tick(desk, part, title)),
  );
  const fault = element("p", { class: "fault", id: `${idOf(part)}-fault`, hidden: true });
  desk.boxes.set(part, {
    path: part,
    whole: group,
    fault,
    settle(sentence) {
      fault.textContent = sentence;
      fault.hidden = sentence === "";
    },
  });
  group.append(fault);
  if (has(desk, part)) group.append(...items.map((one) => item(desk, one)));
  return group;
}

function list(desk: Desk, { list: path, columns }: List): HTMLElement {
  const entries = (valueAt(desk.draft().base, path) as unknown[] | undefined) ?? [];
  const { label, help = "" } = fields[keyOf(path)] ?? { label: path };
  const lines = entries.map((_, index) => {
    const paths = columns.map((column) => `${path}.${index}.${column}`);
    const captionOf = (place: Path) => fields[keyOf(place)]?.label ?? "";
    const line = element("li", {}, ...boxes(desk, paths, captionOf));
    if (entries.length > 1) line.append(dropButton(desk, path, index));
    return line;
  });
  const ordered = element("ol", { class: "positions" }, ...lines);
  const name = element("span", { class: "name" }, label);
  const what = element("div", { class: "what" }, name, how(label, help));
  return element("div", { class: "row" }, what, ordered, addButton(desk, path));
}

function addButton(desk: Desk, path: Path): HTMLElement {
  const shape = shapeAt(path);
  const entries = (valueAt(desk.draft().base, path) as unknown[] | undefined) ?? [];
  const most = shape?.type === "list" ? shape.most : entries.length;
  const next = { ...(entries.at(-1) as object | undefined) };
  const add = () => {
    const longer = withPart(desk.draft(), path, [...entries, next]);
    desk.change(longer, idOf(`${path}.${entries.length}.rate`));
  };
  return button(words.addPosition, add, { disabled: entries.length >= most });
}

function dropButton(desk: Desk, path: Path, index: number): HTMLElement {
  const drop = () => {
    const shorter = withoutEntry(desk.draft(), path, index);
    desk.change(shorter, idOf(`${path}.${Math.max(0, index - 1)}.rate`));
  };
  return button("−", drop, { "aria-label": words.dropPosition(index + 1) });
}

function reach(desk: Desk, { reach: path }: Reach): HTMLElement {
  const lever = path.split(".").pop() ?? "";
  const where = whereOf(path);
  const title = [levers[lever] ?? lever, where].filter((word) => word !== "").join(", ");
  const line = element("div", { class: "row reach" }, tick(desk, path, title));
  const ends = ["min", "max", "step"].map((end) => `${path}.${end}`);
  if (has(desk, path))
    line.append(...boxes(desk, ends, (place) => reachEnds[place.split(".").pop() ?? ""] ?? ""));
  return line;
}

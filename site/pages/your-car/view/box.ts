import { demoCar, type Shape, unitOf } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { type Draft, type Typed, valueTyped } from "../model/draft.js";
import { shownNumber } from "../model/number.js";
import { keyOf, type Path, shapeAt, valueAt } from "../model/path.js";
import { fields, nameOf, words } from "../words.js";
import { idOf } from "./parts.js";

/** The box of one place, with room for its unit, its mark and its fault. */
export interface Box {
  readonly path: Path;
  readonly whole: HTMLElement;
  readonly fault: HTMLElement;
  /** Shows what is wrong here, if anything, and whether the value is the demo car's. */
  settle(sentence: string, asDemo: boolean): void;
}

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** What was typed, in the reader's units where it can be read; else as it was typed. */
function textOf(path: Path, typed: Typed, shape: Shape): string {
  if (shape.type !== "number" || typed.units === reader.units) return typed.text;
  const value = valueTyped(path, typed);
  return typeof value === "number" && Number.isFinite(value)
    ? shownNumber(value, shape, reader.units)
    : typed.text;
}

function startText(draft: Draft, path: Path, shape: Shape): string {
  const typed = draft.typed[path];
  if (typed) return textOf(path, typed, shape);
  const value = valueAt(draft.base, path);
  if (typeof value === "number" && shape.type === "number")
    return shownNumber(value, shape, reader.units);
  return typeof value === "string" ? value : "";
}

function control(path: Path, shape: Shape): Control {
  const attributes = { id: idOf(path), name: path, autocomplete: "off", spellcheck: "false" };
  if (shape.type === "text" && shape.choices) {
    const options = shape.choices.map((choice) => element("option", { value: choice }, choice));
    return element("select", attributes, ...options);
  }
  if (path === "notes") return element("textarea", { ...attributes, rows: 2 });
  const empty = fields[keyOf(path)]?.empty ?? "";
  const text = { type: "text", ...attributes, placeholder: empty };
  if (shape.type !== "number") return element("input", text);
  const inputmode = shape.min < 0 ? "text" : "decimal"; // phones leave the minus out of the latter
  return element("input", { ...text, class: "number", inputmode });
}

const unitOfShape = (shape: Shape): string =>
  shape.type === "number" ? unitOf(shape.quantity, reader.units) : "";

/** Whether a place follows from the joints of its axle's links, where the file has them. */
function followsLinks({ base }: Draft, path: Path): boolean {
  const [, end] =
    /^(front|rear)\.geometry\.(?:rollCentre|camberGain|toeGain|rollSteer)/.exec(path) ?? [];
  return end !== undefined && valueAt(base, `${end}.linkage`) !== undefined;
}

/** The box of a place; `report` gets what is typed, at once. */
export function box(
  draft: Draft,
  path: Path,
  caption: string,
  report: (text: string) => void,
): Box | undefined {
  const shape = shapeAt(path);
  if (!shape) return undefined;
  const input = control(path, shape);
  input.value = startText(draft, path, shape);
  const unit = unitOfShape(shape);
  const name = spell(nameOf(path));
  input.setAttribute("aria-label", unit ? `${name}, ${unit}` : name);
  input.addEventListener("input", () => report(input.value));
  input.disabled = followsLinks(draft, path);
  const marked = { class: "mark", id: `${idOf(path)}-mark`, hidden: true };
  const mark = element("span", marked, words.stillDemo(demoCar.name));
  const fault = element("p", { class: "fault", id: `${idOf(path)}-fault`, hidden: true });
  const whole = element(
    "label",
    { class: "box" },
    element("span", { class: "caption" }, caption),
    input,
    element("span", { class: "unit" }, unit),
    mark,
  );
  return {
    path,
    whole,
    fault,
    settle(sentence, asDemo) {
      fault.textContent = spell(sentence);
      fault.hidden = sentence === "";
      mark.hidden = !asDemo;
      const described = [sentence ? fault.id : "", asDemo ? mark.id : ""].filter(Boolean).join(" ");
      setOrDrop(input, "aria-invalid", sentence ? "true" : "");
      setOrDrop(input, "aria-describedby", described);
    },
  };
}

function setOrDrop(control: Element, name: string, value: string): void {
  if (value === "") control.removeAttribute(name);
  else control.setAttribute(name, value);
}

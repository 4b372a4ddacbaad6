import { type Layout, layoutOf } from "../layout.js";
import type { Mark } from "../marks.js";
import { paint } from "../paint.js";
import { reader, spell } from "../reader.js";
import { type FigureSpec, type Inputs, type Panel, startValues, type ValuesOf } from "../spec.js";
import { words } from "../words.js";
import { element, placeOf } from "./element.js";
import { isFiled, whenFiled } from "./filed.js";
import { type Slider, slider } from "./slider.js";

interface Stage<Values> {
  readonly layers: { clipped: Element; free: Element };
  readonly layout: Layout;
  readonly draw: (values: Values) => readonly Mark[];
}

function stages<Values>(place: Element, panels: readonly Panel<Values>[]): Stage<Values>[] {
  const pictures = place.querySelectorAll("svg.panel");
  return panels.flatMap((panel, index) => {
    const clipped = pictures[index]?.querySelector("[data-layer=clipped]");
    const free = pictures[index]?.querySelector("[data-layer=free]");
    if (!clipped || !free) return [];
    return [{ layers: { clipped, free }, layout: layoutOf(panel), draw: panel.draw }];
  });
}

/** Puts the frames in US units in place where the reader wants them. */
function showUnits(place: Element): void {
  if (reader.units !== "us") return;
  for (const template of place.querySelectorAll<HTMLTemplateElement>(".panels > template")) {
    const spare = template.content.querySelector("[data-frame]");
    const present = template.previousElementSibling?.querySelector("[data-frame]");
    if (spare && present) present.replaceWith(document.importNode(spare, true));
  }
}

/** Hides the picture, which is the answer, and locks the sliders until the prediction is filed. */
function lockUntilFiled(
  place: HTMLElement,
  controls: HTMLFieldSetElement,
  prediction: string,
): void {
  const link = element("a", { href: `#${prediction}` }, words.yourPrediction);
  const notice = element("p", { class: "locked" }, link, words.unlocks);
  const settle = () => {
    const open = isFiled(prediction);
    controls.disabled = !open;
    place.toggleAttribute("data-locked", !open);
    notice.hidden = open;
  };
  controls.before(notice);
  whenFiled(prediction, settle);
  settle();
}

/** Brings the kernel's picture to life: sliders below it, marks and sentence that follow them. */
export function figure<const I extends Inputs>(spec: FigureSpec<I>): void {
  const place = placeOf(spec.id);
  const says = place?.querySelector(".says");
  if (!place || !says) return;
  const title = place.querySelector("figcaption");
  if (title) title.textContent = spell(spec.title);
  showUnits(place);
  const stage = stages(place, spec.panels);
  const start = startValues(spec.inputs);
  let values: ValuesOf<I> = start;

  function redraw(): void {
    try {
      const drawn = stage.map(({ draw }) => draw(values));
      const sentence = spec.says(values);
      stage.forEach(({ layers, layout }, index) => {
        paint(layers, drawn[index] ?? [], layout);
      });
      if (says) says.textContent = spell(sentence);
    } catch (error) {
      if (says)
        says.textContent = words.notDrawn(error instanceof Error ? error.message : String(error));
    }
  }

  const sliders = new Map<string, Slider>();
  for (const [key, parameter] of Object.entries(spec.inputs)) {
    const made = slider(`${spec.id}-${key}`, parameter, (value) => {
      values = { ...values, [key]: value };
      redraw();
    });
    sliders.set(key, made);
  }
  function reset(): void {
    values = start;
    for (const [key, control] of sliders) control.set(start[key] ?? Number.NaN);
    redraw();
  }

  if (sliders.size > 0) {
    const rows = [...sliders.values()].map(({ row }) => row);
    const back = element("button", { type: "button", class: "reset" }, words.reset);
    back.addEventListener("click", reset);
    const controls = element("fieldset", { class: "controls" }, ...rows, back);
    says.setAttribute("aria-live", "polite");
    place.append(controls);
    if (spec.after) lockUntilFiled(place, controls, spec.after);
  }
  reset();
  place.dataset.live = "";
}

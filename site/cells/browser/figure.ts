import { effect } from "@preact/signals-core";
import { demoCar, Refusal } from "@rollbook/lib";
import { predictionOf } from "../../store/predictions.js";
import { clipAttributes, type Layout, layoutOf, panelLabel, pictureAttributes } from "../layout.js";
import type { Mark } from "../marks.js";
import { tablesOf } from "../numbers.js";
import { paint } from "../paint.js";
import { reader, spell } from "../reader.js";
import { type FigureSpec, type Inputs, type Panel, startValues, type ValuesOf } from "../spec.js";
import { setAttributes } from "../svg-element.js";
import { words } from "../words.js";
import { announcer } from "./announce.js";
import { element, placeOf } from "./element.js";
import { linkFigure } from "./figure-link.js";
import { fitFrame } from "./frames.js";
import { numbersFold } from "./numbers.js";
import { type Slider, slider } from "./slider.js";

interface Stage<Values> {
  readonly layers: { clipped: Element; free: Element };
  readonly layout: Layout;
  readonly panel: Panel<Values>;
}

function stages<Values>(place: Element, panels: readonly Panel<Values>[]): Stage<Values>[] {
  const pictures = place.querySelectorAll("svg.panel");
  return panels.flatMap((panel, index) => {
    const clipped = pictures[index]?.querySelector("[data-layer=clipped]");
    const free = pictures[index]?.querySelector("[data-layer=free]");
    if (!clipped || !free) return [];
    return [{ layers: { clipped, free }, layout: layoutOf(panel), panel }];
  });
}

/** Fits frames, sizes and labels of the pictures to the reader's car and units. */
function fitPictures<Values>(
  place: Element,
  { panels, title }: { panels: readonly Panel<Values>[]; title: string },
  tell: (sentence: string) => void,
): void {
  const pictures = place.querySelectorAll("svg.panel");
  panels.forEach((panel, index) => {
    const picture = pictures[index];
    if (!picture) return;
    const layout = layoutOf(panel);
    const label = spell(panelLabel(panel, title));
    setAttributes(picture, { ...pictureAttributes(layout), "aria-label": label });
    const clipped = picture.querySelector("[data-layer=clipped]");
    if (clipped) setAttributes(clipped, clipAttributes(layout));
    fitFrame(picture, panel, layout).catch(({ message }: Error) => tell(message));
  });
}

/** Hides the picture, which is the answer, and locks the sliders until the prediction is filed. */
function lockUntilFiled(
  place: HTMLElement,
  controls: HTMLFieldSetElement,
  prediction: string,
): void {
  const link = element("a", { href: `#${prediction}` }, words.yourPrediction);
  const notice = element("p", { class: "locked" }, link, words.unlocks);
  controls.before(notice);
  effect(() => {
    const open = predictionOf(prediction).now.value !== undefined;
    controls.disabled = !open;
    place.toggleAttribute("data-locked", !open);
    notice.hidden = open;
  });
}

/** Whether the kernel drew for just this reader, so that its picture can stand until a slider moves. */
const isKernels = (): boolean => reader.car === demoCar && reader.units === "metric";

/** Brings the kernel's picture to life: sliders below it, marks and sentence that follow them. */
export function figure<const I extends Inputs>(spec: FigureSpec<I>): void {
  const place = placeOf(spec.id);
  const says = place?.querySelector(".says");
  if (!place || !says) return;
  const title = place.querySelector("figcaption");
  if (title) title.textContent = spell(spec.title);
  fitPictures(place, spec, (sentence) => {
    says.before(element("p", { class: "fault", role: "alert" }, sentence));
  });
  const stage = stages(place, spec.panels);
  const start = startValues(spec.inputs);
  let values: ValuesOf<I> = start;
  let follow: (values: ValuesOf<I>) => void = () => {};

  const numbers = numbersFold(words.numbersOf(spell(spec.title)));
  const drawNow = () => stage.map(({ panel }) => panel.draw(values));
  const tables = (drawn: readonly (readonly Mark[])[]) =>
    stage.flatMap(({ panel }, index) => tablesOf(panel, drawn[index] ?? []));

  const aloud = announcer();
  const show = (sentence: string): string => {
    says.textContent = sentence;
    return sentence;
  };

  /** Answers what the figure says now. */
  function redraw(): string {
    follow(values);
    try {
      const drawn = drawNow();
      const sentence = spec.says(values);
      numbers.show(() => tables(drawn));
      stage.forEach(({ layers, layout }, index) => {
        paint(layers, drawn[index] ?? [], layout);
      });
      return show(spell(sentence));
    } catch (error) {
      numbers.show(() => []);
      if (!(error instanceof Refusal)) throw error;
      return show(words.notDrawn(error.message));
    }
  }

  const sliders = new Map<string, Slider>();
  for (const [key, parameter] of Object.entries(spec.inputs)) {
    const made = slider(`${spec.id}-${key}`, parameter, (value) => {
      values = { ...values, [key]: value };
      aloud.say(redraw());
    });
    sliders.set(key, made);
  }
  /** Sets all sliders: those named, and the others to where they start. */
  function stand(wanted: Readonly<Record<string, number>>): void {
    values = { ...start, ...wanted };
    for (const [key, control] of sliders) control.set(values[key] ?? Number.NaN);
  }
  function take(wanted: Readonly<Record<string, number>>): void {
    stand(wanted);
    aloud.say(redraw());
  }

  if (sliders.size > 0) {
    const rows = [...sliders.values()].map(({ row }) => row);
    const back = element("button", { type: "button", class: "reset" }, words.reset);
    back.addEventListener("click", () => take({}));
    const controls = element("fieldset", { class: "controls" }, ...rows, back);
    place.append(controls, aloud.node);
    if (spec.after) lockUntilFiled(place, controls, spec.after);
    follow = linkFigure(spec, place, controls, take);
  }
  place.append(numbers.fold);
  stand({});
  if (isKernels()) {
    follow(values);
    numbers.show(() => tables(drawNow()));
  } else redraw();
  place.dataset.live = "";
}

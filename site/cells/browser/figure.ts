import { effect } from "@preact/signals-core";
import { Refusal } from "@rollbook/lib";
import { refusalInWords } from "../../say/refusal.js";
import { openUnasked, predictionOf } from "../../store/predictions.js";
import {
  clipAttributes,
  isChart,
  type Layout,
  layoutOf,
  panelLabel,
  pictureAttributes,
} from "../layout.js";
import type { Mark } from "../marks.js";
import { tablesOf } from "../numbers.js";
import { paint } from "../paint.js";
import { drawnFor, reader, spell } from "../reader.js";
import { type FigureSpec, type Inputs, type Panel, startValues, type ValuesOf } from "../spec.js";
import { setAttributes } from "../svg-element.js";
import { words } from "../words.js";
import { announcer } from "./announce.js";
import { element, placeOf } from "./element.js";
import { linkFigure } from "./figure-link.js";
import { fitFrame } from "./frames.js";
import { holdPicture } from "./hold.js";
import { type Looks, looksOf } from "./looks.js";
import type { Slider } from "./named-choice.js";
import { numbersFold } from "./numbers.js";
import { player } from "./player.js";
import { slider } from "./slider.js";

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
    const open = predictionOf(prediction).now.value !== undefined || openUnasked().now.value;
    controls.disabled = !open;
    place.toggleAttribute("data-locked", !open);
    notice.hidden = open;
  });
}

/** Whether the kernel drew for just this reader, so that its picture can stand until a slider moves. */
const isKernels = (): boolean => reader.car === drawnFor.car && reader.units === drawnFor.units;

/** A picture that follows its sliders: marks, sentence, numbers and link. */
class LiveFigure<const I extends Inputs> {
  readonly #stage: Stage<ValuesOf<I>>[];
  readonly #sliders = new Map<string, Slider>();
  readonly #aloud = announcer();
  readonly #numbers;
  readonly #handles: readonly (() => void)[];
  readonly #start: ValuesOf<I>;
  #values: ValuesOf<I>;
  #follow: (values: ValuesOf<I>) => void = () => {};
  #looks: Looks<ValuesOf<I>> | undefined;

  constructor(
    private readonly spec: FigureSpec<I>,
    private readonly place: HTMLElement,
    private readonly says: Element,
  ) {
    this.#stage = stages(place, spec.panels);
    this.#start = startValues(spec.inputs);
    this.#values = this.#start;
    this.#numbers = numbersFold(words.numbersOf(spell(spec.title)));
    for (const [key, parameter] of Object.entries(spec.inputs)) {
      const move = (value: number) => {
        this.#values = { ...this.#values, [key]: value };
        this.#aloud.say(this.#redraw());
      };
      this.#sliders.set(key, slider(`${spec.id}-${key}`, parameter, move));
    }
    this.#handles = this.#stage.flatMap((stage) => this.#handle(stage));
    if (this.#sliders.size > 0) this.#addControls();
    place.append(this.#numbers.fold);
  }
  /** Shows the first state; the kernel's own picture stands where it was drawn for just this reader. */
  begin(): void {
    this.#stand({});
    if (!isKernels()) {
      this.#redraw();
      return;
    }
    this.#follow(this.#values);
    for (const follow of this.#handles) follow();
    this.#numbers.show(() => this.#tables(this.#draw()));
  }
  #draw() {
    return this.#stage.map(({ panel }) => panel.draw(this.#values));
  }
  #tables(drawn: readonly (readonly Mark[])[]) {
    return this.#stage.flatMap(({ panel }, index) => tablesOf(panel, drawn[index] ?? []));
  }
  #say(sentence: string): string {
    if (this.says.textContent !== sentence) this.says.textContent = sentence;
    return sentence;
  }
  /** Answers what the figure says now. */
  #redraw(): string {
    this.#follow(this.#values);
    this.#looks?.at(this.#values);
    try {
      const drawn = this.#draw();
      const sentence = this.spec.says(this.#values);
      this.#numbers.show(() => this.#tables(drawn));
      this.#stage.forEach(({ layers, layout }, index) => {
        paint(layers, drawn[index] ?? [], layout);
      });
      for (const follow of this.#handles) follow();
      return this.#say(spell(sentence));
    } catch (error) {
      this.#numbers.show(() => []);
      if (error instanceof Refusal) return this.#say(words.notDrawn(refusalInWords(error, reader)));
      queueMicrotask(() => {
        throw error; // told at the head of the page; the cells below go on
      });
      return this.#say(words.figureStopped);
    }
  }
  /** Sets all sliders: those named, and the others to where they start. */
  #stand(wanted: Readonly<Record<string, number>>): void {
    this.#values = { ...this.#start, ...wanted };
    for (const [key, control] of this.#sliders) control.set(this.#values[key] ?? Number.NaN);
  }
  #take(wanted: Readonly<Record<string, number>>): void {
    this.#stand(wanted);
    this.#aloud.say(this.#redraw());
  }
  #handle({ layers, layout, panel }: Stage<ValuesOf<I>>): (() => void)[] {
    const picture = layers.free.parentElement;
    if (isChart(panel) || !panel.hold || !picture) return [];
    const set = (key: string, value: number) => this.#take({ ...this.#values, [key]: value });
    const { hold } = panel;
    const { inputs } = this.spec;
    return [holdPicture(picture, layout, { hold, inputs, now: () => this.#values, set })];
  }
  #addControls(): void {
    const rows = [...this.#sliders.values()].map(({ row }) => row);
    const back = element("button", { type: "button", class: "reset" }, words.reset);
    back.addEventListener("click", () => this.#take({}));
    const controls = element("fieldset", { class: "controls" }, ...rows, ...this.#player(), back);
    this.place.append(controls, this.#aloud.node);
    const { after, looks } = this.spec;
    if (after) lockUntilFiled(this.place, controls, after);
    if (after && looks) {
      this.#looks = looksOf(after, this.spec);
      controls.before(this.#looks.list);
      controls.after(this.#looks.seeing);
    }
    const take = (wanted: Readonly<Record<string, number>>) => this.#take(wanted);
    this.#follow = linkFigure(this.spec, this.place, controls, take);
  }
  /** Buttons that let one input run with the clock, where there is such a one. */
  #player(): HTMLElement[] {
    const key = this.spec.plays;
    const input = key === undefined ? undefined : this.spec.inputs[key];
    if (key === undefined || input === undefined) return [];
    const set = (value: number) => this.#take({ ...this.#values, [key]: value });
    return [player({ ...input, now: () => this.#values[key] ?? input.start, set })];
  }
}

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
  new LiveFigure(spec, place, says).begin();
  place.dataset.live = "";
}

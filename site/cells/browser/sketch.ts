import { fromShown, toShown } from "../../say/units.js";
import { layoutOf } from "../layout.js";
import { format, reader, spell } from "../reader.js";
import type { Sketch } from "../spec.js";
import { words } from "../words.js";
import { element } from "./element.js";
import { livePicture } from "./picture.js";
import { slider } from "./slider.js";

const CLOSE = 0.05; // of the truth: so near is on it

/** A drawing that a reader sets to what they expect. */
export interface DrawnPrediction {
  readonly place: HTMLElement;
  /** SI; nothing before it was moved. */
  value(): number | undefined;
}

/** The nearest value that the slider has. */
function onSlider({ input }: Sketch, value: number): number {
  const { min, max, step, quantity } = input;
  const held = Math.min(max, Math.max(min, value));
  const tidy = Number(
    toShown(quantity, min + Math.round((held - min) / step) * step, reader.units).toPrecision(6),
  );
  return fromShown(quantity, tidy, reader.units);
}

/** Lets a reader pull what they expect along a picture; a slider beside it serves keys and exact numbers. */
export function drawPrediction(id: string, sketch: Sketch): DrawnPrediction {
  const { input, panel, at } = sketch;
  let drawn: number | undefined;
  const picture = livePicture(panel, panel.label, () => {});
  const move = (value: number) => {
    drawn = value;
    picture.paint({ expected: value });
  };
  const control = slider(`${id}-drawn`, input, move);
  const pull = ({ clientX, buttons, pointerType }: PointerEvent) => {
    if (buttons === 0 && pointerType === "mouse") return;
    const { left, width } = picture.svg.getBoundingClientRect();
    const { box, width: whole } = layoutOf(panel);
    const [from, to] = panel.view.x;
    const across = from + (((clientX - left) / width) * whole - box.x) * ((to - from) / box.width);
    const value = onSlider(sketch, at(across));
    control.set(value);
    move(value);
  };
  picture.svg.addEventListener("pointerdown", (event) => {
    picture.svg.setPointerCapture(event.pointerId);
    pull(event);
  });
  picture.svg.addEventListener("pointermove", pull);
  picture.svg.classList.add("pulled");
  control.set(input.start);
  picture.paint({ expected: input.start });
  const legend = element("p", {}, words.drawIt);
  return {
    place: element("div", { class: "sketch" }, legend, picture.svg, control.row),
    value: () => drawn,
  };
}

/** What was drawn beside what the model says, and the gap in words. */
export function drawnBeside({ input, panel, truth }: Sketch, expected: number): HTMLElement {
  const picture = livePicture(panel, panel.label, () => {});
  picture.paint({ expected, truth });
  const told = (value: number) => format(input.quantity, value, input.decimals);
  const gap = expected - truth;
  const isClose = Math.abs(gap) <= CLOSE * Math.abs(truth);
  const by = isClose ? words.drawnWell : words.drawnOff(told(Math.abs(gap)), gap > 0);
  const sentence = words.drawn(spell(input.name), told(expected), told(truth), by);
  return element("div", { class: "sketch" }, picture.svg, element("p", {}, sentence));
}

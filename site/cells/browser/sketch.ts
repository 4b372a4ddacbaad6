import { layoutOf } from "../layout.js";
import { format, spell } from "../reader.js";
import type { Drawn, Sketch } from "../spec.js";
import { words } from "../words.js";
import { element } from "./element.js";
import { holdPicture } from "./hold.js";
import { livePicture } from "./picture.js";
import { slider } from "./slider.js";

const CLOSE = 0.05; // of the truth: so near is on it

/** A drawing that a reader sets to what they expect. */
export interface DrawnPrediction {
  readonly place: HTMLElement;
  /** SI; nothing before it was moved. */
  value(): number | undefined;
}

/** Lets a reader pull what they expect along a picture; a slider beside it serves keys and exact numbers. */
export function drawPrediction(id: string, sketch: Sketch): DrawnPrediction {
  const { input, panel } = sketch;
  let drawn: number | undefined;
  const now = (): Drawn => ({ expected: drawn ?? input.start });
  const picture = livePicture(panel, panel.label, () => {});
  const legend = element("p", {}, words.drawIt);
  const place = element("div", { class: "sketch" }, legend, picture.svg);
  const show = () => {
    picture.paint(now());
    follow();
  };
  const move = (value: number) => {
    drawn = value;
    show();
  };
  const control = slider(`${id}-drawn`, input, move);
  const set = (_: string, value: number) => {
    control.set(value);
    move(value);
  };
  const pulled = { hold: panel.hold, inputs: { expected: input }, now, set };
  const follow = holdPicture(picture.svg, layoutOf(panel), pulled);
  place.append(control.row);
  control.set(input.start);
  show();
  return { place, value: () => drawn };
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

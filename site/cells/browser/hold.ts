import { findPeak } from "@rollbook/lib";
import type { Layout } from "../layout.js";
import type { Point } from "../marks.js";
import type { Drawing, Inputs } from "../spec.js";
import { element } from "./element.js";

type Hold<Values> = NonNullable<Drawing<Values>["hold"]>;

/** What can be pulled, and what is told of it. */
interface Pulled<Values> {
  readonly hold: Hold<Values>;
  readonly inputs: Inputs;
  now(): Values;
  set(key: string, value: number): void;
}

/** The value of the input, on one of its steps, that brings the held point nearest to a point of the picture. */
function valueAt<Values>(
  { hold: { at, input }, inputs, now }: Pulled<Values>,
  { x, y }: Layout,
  [px, py]: Point,
): number {
  const parameter = inputs[input];
  if (parameter === undefined) return Number.NaN;
  const { min, max, step } = parameter;
  const values = now();
  const near = (value: number) => {
    const [hx, hy] = at({ ...values, [input]: value });
    return -((x(hx) - px) ** 2) - (y(hy) - py) ** 2;
  };
  const steps = Math.round((findPeak(near, min, max, step / 4).at - min) / step);
  return Math.min(max, Number((min + steps * step).toPrecision(12)));
}

/** Whether the held point moves across rather than up, over the range of its input. */
function movesAcross<Values>({ hold: { at, input }, inputs, now }: Pulled<Values>): boolean {
  const { min = 0, max = 1 } = inputs[input] ?? {};
  const [[ax, ay], [bx, by]] = [at({ ...now(), [input]: min }), at({ ...now(), [input]: max })];
  return Math.abs(bx - ax) >= Math.abs(by - ay);
}

/**
 * Lets a reader pull a picture by one of its points, with finger or mouse: the input follows so that the
 * point stays under the finger. Keys have the slider of that input, so the handle is no stop of theirs.
 *
 * A finger that goes the other way scrolls the page, on the handle as anywhere.
 *
 * @returns puts the handle where the point is now
 */
export function holdPicture<Values>(
  picture: Element,
  layout: Layout,
  pulled: Pulled<Values>,
): () => void {
  const handle = element("span", { class: "hold", "aria-hidden": "true" });
  const held = element("div", { class: "held" });
  picture.replaceWith(held);
  held.append(picture, handle);
  let [finger, frame]: [Point, number] = [[0, 0], 0];
  const pull = () => {
    frame = 0;
    const { left, top, width } = held.getBoundingClientRect();
    const size = layout.width / width;
    const point: Point = [(finger[0] - left) * size, (finger[1] - top) * size];
    pulled.set(pulled.hold.input, valueAt(pulled, layout, point));
  };
  handle.addEventListener("pointerdown", (event) => {
    handle.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  handle.addEventListener("pointermove", (event) => {
    if (!handle.hasPointerCapture(event.pointerId)) return;
    finger = [event.clientX, event.clientY];
    if (frame === 0) frame = requestAnimationFrame(pull);
  });
  return () => {
    handle.dataset.way ??= movesAcross(pulled) ? "across" : "up";
    const [x, y] = pulled.hold.at(pulled.now());
    handle.style.left = `${(100 * layout.x(x)) / layout.width}%`;
    handle.style.top = `${(100 * layout.y(y)) / layout.height}%`;
  };
}

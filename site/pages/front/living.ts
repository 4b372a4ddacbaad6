import {
  carBalance,
  drive,
  type HandlingCar,
  handlingCarOf,
  type Moment,
  trim,
  USUAL_SPEED,
} from "@rollbook/lib";
import { axleSeenThrough, currentCar, format, label, seenView } from "../../cells/alike.js";
import type { FigureSpec, Inputs } from "../../cells/spec.js";
import { words } from "../../say/front.js";

const SPEED = 60 / 3.6; // m/s
const BEGIN = 0.1; // s, before the hands move
const HANDS = 0.2; // s that they take
const SHOWN = 1.2; // s in the picture
const END = 2.4; // s that are driven: then nothing moves any more
const STEP = 0.02; // s

const inputs = {
  stiffness: {
    ...{ name: words.stiffness, symbol: "", quantity: "share", decimals: 0 },
    ...{ min: 0.5, max: 2, step: 0.05, start: 1 },
  },
  time: {
    ...{ name: words.time, symbol: "", quantity: "time", decimals: 2 },
    ...{ min: 0, max: SHOWN, step: STEP, start: SHOWN },
  },
} as const satisfies Inputs;

const withFront = (car: HandlingCar, stiffness: number): HandlingCar => ({
  ...car,
  front: { ...car.front, rollStiffness: stiffness * car.front.rollStiffness },
});

const marginOf = (car: HandlingCar): number =>
  carBalance(car, { speed: USUAL_SPEED }).understeerMargin;

/** The same turn with the front of a car so many times as stiff in roll, driven once for each. */
function drives(car: HandlingCar): (stiffness: number) => readonly Moment[] {
  const limit = carBalance(car, { speed: USUAL_SPEED }).lateralAcceleration;
  const turn = Math.min(7.5, 0.8 * limit); // m/s², a brisk corner that the tyres still hold
  const steer = trim(car, { speed: SPEED }, turn)?.steer ?? 0.01;
  const known = new Map<number, readonly Moment[]>();
  return (stiffness) => {
    const driven =
      known.get(stiffness) ??
      drive(withFront(car, stiffness), {
        speed: SPEED,
        duration: END,
        step: STEP,
        steer: (time) => steer * Math.min(1, Math.max(0, (time - BEGIN) / HANDS)),
      });
    known.set(stiffness, driven);
    return driven;
  };
}

const at = (moments: readonly Moment[], time: number): Moment =>
  moments[Math.min(moments.length - 1, Math.round(time / STEP))] as Moment;

/** Both axles of the reader's car from behind as it turns in, and what a stiffer front does to the four loads. */
export function livingCar(): FigureSpec<typeof inputs> {
  const car = currentCar();
  const handling = handlingCarOf(car);
  const turned = drives(handling);
  const own = turned(1);
  const seen = (end: "front" | "rear", { time, rollAngle, tyreAngle, load, transfer }: Moment) => {
    const { track, unsprungHeight, geometry, bar, spring } = car[end];
    return {
      ...{ track, wheelHeight: unsprungHeight, rollCentreHeight: geometry.rollCentreHeight },
      ...{ hasBar: bar !== undefined, isBeam: spring.spacing !== undefined, time, rollAngle },
      ...{ tyreAngle: tyreAngle[end], load: load[end], transfer: transfer[end] },
    };
  };
  const panelOf = (end: "front" | "rear") => ({
    view: seenView,
    label: words.axle(end),
    draw: ({ stiffness, time }: { stiffness: number; time: number }) => [
      ...axleSeenThrough(
        seen(end, at(turned(stiffness), time)),
        stiffness === 1 ? undefined : seen(end, at(own, time)),
      ),
      label([1.08, 1.24], words.end(end), end, "right"),
    ],
  });
  return {
    ...{ id: "living-car", title: words.title, plays: "time", inputs },
    panels: [panelOf("front"), panelOf("rear")],
    says: ({ stiffness }) => {
      const [now, before] = [turned(stiffness), own].map((moments) => at(moments, END).load);
      if (now === undefined || before === undefined) return "";
      const newtons = (value: number) => format("force", value, 0);
      if (stiffness === 1)
        return words.asItIs(newtons(before.front.right), newtons(before.rear.right));
      const loads = {
        front: newtons(now.front.right),
        frontBefore: newtons(before.front.right),
        rear: newtons(now.rear.right),
        rearBefore: newtons(before.rear.right),
      };
      const shift = marginOf(withFront(handling, stiffness)) - marginOf(handling);
      return words.changed(stiffness > 1, loads, shift > 0 ? "front" : "rear");
    },
  };
}

import {
  type Car,
  carBalance,
  drive,
  type HandlingCar,
  handlingCarOf,
  type Moment,
  trim,
  USUAL_SPEED,
} from "@rollbook/lib";
import { axleAt, axleSeenThrough, currentCar, format, label, seenView } from "../../cells/alike.js";
import type { FigureSpec, Inputs } from "../../cells/spec.js";
import { words } from "../../say/front.js";

const SPEED = 60 / 3.6; // m/s
const BEGIN = 0.1; // s, before the hands move
const HANDS = 0.2; // s that they take
const SHOWN = 1.8; // s that are driven and shown: by then next to nothing moves, and the sentence tells what the picture shows
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

/** A car in one brisk turn, with its front so many times as stiff in roll. */
interface Turned {
  readonly moments: readonly Moment[];
  /** m/s² of the whole car, above 0 where the front gives up first */
  readonly margin: number;
}

/** Turns of a car, each driven once, the first of them when it is asked for. */
function turnsOf(car: Car): (stiffness: number) => Turned {
  let begun: { handling: HandlingCar; steer: number } | undefined;
  const known = new Map<number, Turned>();
  const begin = () => {
    const handling = handlingCarOf(car);
    const limit = carBalance(handling, { speed: USUAL_SPEED }).lateralAcceleration;
    const turn = Math.min(7.5, 0.8 * limit); // m/s², a brisk corner that the tyres still hold
    return { handling, steer: trim(handling, { speed: SPEED }, turn)?.steer ?? 0.01 };
  };
  return (stiffness) => {
    begun ??= begin();
    const { handling, steer } = begun;
    const turned = known.get(stiffness) ?? turnedWith(withFront(handling, stiffness), steer);
    known.set(stiffness, turned);
    return turned;
  };
}

function turnedWith(car: HandlingCar, steer: number): Turned {
  const driving = { speed: SPEED, duration: SHOWN, step: STEP };
  const hands = (time: number) => Math.min(1, Math.max(0, (time - BEGIN) / HANDS));
  return {
    moments: drive(car, { ...driving, steer: (time) => steer * hands(time) }),
    margin: carBalance(car, { speed: USUAL_SPEED }).understeerMargin,
  };
}

const at = (moments: readonly Moment[], time: number): Moment =>
  moments[Math.min(moments.length - 1, Math.round(time / STEP))] as Moment;

/** Both axles of the reader's car from behind as it turns in, and what a stiffer front does to the four loads. */
export function livingCar(): FigureSpec<typeof inputs> {
  const car = currentCar();
  const turned = turnsOf(car);
  const seen = (end: "front" | "rear", stiffness: number, time: number) =>
    axleAt(car, end, at(turned(stiffness).moments, time));
  const panelOf = (end: "front" | "rear") => ({
    view: seenView,
    label: words.axle(end),
    draw: ({ stiffness, time }: { stiffness: number; time: number }) => [
      ...axleSeenThrough(seen(end, stiffness, time), {
        before: stiffness === 1 ? undefined : seen(end, 1, time),
      }),
      label([1.08, 1.24], words.end(end), end, "right"),
    ],
  });
  const newtons = (value: number) => format("force", value, 0);
  return {
    ...{ id: "living-car", title: words.title, plays: "time", inputs },
    panels: [panelOf("front"), panelOf("rear")],
    says: ({ stiffness }) => {
      const [now, own] = [turned(stiffness), turned(1)];
      const [after, before] = [at(now.moments, SHOWN).load, at(own.moments, SHOWN).load];
      if (stiffness === 1)
        return words.asItIs(newtons(before.front.right), newtons(before.rear.right));
      const loads = {
        front: newtons(after.front.right),
        frontBefore: newtons(before.front.right),
        rear: newtons(after.rear.right),
        rearBefore: newtons(before.rear.right),
      };
      return words.changed(stiffness > 1, loads, now.margin > own.margin ? "front" : "rear");
    },
  };
}

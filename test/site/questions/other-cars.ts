import { type Axle, type Car, demoCar, fromShown } from "@rollbook/lib";

const both = (value: number) => ({ left: value, right: value });
const degrees = (value: number) => fromShown("angle", value);

function axle(base: Axle, changes: Partial<Axle>): Axle {
  return { ...base, ...changes };
}

const { bar: _frontBar, ...frontWithoutBar } = demoCar.front;
const { bar: _rearBar, ...rearWithoutBar } = demoCar.rear;

/** A heavy-nosed small car with front drive and no rear bar. All three cars are invented. */
export const wren: Car = {
  ...demoCar,
  name: "Wren",
  wheelbase: 2.5,
  body: { mass: 900, behindFrontAxle: 0.85, leftOfCentre: 0, height: 0.58 },
  driveFrontShare: 1,
  brakeFrontShare: 0.74,
  front: axle(demoCar.front, {
    track: 1.47,
    unsprungMass: 85,
    spring: { ...demoCar.front.spring, rate: 32e3, motionRatio: 0.95 },
    tyre: { name: "club", pressure: both(220e3) },
  }),
  rear: axle(rearWithoutBar, {
    track: 1.46,
    spring: { ...demoCar.rear.spring, rate: 30e3, motionRatio: 0.9, spacing: 1.1 },
    tyre: { name: "club", pressure: both(210e3) },
  }),
};

/** A light, low and wide car with its engine behind the driver. */
export const swift: Car = {
  ...demoCar,
  name: "Swift",
  wheelbase: 2.3,
  body: { mass: 520, behindFrontAxle: 1.32, leftOfCentre: 0, height: 0.36 },
  front: axle(demoCar.front, {
    track: 1.55,
    unsprungMass: 50,
    camber: both(degrees(-2.5)),
    geometry: { ...demoCar.front.geometry, rollCentreHeight: 0.02 },
  }),
  rear: axle(demoCar.rear, {
    track: 1.52,
    unsprungMass: 60,
    geometry: { ...demoCar.rear.geometry, rollCentreHeight: 0.05 },
  }),
};

/** A tall and heavy car without any bar, on the published road tyre. */
export const bustard: Car = {
  ...demoCar,
  name: "Bustard",
  wheelbase: 2.8,
  body: { mass: 1380, behindFrontAxle: 1.35, leftOfCentre: 0, height: 0.62 },
  front: axle(frontWithoutBar, {
    track: 1.52,
    unsprungMass: 110,
    spring: { ...demoCar.front.spring, rate: 55e3, motionRatio: 0.8 },
    tyre: { name: "published road", pressure: both(230e3) },
  }),
  rear: axle(rearWithoutBar, {
    track: 1.52,
    unsprungMass: 120,
    spring: { ...demoCar.rear.spring, rate: 55e3, motionRatio: 0.85 },
    tyre: { name: "published road", pressure: both(230e3) },
  }),
};

export const otherCars: readonly Car[] = [wren, swift, bustard];

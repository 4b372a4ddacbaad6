import type { ParameterKey } from "../../parameters.js";
import { parameters } from "../../parameters.js";
import type {
  Adjuster,
  AntiRollBar,
  Axle,
  AxleGeometry,
  Car,
  Certainty,
  ClassLimits,
  Differential,
  PlacedMass,
} from "../car.js";
import { OWN_TYRE, tyreNames } from "../tyres.js";
import { linkageShape } from "./linkage-shape.js";
import { rulesShape } from "./rules-shape.js";
import {
  count,
  day,
  defined,
  group,
  list,
  number,
  numberWithin,
  optional,
  record,
  type ShapeOf,
  text,
} from "./shape.js";
import { tyreDataShape } from "./tyre-file.js";

const sides = (key: ParameterKey, about: string) =>
  group(about, { left: number(key), right: number(key) });

const placed = (about: string, key: ParameterKey): ShapeOf<PlacedMass> =>
  group(about, {
    mass: number(key, "Mass"),
    behindFrontAxle: number("behindFrontAxle"),
    leftOfCentre: number("leftOfCentre", "Distance left of the centre line; below zero: right"),
    height: number("height"),
  });

const adjuster = (key: ParameterKey) => {
  const { quantity, min, max, step } = parameters[key];
  const shape: ShapeOf<Adjuster> = group(`How far it can be set: ${parameters[key].name}`, {
    min: number(key, "Least"),
    max: number(key, "Greatest"),
    step: numberWithin("Smallest step", quantity, step / 100, max - min),
  });
  return optional(shape);
};

const bar: ShapeOf<AntiRollBar> = group("Anti-roll bar; left out: none", {
  motionRatio: number("barMotionRatio"),
  positions: list(
    "From soft to stiff; each gives a rate, or an arm length",
    group("One position", {
      rate: optional(number("barRate", "Force at each end for each metre the ends move apart")),
      armLength: optional(number("barArmLength")),
    }),
    12,
  ),
  position: count("Position in use; 1 is the first", 1, 12),
  tube: optional(
    group("The straight part, for positions that give an arm length", {
      diameter: number("barDiameter"),
      innerDiameter: optional(number("barInnerDiameter")),
      length: number("barLength"),
    }),
  ),
});

/** What a file may say of the guidance of its wheels, and what joints may make of it. */
export const geometryShape: ShapeOf<AxleGeometry> = group("How the links guide the wheels", {
  rollCentreHeight: number("rollCentreHeight"),
  rollCentreMigration: optional(number("rollCentreMigration")),
  camberGain: optional(
    number("camberGain", "Camber change for each metre of bump; out is above 0"),
  ),
  toeGain: optional(number("toeGain", "Toe change for each metre of bump; in is above 0")),
  rollSteer: optional(number("rollSteer", "Turn of a beam to the left for each angle of its roll")),
  bumpTravel: optional(number("bumpTravel", "How far a wheel can rise")),
  droopTravel: optional(number("droopTravel", "How far a wheel can fall")),
  bumpStop: optional(
    number(
      "stopStiffening",
      "Rise of the bump stop's rate at the wheel with how far it is pressed",
    ),
  ),
  droopStop: optional(number("stopStiffening", "The same at the end of the travel in droop")),
  complianceSteer: optional(
    number(
      "complianceSteer",
      "How far both wheels give way to side force; out of the turn is above 0",
    ),
  ),
});

const differential: ShapeOf<Differential> = group(
  "What shares the drive between left and right; left out: not known, taken as open",
  {
    kind: text("Which kind", ["open", "limited-slip", "locked"]),
    power: optional(
      number("differentialLock", "Limited-slip: lock under drive, as a share of the push"),
    ),
    overrun: optional(
      number("differentialLock", "Limited-slip: lock on the overrun, as a share of the push"),
    ),
  },
);

/** What a file may say of how sure one of its numbers is. */
export const certaintyShape: ShapeOf<Certainty> = defined(
  "known",
  group("How sure one number is", {
    how: text("Where it comes from", ["measured", "maker", "estimated", "copied"]),
    spread: optional(
      numberWithin("One standard deviation, in the SI unit of the number", "ratio", 0, 1e10),
    ),
    when: optional(day("Day on which it was measured or looked up")),
    by: optional(text("Who did")),
  }),
);

const tyre: ShapeOf<Axle["tyre"]> = group("The tyres", {
  name: text("Which tyre; own: that of its data", [...tyreNames, OWN_TYRE]),
  data: optional(tyreDataShape),
  pressure: sides("tyrePressure", "Warm pressure above atmosphere"),
  grip: optional(number("tyreGrip", "Friction over that of the tyre's data; left out: 1")),
  loadSensitivity: optional(
    number("tyreLoadSensitivity", "Loss of grip with load over the data's; left out: 1"),
  ),
  stiffness: optional(
    number("tyreStiffnessFactor", "Vertical stiffness over the data's; left out: 1"),
  ),
  bestPressure: optional(
    number(
      "tyrePressure",
      "Warm pressure that grips best, where the tyre has one; left out: not known",
    ),
  ),
});

const adjusters: ShapeOf<NonNullable<Axle["adjusters"]>> = group(
  "What can be adjusted here, how far and how finely",
  {
    springRate: adjuster("springRate"),
    seatTurns: adjuster("seatTurns"),
    tyrePressure: adjuster("tyrePressure"),
    camber: adjuster("camber"),
    toe: adjuster("toe"),
    rollCentreHeight: adjuster("rollCentreHeight"),
    damperBump: adjuster("damperBump"),
    damperRebound: adjuster("damperRebound"),
  },
);

const axle = (about: string): ShapeOf<Axle> =>
  defined(
    "axle",
    group(about, {
      track: number("track"),
      rideHeight: number("rideHeight", "Ground to body, where the class rules measure it"),
      unsprungMass: number("unsprungMass", "Both wheels and what moves with them"),
      unsprungHeight: number("unsprungHeight"),
      spring: group("The springs and their seats", {
        rate: number("springRate"),
        motionRatio: number("motionRatio"),
        spacing: optional(number("springSpacing")),
        seatTurns: sides(
          "seatTurns",
          "Turns of each seat since the car was measured; up is taller",
        ),
        seatTravelPerTurn: number("seatTravelPerTurn"),
      }),
      bar: optional(bar),
      damper: group("The dampers", {
        bump: number("damperBump"),
        rebound: number("damperRebound"),
        motionRatio: optional(
          number("motionRatio", "Damper travel / wheel travel; else the spring's"),
        ),
      }),
      differential: optional(differential),
      geometry: geometryShape,
      linkage: optional(linkageShape),
      camber: sides("camber", "Camber at rest; below zero: top in"),
      toe: sides("toe", "Toe of each wheel at rest; above zero: in"),
      tyre,
      adjusters: optional(adjusters),
    }),
  );

const limits: ShapeOf<ClassLimits> = group("What the class rules allow", {
  leastRideHeight: optional(number("rideHeight", "Least ride height")),
  leastPressure: optional(number("tyrePressure", "Least pressure")),
  greatestPressure: optional(number("tyrePressure", "Greatest pressure")),
  leastCamber: optional(number("camber", "Most negative camber")),
  leastMass: optional(number("mass", "Least mass with driver")),
});

/** The car file, field by field: validation, JSON Schema and documentation all read this. */
export const carShape: ShapeOf<Car> = group("A car", {
  name: text("What the car is called"),
  notes: optional(text("Anything worth knowing")),
  wheelbase: number("wheelbase"),
  body: placed("Sprung mass without driver, passenger, fuel and ballast", "sprungMass"),
  driver: optional(placed("Driver with seat pads and helmet", "driver")),
  passenger: optional(placed("Passenger or instructor", "passenger")),
  fuel: optional(placed("Fuel in the tank", "fuel")),
  ballast: optional(placed("Ballast, fixed to the body", "ballast")),
  inertia: optional(
    group("Moments of inertia about the centre of gravity; estimated when left out", {
      roll: number("rollInertia"),
      pitch: number("pitchInertia"),
      yaw: number("yawInertia"),
    }),
  ),
  torsionStiffness: optional(number("torsionStiffness", "Chassis in torsion; left out: stiff")),
  steeringRatio: number("steeringRatio", "Steering wheel angle / road wheel angle"),
  brakeFrontShare: number("brakeFrontShare"),
  driveFrontShare: number("driveFrontShare", "Front drive share: 0 rear drive, 1 front drive"),
  air: optional(
    group("Forces of the air for each speed squared", {
      frontDownforce: number("downforceFactor", "Downforce on the front axle"),
      rearDownforce: number("downforceFactor", "Downforce on the rear axle"),
      drag: number("dragFactor", "Drag"),
    }),
  ),
  front: axle("The front axle"),
  rear: axle("The rear axle"),
  limits: optional(limits),
  classRules: optional(rulesShape),
  adjusters: optional(
    group("What can be adjusted on the whole car", {
      brakeFrontShare: adjuster("brakeFrontShare"),
      driver: adjuster("driver"),
      passenger: adjuster("passenger"),
      fuel: adjuster("fuel"),
      ballast: adjuster("ballast"),
    }),
  ),
  known: optional(
    record(
      "How sure the numbers are, by their place, such as `front.spring.rate`",
      "places",
      certaintyShape,
      400,
    ),
  ),
});

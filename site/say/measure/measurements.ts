import { titles } from "./titles.js";

/** What is said of one measurement: what it gives, how it is done, and what to beware of. */
export interface MeasurementWords {
  readonly title: string;
  readonly gives: string;
  readonly tools: string;
  readonly minutes: string;
  readonly cautions: readonly (keyof typeof cautions)[];
  readonly steps: readonly string[];
}

/** What is said where the work can hurt someone; the maker, the class rules and local codes come first. */
export const cautions = {
  stands:
    "Nobody is under a car that a jack alone holds: stands made for its weight, where the maker says, on firm level ground, wheels on the ground chocked.",
  raised:
    "A raised car wants to roll. Brakes and gears are free, or the scales lie: leave a chock with a finger’s gap before and behind each wheel that stays down, let nobody in or under the car, and lift no higher than stands and slings are made for. Have a workshop do it if you have not seen it done.",
  people:
    "People sit or stand still on the floor or the sill, hold on to nothing that turns, get on and off one by one, and keep fingers out of arches, springs and wheels.",
  spring:
    "A loaded spring is dangerous. Only a workshop takes one out; with the spring in place a jack under the hub does.",
  driving:
    "Closed venue with the organiser’s leave, marshals, one car on the circle, a wide free run-off all round, helmets and belts. Start slowly, change direction often, watch tyre temperature, stop when tyres or brakes smell. Whoever drives times nothing.",
  riding:
    "The phone is fixed, never held; a passenger starts and stops it, or whoever drives while the car stands. Closed venue with the organiser’s leave, helmets and belts.",
  fuel: "Fuel burns and its vapour more so: tell what is in the tank by the gauge and the pump, drain nothing for a weight.",
  brakes:
    "Brakes stop the car: undo nothing of them for a measurement, and blow no dust about. A part that was taken off for weighing goes back with the maker’s torque, checked by a second person.",
  rolling: "Somebody pushes, somebody steers, nobody is in front of the car.",
} as const;

export const measurementWords: Readonly<Record<string, MeasurementWords>> = {
  "four-scales": {
    title: titles["four-scales"],
    gives: "Mass, its place and the cross weight; from them the body’s mass and place.",
    tools: "four scales of one height",
    minutes: "15 minutes",
    cautions: ["stands"],
    steps: [
      "Level ground: shim the scales until their tops are within 3 mm of each other.",
      "Everything in the car that its file puts in it, driver too; pressures set, steering straight.",
      "Bounce each end once and let it rest. Read all four. Roll off, roll on, read again: repeats are welcome.",
    ],
  },
  "raised-axle": {
    title: titles["raised-axle"],
    gives: "Height of the centre of gravity.",
    tools: "two scales, hoist or stands, tape, struts that hold the springs",
    minutes: "40 minutes",
    cautions: ["raised", "stands"],
    steps: [
      "Two scales under the axle that stays down, blocks of the same height under the other. Read both together, level.",
      "Hold the springs: struts in place of dampers, or blocks on the stops. If they stay free, say so below.",
      "Raise the other axle as high as is safe, half a metre if it can be. Brakes off, no gear. Read the same scales.",
      "Measure by how much the centres of the raised wheels rose, or the ground under their tyres.",
    ],
  },
  "ride-rate": {
    title: titles["ride-rate"],
    gives: "Ride rate of the axle; with the tyre taken off, wheel rate and motion ratio.",
    tools: "people or ballast of known mass, tape or ruler at both sides",
    minutes: "15 minutes",
    cautions: ["people"],
    steps: [
      "A mark on the body right above each wheel of the axle. Measure its height above the ground: that is the start.",
      "Put a known mass right over the axle, in its middle. Push the body down, let go, read how far both marks fell.",
      "Two or three masses more, then the same on the way back: friction shows as lines that do not agree.",
    ],
  },
  "sill-weight": {
    title: titles["sill-weight"],
    gives: "Roll stiffness of the whole car as it stands; with four scales its split.",
    tools: "people or ballast of known mass, two rulers",
    minutes: "10 minutes",
    cautions: ["people"],
    steps: [
      "A mark low on the body on either side, half way between the axles. Measure how far they are apart.",
      "Put a known mass on one sill, half way between the axles, and measure its distance from the middle of the car.",
      "Push, let go, read how far the near mark fell and the far one rose. Then one or two masses more.",
      "With four scales, if you have them: all four with the last mass on. Without it they stand in their own form above.",
    ],
  },
  "motion-ratio": {
    title: titles["motion-ratio"],
    gives: "Motion ratio, and whether it changes with travel.",
    tools: "jack, ruler, calliper or tape",
    minutes: "20 minutes a wheel",
    cautions: ["stands", "spring"],
    steps: [
      "Car on stands, wheel off, a jack under the hub. Bring the hub to where it stands with the car on its wheels.",
      "First line: height of the hub and length of the spring there.",
      "Up and down by 20 mm at a time through what travel there is: both lengths in each place.",
    ],
  },
  linkage: {
    title: titles.linkage,
    gives: "Roll centre, its movement and camber gain, for wheels on arms or struts.",
    tools: "tape, plumb line, chalk, straight edge",
    minutes: "40 minutes an axle",
    cautions: ["stands"],
    steps: [
      "Car on its wheels on level ground, at ride height. Chalk its middle plane on the ground.",
      "For each joint of one side, in the plane of the axle: distance from the middle plane, and height above the ground, to the middle of the joint.",
      "Measure both sides and put in both: their mean counts.",
    ],
  },
  "tyre-rate": {
    title: titles["tyre-rate"],
    gives: "How stiff the tyre is, up and down.",
    tools: "one scale, people or ballast, ruler",
    minutes: "10 minutes",
    cautions: ["people"],
    steps: [
      "One wheel on a scale, its pressure set warm or as it will be. Read the scale, and the height of the wheel’s centre above it.",
      "Load that corner, or take weight off with a jack under the body: both readings again, three loads at least.",
    ],
  },
  "tyre-print": {
    title: titles["tyre-print"],
    gives: "Size of the patch, and how much of its load the air carries.",
    tools: "paper or card, water or chalk, tape",
    minutes: "10 minutes",
    cautions: ["rolling"],
    steps: [
      "Wet or chalk the tread, roll slowly on to dry paper and stop; mark where the print begins and ends in front and behind.",
      "Length along the car, width across, grooves counted in; the load from the scale.",
    ],
  },
  circle: {
    title: titles.circle,
    gives: "Limit, understeer gradient, steering ratio, and what a change really did.",
    tools: "an empty flat place, cones, long tape, stopwatch, tape on the steering wheel’s rim",
    minutes: "30 minutes",
    cautions: ["driving"],
    steps: [
      "Mark a circle and measure its radius to the middle between the wheel tracks. Write pressures down before and after.",
      "Gradient: steady laps, each a little faster than the one before, up to brisk. The passenger reads how far the mark on the rim has moved.",
      "Limit: clean laps as fast as it goes. Somebody outside times them: a lap with a slide or a lift does not count.",
      "A change: run with, run without, run with, run without. What drifts in the day then is in both.",
    ],
  },
  ride: {
    title: titles.ride,
    gives: "Roll gradient: how far the body leans for each m/s² of lateral acceleration.",
    tools: "a phone, a mount on the car’s body, a closed venue",
    minutes: "20 minutes",
    cautions: ["riding"],
    steps: [
      "The page Ride along records, works it out, and puts what you keep in a line here. Ten steady turns to both sides.",
      "Several rides are taken together, each by its spread. A roll gradient that was measured otherwise can be typed in.",
    ],
  },
  "people-and-fuel": {
    title: titles["people-and-fuel"],
    gives: "Mass of whoever drives, where they sit, and mass of the fuel.",
    tools: "bathroom scales, tape, plumb line",
    minutes: "5 minutes",
    cautions: ["fuel"],
    steps: [
      "On the scales as they drive: suit, shoes, helmet.",
      "Seated, doors shut: from the front wheel’s centre back to the hip joint, along the car; from the middle of the car across to it.",
      "Fuel from the gauge or from what the pump gave: a litre of petrol is 0.74 kg, of diesel 0.83 kg.",
    ],
  },
  "bar-and-links": {
    title: titles["bar-and-links"],
    gives: "Rate of the bar, and how far it moves for each length that the wheel does.",
    tools: "calliper, tape",
    minutes: "20 minutes, on stands",
    cautions: ["stands"],
    steps: [
      "Across, paint scraped off a spot: diameter, and wall where the bar is a tube. From bush to bush what twists; from its middle line square to the link’s eye: the arm.",
      "One hub up by 20 mm, the other held: how far the link’s eye moved on the arm. That over 20 mm is its motion ratio.",
    ],
  },
  wheels: {
    title: titles.wheels,
    gives: "What goes up and down with the wheel, and how high its mass is.",
    tools: "scales",
    minutes: "20 minutes, on stands",
    cautions: ["stands", "brakes"],
    steps: [
      "Wheel with its tyre on the scales.",
      "Brake, hub and upright as they come off in a repair, or from a parts list. Half of each arm, spring, damper and shaft is added: their other half hangs on the body.",
      "A live axle is weighed as one, half of it for each wheel. Its mass is as high as the wheel’s centre.",
    ],
  },
  alignment: {
    title: titles.alignment,
    gives: "Camber and toe of each wheel as the car stands.",
    tools: "camber gauge, strings on four stands, ruler",
    minutes: "30 minutes",
    cautions: ["rolling"],
    steps: [
      "Level ground, pressures set, driver or ballast in the seat, steering straight. Roll the car back and forth once, so that tyres do not hold it.",
      "Camber: the gauge upright on the rim, not on the tyre; turn the wheel by half and take the mean, for a rim that is bent.",
      "Toe: strings along both sides, as far from the front hubs as from the rear ones. From string to rim in front and behind: what it is nearer in front is toe-out of that wheel.",
    ],
  },
  travels: {
    title: titles.travels,
    gives: "How far the wheel can rise to its stop and fall to the end of its damper.",
    tools: "jack, tape",
    minutes: "15 minutes a wheel, on stands",
    cautions: ["stands", "spring"],
    steps: [
      "Car on its wheels: from the arch straight down to the wheel’s centre.",
      "On stands, wheel hanging: the same again. What it is longer is the fall.",
      "Rise: from the maker, or by the damper’s rod that is left above its stop over the motion ratio. To jack a hub to its stop the spring is out, by a workshop.",
    ],
  },
  "brake-share": {
    title: titles["brake-share"],
    gives: "Share of the braking force that the front wheels have.",
    tools: "calliper, tape, manual",
    minutes: "15 minutes",
    cautions: ["stands", "brakes"],
    steps: [
      "From the maker, where told. Else for each axle: area of one side’s pistons times the radius from the hub to the middle of the pad.",
      "Front over the sum of both, with equal pads and no valve between. A valve or a bias bar changes it: take what it is set to.",
    ],
  },
};

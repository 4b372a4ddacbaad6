import type { FieldWords } from "./field-words.js";

const placed = {
  mass: { label: "Mass" },
  behindFrontAxle: { label: "Distance behind the front axle" },
  leftOfCentre: {
    label: "Distance left of the centre line",
    help: "Below zero is right of the centre line.",
  },
  height: { label: "Height of its middle above the ground" },
};
const named = (part: string, fields: Record<string, FieldWords>) =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [`${part}.${name}`, field]));

/** Label and help of every field of the whole car, by its general place. */
export const carFields: Readonly<Record<string, FieldWords>> = {
  name: {
    label: "Name",
    help: "What you call it. Every chapter then says whose figures it shows.",
  },
  notes: { label: "Notes", help: "Tyres, class, who measured it and when." },
  wheelbase: {
    label: "Wheelbase",
    help: "Centre of the front wheel to centre of the rear wheel, steering straight. Measure both sides and take the mean.",
  },
  ...named("driver", {
    ...placed,
    mass: { label: "Mass", help: "As strapped in: helmet, suit and seat pads too." },
    behindFrontAxle: {
      label: "Distance behind the front axle",
      help: "A seated person’s middle is a little in front of the hip joint, about a hand’s breadth above the seat (common practice, no source).",
    },
  }),
  ...named("passenger", placed),
  ...named("fuel", {
    ...placed,
    mass: {
      label: "Mass",
      help: "Petrol weighs about three quarters of what the same volume of water does.",
    },
  }),
  ...named("ballast", placed),
  "body.mass": {
    label: "Body: everything on the springs that is not listed above",
    help: "The whole car less wheels, driver, fuel and the rest. The scales above work it out.",
  },
  "body.behindFrontAxle": {
    label: "Its distance behind the front axle",
    help: "From the scales, too.",
  },
  "body.leftOfCentre": {
    label: "Its distance left of the centre line",
    help: "From the scales, too. Below zero is right of the centre line.",
  },
  "body.height": {
    label: "Its height above the ground",
    help: "The hardest to measure. Load transfer grows in proportion to it: a tenth more height is nearly a tenth more load moved. The centre of gravity of a closed car is often near four tenths of its roof height (common practice, no source); an open low one has it near the top of the wheels.",
  },
  driveFrontShare: {
    label: "Share of the drive at the front",
    help: "0 for rear drive, 100 for front drive.",
  },
  brakeFrontShare: {
    label: "Share of the braking at the front",
    help: "From the makers of brakes and bias valve. Leave it, if you do not know.",
  },
  steeringRatio: {
    label: "Steering ratio",
    help: "Turn the steering wheel a quarter turn from straight, measure by how many degrees the road wheels turned, divide 90 by that.",
  },
  torsionStiffness: {
    label: "Chassis stiffness in torsion",
    empty: "stiff",
    help: "Leave it empty, unless somebody has measured it.",
  },
  "inertia.roll": { label: "Body in roll" },
  "inertia.pitch": { label: "Body in pitch" },
  "inertia.yaw": { label: "Whole car in yaw" },
  "air.frontDownforce": { label: "Downforce on the front axle, for each speed squared" },
  "air.rearDownforce": { label: "Downforce on the rear axle, for each speed squared" },
  "air.drag": { label: "Drag, for each speed squared" },
  "limits.leastRideHeight": { label: "Least ride height", empty: "no limit" },
  "limits.leastPressure": { label: "Least tyre pressure", empty: "no limit" },
  "limits.greatestPressure": { label: "Greatest tyre pressure", empty: "no limit" },
  "limits.leastCamber": {
    label: "Most camber",
    empty: "no limit",
    help: "The most negative angle that the rules allow, such as −3.5.",
  },
  "limits.leastMass": { label: "Least mass, with driver", empty: "no limit" },
};

/** What stands where on the page: the fields of the car file in the order in which somebody measures them. */

/** A line of the form: one field, or the same field of both axles, both sides or all wheels. */
export interface Row {
  readonly row: string;
}

/** A part of the file that a car may not have: a tick puts it in. */
export interface Optional {
  readonly part: string;
  readonly items: readonly Item[];
}

/** A list of parts that the reader can make longer and shorter. */
export interface List {
  readonly list: string;
  readonly columns: readonly string[];
}

/** How far a lever can be set: from, to, in steps of. */
export interface Reach {
  readonly reach: string;
}

export type Item = Row | Optional | List | Reach;

export interface Section {
  readonly id: string;
  readonly items: readonly Item[];
  /** Something to work with before the fields. */
  readonly tool?: "scales" | "tyre";
}

const rows = (...names: readonly string[]): Row[] => names.map((row) => ({ row }));

const placed = (part: string): Optional => ({
  part,
  items: rows(...["mass", "behindFrontAxle", "leftOfCentre", "height"].map((n) => `${part}.${n}`)),
});

const bar = (end: "front" | "rear"): Optional => ({
  part: `${end}.bar`,
  items: [
    ...rows(`${end}.bar.motionRatio`),
    { list: `${end}.bar.positions`, columns: ["rate", "armLength"] },
    ...rows(`${end}.bar.position`),
    {
      part: `${end}.bar.tube`,
      items: rows(
        ...["diameter", "innerDiameter", "length"].map((name) => `${end}.bar.tube.${name}`),
      ),
    },
  ],
});

const differential = (end: "front" | "rear"): Optional => ({
  part: `${end}.differential`,
  items: rows(...["kind", "power", "overrun"].map((name) => `${end}.differential.${name}`)),
});

const axleLevers = [
  "springRate",
  "seatTurns",
  "tyrePressure",
  "camber",
  "toe",
  "rollCentreHeight",
  "damperBump",
  "damperRebound",
];
const carLevers = ["brakeFrontShare", "driver", "passenger", "fuel", "ballast"];
const reaches = (group: string, levers: readonly string[]): Reach[] =>
  levers.map((lever) => ({ reach: `${group}.${lever}` }));

export const sections: readonly Section[] = [
  { id: "name", items: rows("name", "notes") },
  { id: "sizes", items: rows("wheelbase", "{end}.track", "{end}.rideHeight") },
  { id: "inside", items: ["driver", "passenger", "fuel", "ballast"].map(placed) },
  {
    id: "weights",
    tool: "scales",
    items: rows(
      "{end}.unsprungMass",
      "{end}.unsprungHeight",
      "body.mass",
      "body.behindFrontAxle",
      "body.leftOfCentre",
      "body.height",
    ),
  },
  {
    id: "springs",
    items: rows(
      "{end}.spring.rate",
      "{end}.spring.motionRatio",
      "{end}.spring.spacing",
      "{end}.spring.seatTravelPerTurn",
      "{end}.spring.seatTurns.{side}",
    ),
  },
  { id: "bars", items: [bar("front"), bar("rear")] },
  {
    id: "wheels",
    tool: "tyre",
    items: rows(
      "{end}.tyre.name",
      "{end}.tyre.pressure.{side}",
      "{end}.tyre.bestPressure",
      "{end}.tyre.grip",
      "{end}.tyre.loadSensitivity",
      "{end}.tyre.stiffness",
      "{end}.camber.{side}",
      "{end}.toe.{side}",
    ),
  },
  {
    id: "links",
    items: rows(
      "{end}.geometry.rollCentreHeight",
      "{end}.geometry.rollCentreMigration",
      "{end}.geometry.camberGain",
      "{end}.geometry.toeGain",
      "{end}.geometry.rollSteer",
      "{end}.geometry.bumpTravel",
      "{end}.geometry.droopTravel",
      "{end}.geometry.bumpStop",
      "{end}.geometry.droopStop",
      "{end}.geometry.complianceSteer",
    ),
  },
  {
    id: "dampers",
    items: rows("{end}.damper.bump", "{end}.damper.rebound", "{end}.damper.motionRatio"),
  },
  {
    id: "drive",
    items: [
      ...rows("driveFrontShare", "brakeFrontShare", "steeringRatio", "torsionStiffness"),
      differential("front"),
      differential("rear"),
      { part: "inertia", items: rows("inertia.roll", "inertia.pitch", "inertia.yaw") },
      { part: "air", items: rows("air.frontDownforce", "air.rearDownforce", "air.drag") },
    ],
  },
  {
    id: "limits",
    items: rows(
      "limits.leastRideHeight",
      "limits.leastPressure",
      "limits.greatestPressure",
      "limits.leastCamber",
      "limits.leastMass",
    ),
  },
  {
    id: "adjusters",
    items: [
      ...reaches("front.adjusters", axleLevers),
      ...reaches("rear.adjusters", axleLevers),
      ...reaches("adjusters", carLevers),
    ],
  },
];

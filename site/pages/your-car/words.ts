/** What the page says of itself and of each field, apart from code so that it can be translated. */
import { keyOf, type Path } from "./model/path.js";

interface FieldWords {
  readonly label: string;
  /** How to measure it, or what to do when it is not known. */
  readonly help?: string;
  /** What an empty box means. */
  readonly empty?: string;
}

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

/** Label and help of every field, by its general place. */
export const fields: Readonly<Record<string, FieldWords>> = {
  name: {
    label: "Name",
    help: "What you call it. Every chapter then says whose figures it shows.",
  },
  notes: { label: "Notes", help: "Tyres, class, who measured it and when." },
  wheelbase: {
    label: "Wheelbase",
    help: "Centre of the front wheel to centre of the rear wheel, steering straight. Measure both sides and take the mean.",
  },
  "{end}.track": {
    label: "Track",
    help: "Between the middles of the two treads. Easier to reach: from the left edge of one tread to the left edge of the other.",
  },
  "{end}.rideHeight": {
    label: "Ride height",
    help: "Ground to body where your class measures it, on level ground, with everything in the car that stands below. Without a rule, take a flat place close to the axle. Heights, camber and toe must be from one and the same session.",
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
  "{end}.unsprungMass": {
    label: "Wheels and what moves with them, both sides",
    help: "Weigh one wheel with its tyre; add hub, brake and upright, and half of each link, spring, damper and drive shaft. A beam axle counts whole. Leave it, if you cannot: being wrong by a fifth here changes little.",
  },
  "{end}.unsprungHeight": {
    label: "Height of their middle",
    help: "Ground to the centre of the hub.",
  },
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
  "{end}.spring.rate": {
    label: "Spring rate",
    help: "From the maker, or printed on the coil. You may type it with its unit, such as 350 lbf/in or 60 N/mm.",
  },
  "{end}.spring.motionRatio": {
    label: "Motion ratio: spring travel over wheel travel",
    help: "Move the wheel up a little from ride height, measure how far the hub rose and how much shorter the spring became; divide the second by the first. It counts twice in the wheel rate, so measure it well. See the caution at the head of the page.",
  },
  "{end}.spring.spacing": {
    label: "Distance between the springs, beam axle only",
    help: "Leave it empty where each wheel moves by itself.",
    empty: "independent",
  },
  "{end}.spring.seatTravelPerTurn": {
    label: "How far a spring seat rises in one turn",
    help: "The pitch of the thread: measure ten threads, divide by ten. Without adjustable seats, leave it.",
  },
  "{end}.spring.seatTurns.{side}": {
    label: "Turns of the seats since the heights were measured",
    help: "Zero if the seats stand as they stood then. Up, a taller car, is above zero.",
  },
  "{end}.bar.motionRatio": {
    label: "Motion ratio: travel of the bar’s end over wheel travel",
    help: "Measured as for the spring.",
  },
  "{end}.bar.positions": {
    label: "Positions, from soft to stiff",
    help: "For each hole or blade setting the force at each end for each unit that the ends move apart, from the maker. Or the length of the arm to that hole, if you give the size of the bar below.",
  },
  "{end}.bar.positions.{n}.rate": { label: "Rate" },
  "{end}.bar.positions.{n}.armLength": { label: "or arm length" },
  "{end}.bar.position": { label: "Position in use", help: "1 is the first, the softest." },
  "{end}.bar.tube.diameter": { label: "Outer diameter" },
  "{end}.bar.tube.innerDiameter": { label: "Bore", empty: "solid" },
  "{end}.bar.tube.length": { label: "Length between the arms" },
  "{end}.tyre.name": {
    label: "Tyre",
    help: "The nearer of the two that the workbook knows: an invented club tyre, and a road tyre from the literature. What springs, bars and heights do mostly goes the same way on any tyre; what pressure does depends on yours.",
  },
  "{end}.tyre.pressure.{side}": { label: "Pressure, warm", help: "Straight after driving." },
  "{end}.tyre.bestPressure": {
    label: "Pressure that grips best, warm",
    empty: "not known",
    help: "From its maker, or from runs on one day at several pressures. Whether more air helps turns round at this pressure: leave it empty, if you do not know it.",
  },
  "{end}.tyre.grip": {
    label: "Friction against the data of that tyre",
    empty: "1",
    help: "Above 1 grips more. Leave it empty, unless the axles wear different tyres or you have measured it.",
  },
  "{end}.tyre.loadSensitivity": {
    label: "Loss of grip with load against the data",
    empty: "1",
    help: "Leave it empty, unless your tyre has data of its own.",
  },
  "{end}.tyre.stiffness": {
    label: "Vertical stiffness against the data",
    empty: "1",
    help: "Put mass over the wheel on a scale, see how much lower the hub stands; divide what that gives by the data’s.",
  },
  "{end}.camber.{side}": {
    label: "Camber",
    help: "Against the ground, at rest. Below zero: the top leans in.",
  },
  "{end}.toe.{side}": {
    label: "Toe of each wheel",
    help: "Above zero: toe-in. From a measure across the rim: how much nearer the front edge is to the car’s centre line than the rear edge, over the rim’s diameter, times 57.3, is degrees.",
  },
  "{end}.geometry.rollCentreHeight": {
    label: "Roll centre height",
    help: "Chapter 4 draws it: lines through the arms’ joints, seen from behind, to where they meet; a line from there to the middle of the tread; where it crosses the middle of the car. On a beam axle with a lateral rod: where the rod crosses the middle. If you cannot crawl under, leave the value: chapter 4 shows what it changes.",
  },
  "{end}.geometry.rollCentreMigration": {
    label: "Its movement per travel of both wheels",
    empty: "none",
    help: "Leave it, unless you have the joints measured.",
  },
  "{end}.geometry.camberGain": {
    label: "Camber change per travel",
    empty: "none",
    help: "Read the camber at ride height and with the wheel a measured way up; divide. Below zero: the top goes in as the wheel rises.",
  },
  "{end}.geometry.toeGain": {
    label: "Toe change per travel",
    empty: "none",
    help: "The same with toe. Above zero: toes in as the wheel rises.",
  },
  "{end}.geometry.rollSteer": {
    label: "Roll steer, beam axle only",
    empty: "none",
    help: "How far the beam turns for each degree that the body rolls on it. Above zero: to the left when the right side goes down. Where the links along the car rise towards the front, it is below zero, by about their slope.",
  },
  "{end}.geometry.bumpTravel": {
    label: "Travel up to the bump stop",
    empty: "not known",
    help: "From ride height: the free length of the damper rod above the stop, over the motion ratio.",
  },
  "{end}.geometry.droopTravel": {
    label: "Travel down until the damper is fully out",
    empty: "not known",
  },
  "{end}.geometry.bumpStop": {
    label: "How fast the bump stop stiffens at the wheel",
    empty: "usual",
    help: "By how much its rate grows for each length that it is pressed, both at the wheel. Leave it, unless its maker has a curve.",
  },
  "{end}.geometry.droopStop": {
    label: "How fast the end of the travel down stiffens",
    empty: "usual",
  },
  "{end}.geometry.complianceSteer": {
    label: "How far the wheels give way to side force",
    empty: "usual",
    help: "Steer of the axle out of the turn for its side force, from bushes, rack mounts and links together. Above zero: out of the turn. Hardly anybody has measured it: leave it.",
  },
  "{end}.damper.bump": {
    label: "Damper, bump",
    help: "Force over speed on the maker’s or dynamometer’s sheet, in its slow part. Leave it, if there is no sheet: it has no say in a settled corner.",
  },
  "{end}.damper.rebound": { label: "Damper, rebound" },
  "{end}.damper.motionRatio": {
    label: "Its motion ratio",
    empty: "the spring’s",
    help: "Only where the damper is not in line with the spring.",
  },
  "{end}.differential.kind": {
    label: "Kind of differential",
    help: "Open lets each wheel turn as it likes, with the same torque on both; a locked one turns them as one.",
  },
  "{end}.differential.power": {
    label: "Lock under power, limited-slip only",
    empty: "none",
    help: "By what share of the push through it the torques of its wheels may differ. From its maker.",
  },
  "{end}.differential.overrun": {
    label: "Lock on the overrun, limited-slip only",
    empty: "none",
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

/** How each lever is called. */
export const levers: Readonly<Record<string, string>> = {
  springRate: "Spring rate",
  seatTurns: "Spring seats",
  tyrePressure: "Tyre pressure",
  camber: "Camber",
  toe: "Toe",
  rollCentreHeight: "Roll centre height",
  damperBump: "Damper, bump",
  damperRebound: "Damper, rebound",
  brakeFrontShare: "Front brake share",
  driver: "Driver’s mass",
  passenger: "Passenger’s mass",
  fuel: "Fuel",
  ballast: "Ballast",
};

export const reachEnds: Readonly<Record<string, string>> = {
  min: "from",
  max: "to",
  step: "in steps of",
};

/** Title and opening of every section. */
export const sectionWords: Readonly<Record<string, { title: string; opening?: string }>> = {
  name: { title: "Name" },
  sizes: {
    title: "Sizes, with a tape measure",
    opening:
      "On level ground, tyres at driving pressure, with driver, fuel and whatever else you name below in the car.",
  },
  inside: {
    title: "Who and what is in it",
    opening:
      "As the car stood when it was measured and weighed. Distances to the nearest thumb’s breadth will do.",
  },
  weights: {
    title: "Weights, with four scales",
    opening:
      "Scales level with each other, tyres at driving pressure, driver in, one link of each bar unhooked; roll the car on and let it settle.",
  },
  springs: { title: "Springs" },
  bars: { title: "Anti-roll bars" },
  wheels: { title: "Tyres and alignment" },
  links: {
    title: "How the links guide the wheels",
    opening:
      "The least known numbers of most cars. Leave at first what you cannot measure, and look in chapter 4 at what they do.",
  },
  dampers: { title: "Dampers" },
  drive: { title: "Drive, brakes, steering, chassis, air" },
  limits: { title: "What your class allows", opening: "Leave empty what your rules do not say." },
  adjusters: {
    title: "What you can adjust, how far and how finely",
    opening:
      "Only what is ticked here is ever proposed as a change. Bars have their positions and need no entry.",
  },
};

/** What the tick of each optional part says. */
export const partWords: Readonly<Record<string, string>> = {
  driver: "A driver",
  passenger: "A passenger or instructor",
  fuel: "Fuel",
  ballast: "Ballast",
  "front.bar": "A bar at the front",
  "rear.bar": "A bar at the rear",
  "front.bar.tube": "Its size, for positions that give an arm length",
  "rear.bar.tube": "Its size, for positions that give an arm length",
  "front.differential": "A front differential whose kind is known; else taken as open",
  "rear.differential": "A rear differential whose kind is known; else taken as open",
  inertia: "Moments of inertia, measured; else they are estimated",
  air: "Forces of the air",
};

const endOf = (path: Path) => /(?:^|\.)(front|rear)\b/.exec(path)?.[1];
const sideOf = (path: Path) => /\.(left|right)\b/.exec(path)?.[1];

/** Which of several alike places this is, such as "front left". */
export const whereOf = (path: Path): string =>
  [endOf(path), sideOf(path)].filter((word) => word !== undefined).join(" ");

const inside: Readonly<Record<string, string>> = {
  driver: "Driver",
  passenger: "Passenger",
  fuel: "Fuel",
  ballast: "Ballast",
};

/** The name of a place in full, such as "Track, front". */
export function nameOf(path: Path): string {
  const [, lever = "", end = ""] = /adjusters\.(\w+)(?:\.(\w+))?$/.exec(path) ?? [];
  const label = lever
    ? (levers[lever] ?? lever)
    : (fields[keyOf(path)]?.label ?? partWords[path] ?? path);
  const within = inside[path.split(".")[0] ?? ""] ?? "";
  const position = /positions\.(\d+)/.exec(path)?.[1];
  const parts = [
    within,
    label,
    reachEnds[end] ?? "",
    position === undefined ? "" : words.position(Number(position) + 1),
    whereOf(path),
  ];
  return parts.filter((part) => part !== "").join(", ");
}

export const words = {
  title: "Your car",
  description:
    "Enter your own car from tape measure, scales and data sheets, and the whole course is about it",
  lead: "Every figure, number and exercise of the course can be worked out for your car. Start from a copy of the workbook’s own, put in what you can measure, and leave the rest: the page says which values are still the copy’s. Any unit will do if you type it with the number, such as 94.5 in, 2400 mm or 29 psi.",
  onDevice:
    "What you type stays on this device. Save a car as a file to take it elsewhere or to hand it on.",
  caution:
    "Motion ratios and travels are measured with a wheel off the ground and a spring out of the way. Firm level ground, wheels chocked, the car on stands made for its weight, never on a jack alone; follow the maker’s manual, and have a workshop do what you are not sure of.",
  cautionHead: "Caution.",
  withoutScript:
    "To enter and keep a car, this page needs JavaScript. Below is what it asks for and how to measure it, to take along to the car.",
  measure: "What to measure, and how",
  leftOut: "may be left out",

  cars: "Your cars",
  courseShows: "The course shows",
  own: "the workbook’s own car",
  inFront: "in front",
  startCopy: (car: string) => `Start from a copy of the ${car}`,
  open: "Open car files",
  openHint: "Files saved here, or written by hand after the description of the car file.",
  edit: "Change",
  editing: "Open below",
  asFile: "Save as file",
  copy: "Copy",
  remove: "Delete",
  undo: "Undo",
  unsaved: "unsaved changes",
  notSaved: "not saved yet",
  nowShows: (car: string) => `The course now shows ${car}.`,
  removed: (car: string) => `${car} is deleted.`,
  nameOfCopy: (car: string) => `Copy of ${car}`,
  newName: "My car",
  kept: (car: string) => `${car} is saved.`,
  keptAndShown: (car: string) => `${car} is saved, and the course shows it.`,
  notKept:
    "This device keeps nothing, or is full: save the car as a file before you close the page.",
  widened: (lever: string, value: string) =>
    `${lever} is set to ${value}, so its range of adjustment now reaches that far.`,
  cameIn: (car: string, file: string) => `${car} came in from ${file}.`,
  renamed: (before: string, now: string) =>
    `There was a ${before} already, so it is called ${now}.`,
  faulty: (file: string) => `${file} cannot be taken as it is:`,
  mend: "Open it and mend it here",
  mendNote: "What it lacks is taken from the workbook’s own car and marked.",
  close: "Close",
  unreadable: (file: string) => `${file} could not be read.`,

  save: "Save",
  saveAndShow: "Save, and let the course show it",
  discard: "Drop these changes",
  discarded: "The changes are dropped.",
  draftKept: "Kept on this device as you type.",
  faults: (count: number) =>
    count === 1 ? "One value needs a look" : `${count} values need a look`,
  cannotSave: "Not saved yet: see what needs a look.",
  asDemo: (count: number, car: string) =>
    count === 1 ? `1 value still the ${car}’s` : `${count} values still the ${car}’s`,
  noneAsDemo: "Every value is your own.",
  stillDemo: (car: string) => `${car}’s`,
  confirm: "These are my car’s values too",
  how: "How?",
  howNamed: (name: string) => `How? ${name}`,
  position: (number: number) => `position ${number}`,
  addPosition: "One position more",
  dropPosition: (number: number) => `Take out position ${number}`,
  linked: (end: string) =>
    `The file of this car has the joints of its ${end} links. Roll centre, camber and toe change and the roll steer of a beam follow from them and cannot be typed.`,
  unlink: (end: string) => `Take the ${end} joints out and type the numbers`,

  nameless: "Name is empty: give the car a name.",
  nameTooLong: (most: number) => `Name takes at most ${most} characters.`,
  nameOfDemo: (name: string) => `${name} is the workbook’s own car: choose another name.`,
  nameTaken: (name: string) => `You have a ${name} already: choose another name.`,
  takes: (name: string, range: string) => `${name} takes ${range}`,
  takesWhole: (name: string, range: string) => `${name} takes a whole number, ${range}`,
  not: (takes: string, given: string) => `${takes}, not ${given}.`,
  left: (takes: string) => `${takes}; it is empty.`,

  scalesTitle: "Work the body out from four scale readings",
  scales: "Scale reading",
  scalesUse: "Put it in",
  scalesIncomplete:
    "Four readings are needed, and sound values for sizes, wheels and what is in the car.",
  scalesOff: (range: string) =>
    `That leaves the body outside its range, ${range}: see the readings, and what you say is in the car.`,
  scalesDone: (mass: string, front: string, left: string, cross: string) =>
    `Body put in. Together ${mass}, ${front} of it in front, ${left} on the left, cross weight ${cross}.`,
  scalesCross:
    "The car file fits total, front and left share; it takes both axles to be equally one-sided when the seats are at zero, so a cross weight of your own belongs into the turns of the seats.",

  summary: "What it comes to",
  stale: "Shown for the last values that were sound.",
  none: "Shown when all values are sound.",
  corners: "On the scales, at rest",
  total: "Together",
  frontShare: "Front",
  leftShare: "Left",
  cross: "Cross weight",
  centre: "Centre of gravity, height",
  axles: "Stiffness",
  front: "front",
  rear: "rear",
  wheelRate: "Wheel rate",
  rideRate: "With the tyre",
  bounce: "Bounce",
  barInRoll: "Bar in roll",
  inRoll: "Axle in roll",
  turn: "In a turn",
  rollGradient: "Roll",
  transferShare: "Front share of transfer",
  against: (share: string) => `against ${share} of the weight`,
  phase: {
    "braking in": "Braking in",
    "turn-in": "Turn-in",
    middle: "Middle",
    "power on": "Power on",
  },
  limit: (limit: string) => `up to ${limit}`,
  first: {
    front: (more: string) => `the front gives up first; the rear has ${more} left`,
    rear: (more: string) => `the rear gives up first; the front has ${more} left`,
    both: () => "both ends give up together",
  },
  tips: "it tips over before its tyres let go",
  balance: (speed: string) => `Limit and balance at ${speed}`,
  sure: {
    heading: "How sure",
    columns: { phase: "part", limit: "up to", margin: "margin", verdict: "which end" },
    help: (unit: string) =>
      `Nine in ten cars that differ from this one as far as its numbers may be off lie between these, in ${unit}; a margin above 0 means that the front gives up first. Sure: 95 % or more agree on which end; likely: 75 % or more.`,
    working: "Working out how sure this is …",
    progress: (count: number, of: number) => `From ${count} of ${of} sampled cars.`,
    range: (low: string, high: string) => `${low} to ${high}`,
    sure: "sure",
    likely: "likely",
    "cannot say": "cannot say",
    waiting: "…",
    doubt: (name: string, share: number) => `${name} (about ${share} %)`,
    widest: (names: string) =>
      `What to measure better first, with its share of the doubt: ${names}.`,
  },
  margins: "Class limits",
  noLimits: "None given.",
  inside: (margin: string) => `${margin} to spare`,
  outside: (margin: string) => `outside by ${margin}`,
  least: "at least",
  greatest: "at most",
  cannotTell: (_margin: string) => "too close to tell from a display like this",
  cannotStand: (reason: string) => `Not worked out: ${reason}`,
} as const;

import type { FieldWords } from "./field-words.js";

/** Label and help of every field of an axle, by its general place. */
export const axleFields: Readonly<Record<string, FieldWords>> = {
  "{end}.track": {
    label: "Track",
    help: "Between the middles of the two treads. Easier to reach: from the left edge of one tread to the left edge of the other.",
  },
  "{end}.rideHeight": {
    label: "Ride height",
    help: "Ground to body where your class measures it, on level ground, with everything in the car that stands below. Without a rule, take a flat place close to the axle. Heights, camber and toe must be from one and the same session.",
  },
  "{end}.unsprungMass": {
    label: "Wheels and what moves with them, both sides",
    help: "Weigh one wheel with its tyre; add hub, brake and upright, and half of each link, spring, damper and drive shaft. A beam axle counts whole. Leave it, if you cannot: being wrong by a fifth here changes little.",
  },
  "{end}.unsprungHeight": {
    label: "Height of their middle",
    help: "Ground to the centre of the hub.",
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
    help: "The nearer of the two that the workbook knows: an invented club tyre, and a road tyre from the literature. What springs, bars and heights do mostly goes the same way on any tyre; what pressure does depends on yours. A tyre that was measured is taken in above, and is then “own”.",
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
};

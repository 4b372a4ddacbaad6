import type { FrontViewDoubleWishbone } from "../../lib/linkage/front-view.js";
import type { FrontViewPoint } from "../../lib/linkage/front-view-vector.js";
import type { Axles, Sides, Wheels } from "../../lib/load/wheels.js";
import { riseOfPatchPerLowerAngle } from "./free-arms-car.js";
import { type AtRest, type Mechanics, options } from "./mechanics.js";

/** What every axle on tyres has. */
interface OnTyres {
  /** m */
  readonly track: number;
  /** N/m of each tyre */
  readonly tyreStiffness: number;
  /** share of the side force of both tyres that the right one makes, 0–1 */
  readonly rightShare: number;
  /** kg of both wheels or of the beam */
  readonly unsprungMass: number;
  /** m */
  readonly unsprungHeight: number;
}

/** Two wheels on arms, with springs at the wheels that press along the body. */
export interface ArmsOnTyres extends OnTyres {
  readonly kind: "arms";
  /** left side */
  readonly linkage: FrontViewDoubleWishbone;
  /** N/m at the wheel */
  readonly wheelRate: number;
  /** N·m/rad */
  readonly barRollStiffness: number;
  /** m that each spring is longer than on a level car */
  readonly seats: Sides<number>;
}

/** A beam, hinged to the body at its roll centre. */
export interface BeamOnTyres extends OnTyres {
  readonly kind: "beam";
  /** N·m/rad of springs and bar */
  readonly rollStiffness: number;
  /** m */
  readonly rollCentreHeight: number;
}

export type AxleOnTyres = ArmsOnTyres | BeamOnTyres;

/** A car as stiff bodies on four tyres that are springs and only push. */
export interface CarOnTyres extends Axles<AxleOnTyres> {
  readonly wheelbase: number;
  readonly sprungMass: number;
  readonly sprungHeight: number;
  readonly sprungFrontShare: number;
}

const GRAVITY = 9.80665;
const STILL = 1e-5; // m/s or rad/s; a car with a wheel up comes to rest slowly
const FAR_ABOVE = 100; // m: the spring's upper end, so that it always acts along the body's z
const PLATE = 5; // kg of what a tyre stands on, held against its own weight

/** kg of the body on both wheels of an axle. */
export function sprungOn(car: CarOnTyres, end: "front" | "rear"): number {
  return car.sprungMass * (end === "front" ? car.sprungFrontShare : 1 - car.sprungFrontShare);
}

/** How far a tyre is pressed together on a level car, m. */
export function pressedAtRest(car: CarOnTyres, end: "front" | "rear"): number {
  const { unsprungMass, tyreStiffness } = car[end];
  return ((sprungOn(car, end) + unsprungMass) * GRAVITY) / 2 / tyreStiffness;
}

/**
 * The car as a model of the engine. It measures how the body is turned (a quaternion).
 */
export function modelOnTyres(car: CarOnTyres, lateralAcceleration: number): string {
  const [front, rear] = [axleModel(car, "front"), axleModel(car, "rear")];
  const plates = ["front1", "front-1", "rear1", "rear-1"];
  return `<mujoco>${options(lateralAcceleration, GRAVITY)}
  <worldbody>
    <body name="body"><freejoint/>
      <inertial pos="0 0 ${car.sprungHeight}" mass="${car.sprungMass}" diaginertia="400 1500 1600"/>
      ${front.bodies}${rear.bodies}
    </body>
    ${front.plates}${rear.plates}
  </worldbody>
  <tendon>${front.springs}${rear.springs}${heldAlong(plates)}</tendon>
  <equality>${front.joins}${rear.joins}</equality>
  <sensor><framequat objtype="xbody" objname="body"/></sensor></mujoco>`;
}

interface Parts {
  readonly bodies: string;
  readonly plates: string;
  readonly springs: string;
  readonly joins: string;
}

function axleModel(car: CarOnTyres, end: "front" | "rear"): Parts {
  const axle = car[end];
  const share = car.sprungFrontShare;
  const x = end === "front" ? car.wheelbase * (1 - share) : -car.wheelbase * share;
  const held = axle.kind === "arms" ? armsModel(car, axle, end, x) : beamModel(axle, end, x);
  const free = pressedAtRest(car, end);
  const tyres = ([1, -1] as const).map((side) => tyreModel(axle, end, side, x, free));
  return {
    bodies: held.bodies,
    plates: tyres.map(({ plate }) => plate).join(""),
    springs: held.springs + tyres.map(({ spring }) => spring).join(""),
    joins: held.joins + sideForceModel(axle, end),
  };
}

/** All plates together stay where they are along the car, and none of them holds it against yaw. */
function heldAlong(plates: readonly string[]): string {
  const joints = plates.map((name) => `<joint joint="${name}ahead" coef="1"/>`);
  return `<fixed stiffness="10000" damping="6000" springlength="0">${joints.join("")}</fixed>`;
}

/** A plate on the road that slides, and the spring of the tyre between its foot and the wheel. */
function tyreModel(axle: AxleOnTyres, end: string, side: 1 | -1, x: number, pressed: number) {
  const name = `${end}${side}`;
  return {
    plate: `
      <body name="${name}plate" pos="${x} ${(side * axle.track) / 2} 0" gravcomp="1">
        <joint name="${name}ahead" type="slide" axis="1 0 0"/>
        <joint name="${name}aside" type="slide" axis="0 1 0"/>
        <inertial pos="0 0 0" mass="${PLATE}" diaginertia="1 1 1"/>
      </body>`,
    spring: `
      <fixed stiffness="${axle.tyreStiffness}" springlength="-100 ${-pressed}">
        <joint joint="${name}squash" coef="1"/>
      </fixed>`,
  };
}

/** The foot of a tyre: it slides in the plane of its wheel, and side force acts on it at the road. */
function footModel({ tyreStiffness }: AxleOnTyres, name: string, pos: string): string {
  return `
    <body name="${name}foot" pos="${pos}" gravcomp="1">
      <joint name="${name}squash" type="slide" axis="0 0 1" damping="${tyreStiffness / 100}"/>
      <inertial pos="0 0 0" mass="10" diaginertia="1 1 1"/>
    </body>`;
}

/** What holds a foot on its plate: three rows of force, the third one the load. */
function footJoin(name: string): string {
  return `<connect body1="${name}foot" body2="${name}plate" anchor="0 0 0"/>`;
}

/** Both plates move apart or together only, in a ratio that shares the side force as given. */
function sideForceModel({ rightShare }: AxleOnTyres, end: string): string {
  const ratio = (1 - rightShare) / rightShare;
  return `<joint joint1="${end}-1aside" joint2="${end}1aside" polycoef="0 ${-ratio} 0 0 0"/>`;
}

function beamModel(axle: BeamOnTyres, end: string, x: number) {
  const { track, rollCentreHeight, rollStiffness, unsprungMass, unsprungHeight } = axle;
  const at = `pos="${x} 0 ${rollCentreHeight}"`;
  const foot = (side: 1 | -1) => footModel(axle, `${end}${side}`, `${x} ${(side * track) / 2} 0`);
  return {
    bodies: `
      <body name="${end}beam">
        <joint type="hinge" ${at} axis="1 0 0" stiffness="${rollStiffness}" damping="${rollStiffness / 15}"/>
        <inertial pos="${x} 0 ${unsprungHeight}" mass="${unsprungMass}" diaginertia="20 4 20"/>
        ${foot(1)}${foot(-1)}
      </body>`,
    springs: "",
    joins: footJoin(`${end}1`) + footJoin(`${end}-1`),
  };
}

function armsModel(car: CarOnTyres, axle: ArmsOnTyres, end: "front" | "rear", x: number) {
  const load = (sprungOn(car, end) * GRAVITY) / 2;
  const corners = ([1, -1] as const).map((side) => cornerModel(axle, end, x, side, load));
  const all = (part: "arms" | "spring" | "joins") => corners.map((one) => one[part]).join("");
  return { bodies: all("arms"), springs: all("spring") + barModel(axle, end), joins: all("joins") };
}

function cornerModel(axle: ArmsOnTyres, end: string, x: number, side: 1 | -1, load: number) {
  const { upperInner, upperOuter, lowerInner, lowerOuter, contactPatch } = axle.linkage;
  const name = `${end}${side}`;
  const at = ({ y, z }: FrontViewPoint) => `${x} ${side * y} ${z}`;
  const from = (a: FrontViewPoint, b: FrontViewPoint) => `0 ${side * (b.y - a.y)} ${b.z - a.z}`;
  const light = `<inertial pos="0 0 0" mass="0.02" diaginertia="0.1 0.1 0.1"/>`;
  const hinge = (joint: string) => `<joint name="${name}${joint}" type="hinge" axis="1 0 0"/>`;
  const wheel = { y: contactPatch.y, z: axle.unsprungHeight };
  const { wheelRate, seats } = axle;
  const length = FAR_ABOVE + load / wheelRate + (side === 1 ? seats.left : seats.right);
  return {
    arms: `
      <body pos="${at(lowerInner)}">${hinge("lower")}${light}
        <body name="${name}upright" pos="${from(lowerInner, lowerOuter)}">${hinge("upright")}
          <inertial pos="${from(lowerOuter, wheel)}" mass="${axle.unsprungMass / 2}" diaginertia="1 1 1"/>
          <site name="${name}patch" pos="${from(lowerOuter, contactPatch)}"/>
          ${footModel(axle, name, from(lowerOuter, contactPatch))}
        </body>
      </body>
      <body name="${name}upper" pos="${at(upperInner)}">${hinge("upper")}${light}</body>
      <site name="${name}mount" pos="${at({ y: contactPatch.y, z: FAR_ABOVE })}"/>`,
    spring: `
      <spatial stiffness="${wheelRate}" damping="${wheelRate / 10}" springlength="${length}">
        <site site="${name}mount"/><site site="${name}patch"/>
      </spatial>`,
    joins: `
      <connect body1="${name}upper" body2="${name}upright" anchor="${from(upperInner, upperOuter)}"/>
      ${footJoin(name)}`,
  };
}

/** The bar: it resists the difference of both lower arms' angles. */
function barModel({ linkage, barRollStiffness, track }: ArmsOnTyres, end: string): string {
  const rise = riseOfPatchPerLowerAngle(linkage);
  return `
    <fixed stiffness="${barRollStiffness / track ** 2}" springlength="0">
      <joint joint="${end}1lower" coef="${rise}"/><joint joint="${end}-1lower" coef="${rise}"/>
    </fixed>`;
}

/** How a car stands: its body's roll in rad, right side down, and the load on each tyre, N. */
export interface Standing extends Wheels<number> {
  readonly roll: number;
}

/** How a car stands in a steady left turn, m/s², by general mechanics. */
export function standing(
  mechanics: Mechanics,
  car: CarOnTyres,
  lateralAcceleration: number,
): Standing {
  return standingOf(car, mechanics.atRest(modelOnTyres(car, lateralAcceleration), 60, STILL));
}

/** What the engine says of the car: forces of its constraints and the reading of its sensor. */
export function standingOf(car: CarOnTyres, { forces, readings }: AtRest): Standing {
  const [w = 1, x = 0, y = 0, z = 0] = readings;
  const rowsInFront = car.front.kind === "arms" ? 13 : 7;
  const load = (row: number) => Math.max(0, forces[row] ?? Number.NaN);
  const loads = ({ kind }: AxleOnTyres, from: number) =>
    kind === "arms"
      ? { left: load(from + 5), right: load(from + 11) } // after three rows of the upper arm each
      : { left: load(from + 2), right: load(from + 5) };
  return {
    roll: Math.atan2(2 * (w * x + y * z), 1 - 2 * (x * x + y * y)),
    front: loads(car.front, 0),
    rear: loads(car.rear, rowsInFront),
  };
}

const TURNING_IN = 5; // s
const SETTLED = 2e-5; // rad in a second

/** How a car stands at the end of a turn that is entered slowly, or as both left tyres are up. */
export function standingSlowly(
  mechanics: Mechanics,
  car: CarOnTyres,
  lateralAcceleration: number,
): Standing {
  let [time, before, seen] = [0, 0, 0];
  let state: Standing | undefined;
  mechanics.follow(
    modelOnTyres(car, 0),
    (seconds) => {
      time = seconds;
      return [0, -lateralAcceleration * Math.min(1, time / TURNING_IN), -GRAVITY];
    },
    (now) => {
      state = standingOf(car, now);
      if (time > 1 && tips(state)) return true;
      if (time < TURNING_IN || time - seen < 1) return false;
      const still = Math.abs(state.roll - before) < SETTLED;
      [before, seen] = [state.roll, time];
      return still;
    },
  );
  if (state === undefined) throw new Error("The engine said nothing.");
  return state;
}

/** Both left tyres are off the ground. */
function tips({ front, rear }: Standing): boolean {
  return front.left === 0 && rear.left === 0;
}

/**
 * Whether a car tips over in a turn that is entered slowly. All side force is at its right tyres, as
 * it is there where nothing is left on the others.
 */
export function tipsIn(
  mechanics: Mechanics,
  car: CarOnTyres,
  lateralAcceleration: number,
): boolean {
  const right = (axle: AxleOnTyres): AxleOnTyres => ({ ...axle, rightShare: 1 });
  const onRight = { ...car, front: right(car.front), rear: right(car.rear) };
  return tips(standingSlowly(mechanics, onRight, lateralAcceleration));
}

import type { FrontViewDoubleWishbone } from "../../lib/linkage/front-view.js";
import type { FrontViewPoint } from "../../lib/linkage/front-view-vector.js";
import type { Axles } from "../../lib/load/wheels.js";
import { type Mechanics, options } from "./mechanics.js";

/** An axle of two independent wheels on arms; nothing says where its roll centre is. */
export interface ArmedAxle {
  /** Left side, in the design position. */
  readonly linkage: FrontViewDoubleWishbone;
  /** N/m at the wheel. */
  readonly wheelRate: number;
  /** N·m/rad. */
  readonly barRollStiffness: number;
  /** kg of both wheels, at the wheel centres. */
  readonly unsprungMass: number;
}

/** A car on four independent wheels. */
export interface ArmedCar extends Axles<ArmedAxle> {
  readonly wheelbase: number;
  readonly sprungMass: number;
  readonly sprungHeight: number;
  readonly sprungFrontShare: number;
}

const GRAVITY = 9.80665;
const FAR_ABOVE = 100; // m: the spring's upper end, so that it always acts along the body's z
const ROWS_A_WHEEL = 6; // three where the upper arm meets the upright, three on the road

/**
 * Load transfer of each axle by general mechanics, N: body, arms and uprights as stiff bodies.
 *
 * Both wheels of an axle stand on plates that slide across the car in opposite directions only:
 * they find their own track, and share the side force evenly. Along the car the plates are free,
 * so that no axle holds the car against yaw by forces along it.
 */
export function armedTransfers(
  mechanics: Mechanics,
  car: ArmedCar,
  lateralAcceleration: number,
): Axles<number> {
  const { forces: rows } = mechanics.atRest(armedModel(car, lateralAcceleration), 20);
  const load = (wheel: number) => rows[ROWS_A_WHEEL * wheel + 5] ?? Number.NaN;
  return { front: (load(1) - load(0)) / 2, rear: (load(3) - load(2)) / 2 };
}

function armedModel(car: ArmedCar, lateralAcceleration: number): string {
  const front = axleModel(car, "front");
  const rear = axleModel(car, "rear");
  return `<mujoco>${options(lateralAcceleration, GRAVITY)}
  <worldbody>
    <body name="body"><freejoint/>
      <inertial pos="0 0 ${car.sprungHeight}" mass="${car.sprungMass}" diaginertia="400 1500 1600"/>
      ${front.arms}${rear.arms}
    </body>
    ${front.plates}${rear.plates}
  </worldbody>
  <tendon>${front.springs}${rear.springs}</tendon>
  <equality>${front.joins}${rear.joins}${front.evenSplit}${rear.evenSplit}</equality></mujoco>`;
}

function axleModel(car: ArmedCar, end: "front" | "rear") {
  const axle = car[end];
  const share = end === "front" ? car.sprungFrontShare : 1 - car.sprungFrontShare;
  const x =
    end === "front"
      ? car.wheelbase * (1 - car.sprungFrontShare)
      : -car.wheelbase * car.sprungFrontShare;
  const load = (car.sprungMass * share * GRAVITY) / 2;
  const corners = ([1, -1] as const).map((side) => cornerModel(axle, end, x, side, load));
  const all = (part: "arms" | "plate" | "spring" | "joins") =>
    corners.map((one) => one[part]).join("");
  return {
    arms: all("arms"),
    plates: all("plate"),
    joins: all("joins"),
    springs: all("spring") + barModel(axle, end),
    evenSplit: `<joint joint1="${end}1plate" joint2="${end}-1plate" polycoef="0 -1 0 0 0"/>`,
  };
}

function cornerModel(axle: ArmedAxle, end: string, x: number, side: 1 | -1, load: number) {
  const { upperInner, upperOuter, lowerInner, lowerOuter, contactPatch, wheelCentre } =
    axle.linkage;
  const name = `${end}${side}`;
  const at = ({ y, z }: FrontViewPoint) => `${x} ${side * y} ${z}`;
  const from = (a: FrontViewPoint, b: FrontViewPoint) => `0 ${side * (b.y - a.y)} ${b.z - a.z}`;
  const light = `<inertial pos="0 0 0" mass="0.02" diaginertia="0.1 0.1 0.1"/>`;
  const heavy = `<inertial pos="0 0 0" mass="50" diaginertia="1 1 1"/>`;
  const hinge = (joint: string) => `<joint name="${name}${joint}" type="hinge" axis="1 0 0"/>`;
  const stiffness = axle.wheelRate;
  return {
    arms: `
      <body pos="${at(lowerInner)}">${hinge("lower")}${light}
        <body name="${name}upright" pos="${from(lowerInner, lowerOuter)}">${hinge("upright")}
          <inertial pos="${from(lowerOuter, wheelCentre)}" mass="${axle.unsprungMass / 2}" diaginertia="1 1 1"/>
          <site name="${name}patch" pos="${from(lowerOuter, contactPatch)}"/>
        </body>
      </body>
      <body name="${name}upper" pos="${at(upperInner)}">${hinge("upper")}${light}</body>
      <site name="${name}mount" pos="${at({ y: contactPatch.y, z: FAR_ABOVE })}"/>`,
    plate: `
      <body name="${name}plate" pos="${at(contactPatch)}">
        <joint type="slide" axis="1 0 0" stiffness="10" damping="100"/>
        <joint name="${name}plate" type="slide" axis="0 1 0"/>${heavy}
      </body>`,
    spring: `
      <spatial stiffness="${stiffness}" damping="${stiffness / 10}" springlength="${FAR_ABOVE + load / stiffness}">
        <site site="${name}mount"/><site site="${name}patch"/>
      </spatial>`,
    joins: `
      <connect body1="${name}upper" body2="${name}upright" anchor="${from(upperInner, upperOuter)}"/>
      <connect body1="${name}upright" body2="${name}plate" anchor="${from(lowerOuter, contactPatch)}"/>`,
  };
}

/** The bar: it resists the difference of both lower arms' angles. */
function barModel({ linkage, barRollStiffness }: ArmedAxle, end: string): string {
  const risePerAngle = riseOfPatchPerLowerAngle(linkage);
  const track = 2 * linkage.contactPatch.y;
  return `
    <fixed stiffness="${barRollStiffness / track ** 2}" springlength="0">
      <joint joint="${end}1lower" coef="${risePerAngle}"/><joint joint="${end}-1lower" coef="${risePerAngle}"/>
    </fixed>`;
}

/** Rise of the patch for each radian of the lower arm, m/rad, from lines drawn by hand. */
export function riseOfPatchPerLowerAngle(linkage: FrontViewDoubleWishbone): number {
  const { upperInner, upperOuter, lowerInner, lowerOuter, contactPatch } = linkage;
  const way = (a: FrontViewPoint, b: FrontViewPoint) => ({ y: b.y - a.y, z: b.z - a.z });
  const [u, l, gap] = [
    way(upperInner, upperOuter),
    way(lowerInner, lowerOuter),
    way(lowerInner, upperInner),
  ];
  const along = (gap.y * u.z - gap.z * u.y) / (l.y * u.z - l.z * u.y); // to where the lines meet
  const centre = lowerInner.y + along * l.y;
  return (l.y * (contactPatch.y - centre)) / (lowerOuter.y - centre);
}

import type { SpaceAxle } from "../linkage/axle-in-space.js";
import type { Axles, Sides } from "../load/wheels.js";
import type { TyreData } from "../tyre/tyre-data.js";
import type { ClassRule } from "./class-rules.js";
import type { AxleLever, CarLever } from "./lever.js";

export type { AxleLever, CarLever };

/**
 * One car, as its file describes it: what is measured, what is set, and what may be changed.
 *
 * SI units. Heights are above level ground, for the car at rest with everything the file puts in
 * it. Positions count backwards from the front axle and to the left of the centre line.
 */
export interface Car extends Axles<Axle> {
  readonly name: string;
  readonly notes?: string;
  readonly wheelbase: number;
  /** The sprung mass without driver, passenger, fuel and ballast. */
  readonly body: PlacedMass;
  readonly driver?: PlacedMass;
  readonly passenger?: PlacedMass;
  readonly fuel?: PlacedMass;
  readonly ballast?: PlacedMass;
  /** kg·m², of the whole car about its centre of gravity; estimated when left out. */
  readonly inertia?: { readonly roll: number; readonly pitch: number; readonly yaw: number };
  /** N·m/rad of the chassis between the axles; left out: stiff. */
  readonly torsionStiffness?: number;
  /** Angle of the steering wheel over angle of the road wheels. */
  readonly steeringRatio: number;
  /** Share of the braking force made by the front axle, 0–1. */
  readonly brakeFrontShare: number;
  /** Share of the driving force made by the front axle: 0 rear drive, 1 front drive. */
  readonly driveFrontShare: number;
  readonly air?: Air;
  readonly limits?: ClassLimits;
  /** The rules of the class that it runs in, as its organiser keeps them. */
  readonly classRules?: readonly ClassRule[];
  readonly adjusters?: Partial<Record<CarLever, Adjuster>>;
  /** How sure its numbers are, by their place in the file, such as "front.spring.rate". */
  readonly known?: Readonly<Record<string, Certainty>>;
}

/** Where a number of the file comes from, and how far it may be off. */
export interface Certainty {
  readonly how: Source;
  /** One standard deviation in SI, at least 0; left out: what is usual for such a number. */
  readonly spread?: number;
  /** Day on which it was measured or looked up, YYYY-MM-DD. */
  readonly when?: string;
  /** Who measured it or looked it up. */
  readonly by?: string;
}

/** How somebody came by a number. */
export type Source = "measured" | "maker" | "estimated" | "copied";

/** A mass and where it is. */
export interface PlacedMass {
  /** kg */
  readonly mass: number;
  /** m */
  readonly behindFrontAxle: number;
  /** m; below zero is right of the centre line */
  readonly leftOfCentre: number;
  /** m above the ground */
  readonly height: number;
}

/** One axle: both sides alike but for what is set by hand at each wheel. */
export interface Axle {
  /** m between the tyre centres */
  readonly track: number;
  /** m from the ground to the body, measured at this axle where the class rules measure it */
  readonly rideHeight: number;
  /** kg of both wheels and what moves with them */
  readonly unsprungMass: number;
  /** m above the ground */
  readonly unsprungHeight: number;
  readonly spring: Spring;
  /** Left out: no bar. */
  readonly bar?: AntiRollBar;
  readonly damper: Damper;
  /** Left out: not known; figures then take it as open. */
  readonly differential?: Differential;
  readonly geometry: AxleGeometry;
  /** The joints of the links, at rest, x forward of this axle; `geometry` follows from them. */
  readonly linkage?: SpaceAxle;
  /** rad; below zero: top of the wheel towards the car */
  readonly camber: Sides<number>;
  /** rad for each wheel; above zero: toe-in */
  readonly toe: Sides<number>;
  readonly tyre: AxleTyre;
  readonly adjusters?: Partial<Record<AxleLever, Adjuster>>;
}

/** The springs of an axle and their seats. */
export interface Spring {
  /** N/m of each spring */
  readonly rate: number;
  /** Spring travel over wheel travel. */
  readonly motionRatio: number;
  /** m between the springs of a beam axle; left out: independent wheels */
  readonly spacing?: number;
  /** Turns of each spring seat from where it was when the car was measured; up is taller. */
  readonly seatTurns: Sides<number>;
  /** m that a seat rises in one turn */
  readonly seatTravelPerTurn: number;
}

/** An anti-roll bar and the positions its links can take. */
export interface AntiRollBar {
  /** Travel of the bar's end over wheel travel. */
  readonly motionRatio: number;
  /** From soft to stiff. */
  readonly positions: readonly BarPosition[];
  /** Which position is in use: 1 is the first. */
  readonly position: number;
  /** The straight part, for positions that give an arm length. */
  readonly tube?: {
    readonly diameter: number;
    readonly innerDiameter?: number;
    readonly length: number;
  };
}

/** One position of a bar: its rate, or the arm length from which it follows. */
export interface BarPosition {
  /** N/m at each end for each metre that the ends move apart; 0 for a bar taken off */
  readonly rate?: number;
  /** m */
  readonly armLength?: number;
}

/** The dampers of an axle. */
export interface Damper {
  /** N·s/m of each damper */
  readonly bump: number;
  /** N·s/m of each damper */
  readonly rebound: number;
  /** Damper travel over wheel travel; left out: as the spring. */
  readonly motionRatio?: number;
}

/**
 * What shares the drive between the wheels of an axle.
 *
 * Power and overrun, of a limited-slip one alone, are the share, 0–1, of the push through it by
 * which the torques of its two wheels may differ: under drive, and while the engine holds the car.
 */
export interface Differential {
  readonly kind: "open" | "limited-slip" | "locked";
  readonly power?: number;
  readonly overrun?: number;
}

/**
 * How the links guide the wheels. Gains are for a wheel that moves up against the body; on a beam
 * axle for both wheels together, since a beam keeps its wheels upright on the road when it rolls.
 */
export interface AxleGeometry {
  /** m above the ground, at rest */
  readonly rollCentreHeight: number;
  /** m of roll centre height for each m of travel of both wheels; 0 when left out */
  readonly rollCentreMigration?: number;
  /** rad of camber for each m of travel; 0 when left out; below zero: the top goes in */
  readonly camberGain?: number;
  /** rad of toe for each m of travel; 0 when left out; above zero: toe-in */
  readonly toeGain?: number;
  /**
   * rad that a beam axle turns to the left for each rad that the body rolls on it, right side down;
   * 0 when left out. Independent wheels have none: `toeGain` steers them in roll too
   */
  readonly rollSteer?: number;
  /** m that a wheel can rise before the bump stop */
  readonly bumpTravel?: number;
  /** m that a wheel can fall before the damper is fully out */
  readonly droopTravel?: number;
  /**
   * N/m² by which the rate of the bump stop at the wheel grows with how far it is pressed: its force
   * is ½·c·δ²; see `stopsOf` for one that is left out
   */
  readonly bumpStop?: number;
  /** N/m², the same at the end of the travel in droop */
  readonly droopStop?: number;
  /**
   * rad that both wheels give way for each N of side force on the axle, above 0 out of the turn; see
   * `complianceSteerOf` for one that is left out
   */
  readonly complianceSteer?: number;
}

/** Which tyre, and what is in it. */
export interface AxleTyre {
  /** One of the tyres the workbook knows: see `tyreNames`; or "own", with `data`. */
  readonly name: string;
  /** Coefficients of a tyre of one's own. */
  readonly data?: TyreData;
  /** Pa above atmosphere, warm */
  readonly pressure: Sides<number>;
  /** Friction over that of the tyre's data; 1 when left out. */
  readonly grip?: number;
  /** Loss of grip with load over that of the tyre's data; 1 when left out. */
  readonly loadSensitivity?: number;
  /** Vertical stiffness over that of the tyre's data; 1 when left out. */
  readonly stiffness?: number;
  /** Pa above atmosphere, warm, at which it grips best; left out: not known, and the data's */
  readonly bestPressure?: number;
}

/** Forces of the air, each for the square of the speed, N/(m/s)². */
export interface Air {
  readonly frontDownforce: number;
  readonly rearDownforce: number;
  readonly drag: number;
}

/** What the class rules allow, as the owner of a car put it into its file. */
export interface ClassLimits {
  /** m */
  readonly leastRideHeight?: number;
  /** Pa */
  readonly leastPressure?: number;
  /** Pa */
  readonly greatestPressure?: number;
  /** rad: the most camber allowed, a negative number */
  readonly leastCamber?: number;
  /** kg with driver */
  readonly leastMass?: number;
}

/** How far something can be set, and how finely. */
export interface Adjuster {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

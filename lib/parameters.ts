import { fromHandy, type Quantity } from "./units.js";

/** One number that a reader may set. All numbers in SI; the step is round in the handy unit. */
export interface Parameter {
  /** What it is, in words. */
  readonly name: string;
  /** Symbol in formulas, in TeX. */
  readonly symbol: string;
  /** What it measures: decides its SI unit and its handy one. */
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** Where a slider stands before anyone moved it. */
  readonly start: number;
  /** Digits after the point in the handy unit. */
  readonly decimals: number;
  /** What whole numbers from `min` on stand for, such as the parts of a corner; none where absent. */
  readonly names?: readonly string[];
}

/** A parameter from numbers in the handy unit: min, max, step, start, decimals. */
function shown(
  name: string,
  symbol: string,
  quantity: Quantity,
  [min, max, step, start, decimals]: readonly [number, number, number, number, number],
): Parameter {
  const si = (value: number) => fromHandy(quantity, value);
  return {
    name,
    symbol,
    quantity,
    min: si(min),
    max: si(max),
    step: si(step),
    start: si(start),
    decimals,
  };
}

/**
 * Every number the workbook knows, once: sliders, documentation and the checks of a car file all
 * read this table. The rows give min, max, step, start and decimals in the handy unit, as data sheets and
 * gauges give them.
 */
// biome-ignore format: a table reads by rows
export const parameters = {
  // The car as a whole
  mass: shown("Mass", "m", "mass", [300, 3000, 10, 1080, 0]),
  sprungMass: shown("Sprung mass", "m_s", "mass", [200, 2800, 10, 920, 0]),
  driver: shown("Driver", "m_d", "mass", [0, 200, 1, 80, 0]),
  passenger: shown("Passenger", "m_p", "mass", [0, 200, 1, 0, 0]),
  extraMass: shown("Extra mass", "m_x", "mass", [0, 300, 1, 0, 0]),
  ballast: shown("Ballast", "m_b", "mass", [0, 300, 1, 0, 0]),
  fuel: shown("Fuel", "m_f", "mass", [0, 150, 1, 30, 0]),
  centreOfGravityHeight: shown("Centre of gravity height", "h", "carLength", [0.1, 1.2, 0.01, 0.5, 2]),
  behindFrontAxle: shown("Distance behind the front axle", "a", "carLength", [-1.5, 5, 0.01, 1.2, 2]),
  leftOfCentre: shown("Distance left of the centre line", "y", "carLength", [-1, 1, 0.01, 0, 2]),
  height: shown("Height above the ground", "z", "carLength", [0, 2, 0.01, 0.5, 2]),
  frontWeightShare: shown("Front weight share", "w_f", "share", [25, 75, 0.5, 52, 1]),
  wheelbase: shown("Wheelbase", "L", "carLength", [1.2, 4, 0.01, 2.4, 2]),
  track: shown("Track", "t", "carLength", [0.8, 2.2, 0.01, 1.45, 2]),
  yawInertia: shown("Yaw inertia", "I_z", "inertia", [100, 8000, 10, 1500, 0]),
  rollInertia: shown("Roll inertia of the body", "I_x", "inertia", [20, 2000, 5, 300, 0]),
  pitchInertia: shown("Pitch inertia of the body", "I_y", "inertia", [80, 7000, 10, 1250, 0]),
  torsionStiffness: shown("Chassis torsional stiffness", "K_c", "rollStiffness", [100, 100000, 100, 8000, 0]),

  // What the driver asks for
  lateralAcceleration: shown("Lateral acceleration", "a_y", "acceleration", [0, 20, 0.1, 6, 1]),
  longitudinalAcceleration: shown("Longitudinal acceleration", "a_x", "acceleration", [-20, 10, 0.1, 0, 1]),
  speed: shown("Speed", "v", "speed", [10, 300, 1, 90, 0]),
  cornerRadius: shown("Corner radius", "R", "length", [5, 500, 1, 50, 0]),
  slipAngle: shown("Slip angle", "\\alpha", "angle", [0, 20, 0.1, 4, 1]),
  slipRatio: shown("Slip ratio", "\\kappa", "ratio", [-1, 1, 0.01, 0, 2]),
  steeringAngle: shown("Road-wheel steering angle", "\\delta", "angle", [-40, 40, 0.1, 2, 1]),
  steeringRatio: shown("Steering ratio", "i_s", "ratio", [5, 30, 0.1, 15, 1]),

  // An axle
  unsprungMass: shown("Unsprung mass of the axle", "m_u", "mass", [10, 400, 1, 80, 0]),
  unsprungHeight: shown("Height of the unsprung mass", "h_u", "carLength", [0.1, 0.6, 0.01, 0.29, 2]),
  rideHeight: shown("Ride height", "z_r", "lengthSmall", [20, 400, 1, 130, 0]),
  rollCentreHeight: shown("Roll centre height", "h_{rc}", "lengthSmall", [-200, 500, 5, 60, 0]),
  rollCentreMigration: shown("Roll centre movement per travel", "h'_{rc}", "ratio", [-5, 5, 0.1, -1, 1]),
  camberGain: shown("Camber gain per travel", "\\gamma'", "anglePerTravel", [-0.1, 0.1, 0.005, -0.02, 3]),
  toeGain: shown("Toe change per travel", "\\delta'", "anglePerTravel", [-0.1, 0.1, 0.005, 0, 3]),
  rollSteer: shown("Roll steer of a beam axle", "\\varepsilon", "ratio", [-1, 1, 0.01, 0, 2]),
  pointCoordinate: shown("Coordinate of a joint", "x", "carLength", [-3, 3, 0.001, 0, 3]),
  bumpTravel: shown("Travel in bump", "s_b", "lengthSmall", [5, 250, 5, 60, 0]),
  droopTravel: shown("Travel in droop", "s_d", "lengthSmall", [5, 250, 5, 60, 0]),
  stopStiffening: shown("How fast a stop stiffens", "c_s", "stopStiffening", [0.1, 1000, 0.1, 5, 1]),
  complianceSteer: shown("Steer of an axle out of the turn for its side force", "\\varepsilon_y", "complianceSteer", [-0.5, 1, 0.01, 0.1, 2]),
  camber: shown("Camber", "\\gamma", "angle", [-6, 3, 0.25, -1.5, 2]),
  toe: shown("Toe-in per wheel", "\\delta_0", "angle", [-2, 2, 0.05, 0, 2]),

  // Springs, bars, dampers
  springRate: shown("Spring rate", "k_s", "stiffness", [5, 400, 1, 40, 0]),
  motionRatio: shown("Motion ratio (spring travel / wheel travel)", "i", "ratio", [0.2, 1.5, 0.01, 0.9, 2]),
  wheelRate: shown("Wheel rate", "k_w", "stiffness", [3, 300, 1, 30, 0]),
  rideFrequency: shown("Ride frequency", "f", "frequency", [0.5, 6, 0.05, 1.6, 2]),
  barRate: shown("Bar rate", "k_b", "stiffness", [0, 200, 1, 15, 0]),
  barMotionRatio: shown("Bar motion ratio (bar end travel / wheel travel)", "i_b", "ratio", [0.1, 1.5, 0.01, 0.7, 2]),
  barPosition: shown("Bar position", "n_b", "count", [1, 12, 1, 2, 0]),
  barRollStiffness: shown("Roll stiffness of the bar", "K_b", "rollStiffness", [0, 1500, 5, 150, 0]),
  rollStiffness: shown("Roll stiffness", "K_\\varphi", "rollStiffness", [0, 3000, 10, 600, 0]),
  barDiameter: shown("Bar diameter", "d", "lengthSmall", [8, 60, 0.5, 22, 1]),
  barInnerDiameter: shown("Bore of the bar", "d_i", "lengthSmall", [0, 58, 0.5, 0, 1]),
  barLength: shown("Length of the bar in torsion", "l", "lengthSmall", [100, 2000, 5, 900, 0]),
  barArmLength: shown("Length of the bar arm", "r", "lengthSmall", [50, 600, 5, 220, 0]),
  springSpacing: shown("Distance between the springs of a beam axle", "t_s", "carLength", [0.3, 2, 0.01, 1.1, 2]),
  seatTurns: shown("Spring seat turns", "n", "turns", [-30, 30, 0.5, 0, 1]),
  seatTravelPerTurn: shown("Seat travel per turn", "p_s", "lengthSmall", [0.25, 5, 0.25, 1.5, 2]),
  damperBump: shown("Damper rate in bump", "c_b", "damping", [0.1, 30, 0.1, 2, 1]),
  damperRebound: shown("Damper rate in rebound", "c_r", "damping", [0.1, 30, 0.1, 4, 1]),

  // Tyres
  tyreLoad: shown("Tyre load", "F_z", "force", [0, 12000, 50, 2700, 0]),
  tyrePressure: shown("Tyre pressure", "p", "pressure", [80, 400, 5, 200, 0]),
  tyreWarming: shown("Tyre air warmer than when set", "\\Delta T", "temperatureDifference", [0, 80, 1, 35, 0]),
  tyreStiffness: shown("Tyre vertical stiffness", "k_t", "stiffness", [80, 600, 5, 200, 0]),
  peakFriction: shown("Grip at small load", "\\mu_0", "ratio", [0.3, 3, 0.01, 1.2, 2]),
  loadSensitivity: shown("Load sensitivity (grip lost per load)", "s", "perLoad", [0, 0.2, 0.005, 0.04, 3]),
  tyreGrip: shown("Friction of a tyre against its data", "\\lambda_\\mu", "ratio", [0.5, 1.5, 0.01, 1, 2]),
  tyreLoadSensitivity: shown("Grip lost per load against the tyre's data", "\\lambda_s", "ratio", [0, 2, 0.05, 1, 2]),
  tyreStiffnessFactor: shown("Vertical stiffness of a tyre against its data", "\\lambda_t", "ratio", [0.5, 2, 0.05, 1, 2]),
  corneringStiffness: shown("Cornering stiffness", "C_\\alpha", "cornerStiffness", [200, 4000, 10, 900, 0]),

  // Brakes, drive, air
  brakeFrontShare: shown("Front brake share", "b_f", "share", [30, 90, 0.5, 66, 1]),
  driveFrontShare: shown("Front drive share", "d_f", "share", [0, 100, 5, 0, 0]),
  differentialLock: shown("Lock of a limited-slip differential", "d_l", "share", [0, 100, 5, 30, 0]),
  downforceFactor: shown("Downforce per speed squared", "q", "downforceFactor", [-1, 10, 0.05, 0, 2]),
  dragFactor: shown("Drag per speed squared", "q_d", "downforceFactor", [0, 3, 0.05, 0.4, 2]),
} as const satisfies Record<string, Parameter>;

/** The name of a row of the table, such as "lateralAcceleration". */
export type ParameterKey = keyof typeof parameters;

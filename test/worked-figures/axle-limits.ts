/** The demo car once more, from plain formulas: what its axles can hold, found by halving. */

// The demo car, from its description: kg, m, N/m, N·s/m
export const g = 9.80665;
const wheelbase = 2.4;
const sprung = 810 + 80 + 30; // body, driver, fuel
const behindFront = (810 * 1.07 + 80 * 1.35 + 30 * 2.2) / sprung;
const sprungHeight = (810 * 0.54 + 80 * 0.48 + 30 * 0.4) / sprung;
const mass = sprung + 75 + 85;
const height = (sprung * sprungHeight + (75 + 85) * 0.29) / mass;
const perDegree = Math.PI / 180;
const tyreRate = 215e3;
const frontBars = [0, 14e3, 22e3, 32e3, 46e3];
const rearBars = [0, 5e3, 12e3, 36e3];

export interface SetUp {
  readonly frontBar: number;
  readonly rearBar: number;
  readonly brakes: number;
  readonly rearRebound: number;
}
const asItIs: SetUp = { frontBar: 3, rearBar: 2, brakes: 0.66, rearRebound: 4800 };

interface Axle {
  readonly mass: number;
  readonly sprung: number;
  readonly track: number;
  readonly rollCentre: number;
  readonly wheelRate: number;
  readonly stiffness: number; // N·m/rad, with the tyres
  readonly overTyres: number; // share of the roll that is not in the tyres
  readonly damping: number; // N·m·s/rad
  readonly links: number; // N·m for each m/s²
  readonly camber: number;
  readonly toe: number;
  readonly camberGain: number;
  readonly toeGain: number;
}

const pair = (rate: number, track: number) => 0.5 * rate * track ** 2;
const inSeries = (a: number, b: number) => (a * b) / (a + b);
function stiffnessOf(wheelRate: number, bar: number, track: number) {
  const suspension = pair(wheelRate, track) + bar * (0.6 * track) ** 2;
  const stiffness = inSeries(suspension, pair(tyreRate, track));
  return { wheelRate, stiffness, overTyres: stiffness / suspension };
}

export const sprungRear = (sprung * behindFront) / wheelbase;
export const sprungFront = sprung - sprungRear;
const frontAxle = ({ frontBar }: SetUp): Axle => ({
  mass: sprungFront + 75,
  sprung: sprungFront,
  track: 1.44,
  rollCentre: 0.05,
  ...stiffnessOf(60e3 * 0.65 ** 2, frontBars[frontBar - 1] ?? 0, 1.44),
  damping: pair(((3200 + 5600) / 2) * 0.65 ** 2, 1.44),
  links: sprungFront * 0.05 + 75 * 0.29,
  camber: -1.5 * perDegree,
  toe: 0,
  camberGain: -22 * perDegree,
  toeGain: -3 * perDegree,
});
const rearAxle = ({ rearBar, rearRebound }: SetUp): Axle => ({
  mass: sprungRear + 85,
  sprung: sprungRear,
  track: 1.45,
  rollCentre: 0.09,
  ...stiffnessOf(50e3 * 0.75 ** 2, rearBars[rearBar - 1] ?? 0, 1.45),
  damping: pair(((2800 + rearRebound) / 2) * 0.75 ** 2, 1.45),
  links: sprungRear * 0.09 + 85 * 0.29,
  camber: -1.25 * perDegree,
  toe: 0.1 * perDegree,
  camberGain: -18 * perDegree,
  toeGain: 2 * perDegree,
});

/** Side force of a club tyre at 200 kPa – Pacejka 2012, eqs 4.E19 to 4.E30. */
function sideForce(slip: number, load: number, inclination: number) {
  const lean = Math.sin(-Math.max(-0.12, Math.min(0.12, inclination)));
  const more = (load - 3000) / 3000;
  const D = load * (1.15 - 0.15 * more) * (1 - 3.2 * lean ** 2);
  const K = 21 * 3000 * (1 - 0.4 * Math.abs(lean)) * Math.sin(2 * Math.atan(load / 5400));
  const thrust = load * (-0.5 - 0.1 * more) * lean;
  const x = Math.tan(slip) + (load * (-1 - 0.2 * more) * lean - thrust) / K;
  const E = (-0.8 - 0.3 * more) * (1 - 3 * lean * Math.sign(x));
  const Bx = (K / (1.5 * D)) * x;
  return D * Math.sin(1.5 * Math.atan(Bx - Math.min(1, E) * (Bx - Math.atan(Bx)))) + thrust;
}

export interface Phase {
  readonly gains: number; // m/s² along
  readonly jerk: number; // m/s³
}
export const braking: Phase = { gains: -4, jerk: 0 };
export const turnIn: Phase = { gains: -1, jerk: 12 };
export const middle: Phase = { gains: 0, jerk: 0 };
export const powerOn: Phase = { gains: 2, jerk: 0 };

export const moved = ({ gains }: Phase) => (mass * gains * height) / wheelbase; // from front to rear, N

/** Force of each of two tyres, N: half each, eased near what the tyre can do. */
function pushes(push: number, most: readonly [number, number]) {
  const eased = (limit: number) => push / 2 / (1 + (push / 2 / limit) ** 6) ** (1 / 6);
  const [a, b] = [eased(most[0]), eased(most[1])];
  return most[0] < most[1] ? [a, push - a] : [push - b, b];
}

interface InTurn {
  readonly axle: Axle;
  readonly load: number;
  readonly push: number;
  readonly leansPer: number; // rad per m/s²
  readonly ahead: number; // N moved across by dampers ahead of springs
}

/** Side force of an axle at a slip angle and a lateral acceleration, N. */
function axleForce({ axle, load, push, leansPer, ahead }: InTurn, slip: number, ay: number) {
  const roll = leansPer * ay;
  const across = (axle.stiffness * roll + axle.links * ay) / axle.track + ahead;
  const squashed = (load - axle.mass * g) / (2 * axle.wheelRate);
  const bump = (axle.overTyres * axle.track) / 2;
  const upright = -(1 + axle.camberGain * bump) * roll;
  const camber = axle.camber + axle.camberGain * squashed;
  const toe = axle.toe + axle.toeGain * squashed;
  const steer = axle.toeGain * bump * roll;
  const tyres = [
    { load: load / 2 - across, force: 0, inclination: camber + upright, slip: slip - toe + steer },
    { load: load / 2 + across, force: 0, inclination: -camber + upright, slip: slip + toe + steer },
  ] as const;
  const most = ({ load: on }: { load: number }) => on * (1.22 - (0.12 * (on - 3000)) / 3000);
  const [inner, outer] = [most(tyres[0]), most(tyres[1])];
  const [pi = 0, po = 0] = pushes(push, [inner, outer]);
  const left = [Math.sqrt(1 - (pi / inner) ** 2), Math.sqrt(1 - (po / outer) ** 2)]; // friction ellipse
  return tyres.reduce(
    (sum, tyre, i) => sum + (left[i] ?? 0) * sideForce(tyre.slip, tyre.load, tyre.inclination),
    0,
  );
}

/** Greatest side force over the slip angle, N, by cutting the range in three. */
function most(turn: InTurn, ay: number) {
  let [low, high] = [0, 0.5];
  for (let i = 0; i < 90; i++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (axleForce(turn, a, ay) < axleForce(turn, b, ay)) low = a;
    else high = b;
  }
  return axleForce(turn, low, ay);
}

/** Lateral acceleration that an axle can hold, m/s², by halving. */
function limit(turn: InTurn) {
  let [low, high] = [2, 14];
  for (let i = 0; i < 50; i++) {
    const ay = (low + high) / 2;
    if (most(turn, ay) > turn.axle.mass * ay) low = ay;
    else high = ay;
  }
  return low;
}

/** Rear limit less front limit, m/s²: above 0 the front slides first. */
function balance(set: SetUp, phase: Phase) {
  const [front, rear] = [frontAxle(set), rearAxle(set)];
  const arm = [front, rear].reduce((s, a) => s + a.sprung * (sprungHeight - a.rollCentre), 0);
  const both = front.stiffness + rear.stiffness;
  const leansPer = arm / (both - arm * g);
  const damping = front.damping + rear.damping;
  const early = leansPer * phase.jerk * (front.damping - (damping * front.stiffness) / both);
  const push = mass * phase.gains;
  const atFront = push < 0 ? push * set.brakes : 0;
  const frontLimit = limit({
    axle: front,
    load: front.mass * g - moved(phase),
    push: atFront,
    leansPer,
    ahead: early / front.track,
  });
  const rearLimit = limit({
    axle: rear,
    load: rear.mass * g + moved(phase),
    push: push - atFront,
    leansPer,
    ahead: -early / rear.track,
  });
  return rearLimit - frontLimit;
}

export const shift = (change: Partial<SetUp>, phase: Phase) =>
  balance({ ...asItIs, ...change }, phase) - balance(asItIs, phase);

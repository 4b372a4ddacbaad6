import type { Car, Distribution, Moment, Sides, TransferParts } from "@rollbook/lib";

type End = "front" | "rear";

/** One axle as it stands at one moment, to be seen from behind; angles above 0 with the right side down. */
export interface SeenAxle {
  /** m */
  readonly track: number;
  /** m of the wheel centres above the road, at rest */
  readonly wheelHeight: number;
  /** m */
  readonly rollCentreHeight: number;
  readonly hasBar: boolean;
  /** Whether one beam holds both wheels; else each has arms of its own. */
  readonly isBeam: boolean;
  /** Spring travel over wheel travel: how far out on its arm a spring stands. */
  readonly springRatio: number;
  /** rad of the body against the road */
  readonly rollAngle: number;
  /** rad of the axle against the road, on its tyres */
  readonly tyreAngle: number;
  /** N under each tyre */
  readonly load: Sides<number>;
  /** N that each road moves from the left tyre to the right one */
  readonly transfer: TransferParts;
  /** s: how far the marks on the roads have come */
  readonly time: number;
  /** m by which the road stands higher under each wheel; 0 where absent */
  readonly bump?: Sides<number>;
  /** m by which the body stands higher than at rest; 0 where absent */
  readonly lift?: number;
}

/** What an axle is, whatever it does. */
function standing(car: Car, end: End) {
  const { track, unsprungHeight, geometry, bar, spring } = car[end];
  return {
    ...{ track, wheelHeight: unsprungHeight, rollCentreHeight: geometry.rollCentreHeight },
    ...{ hasBar: bar !== undefined, isBeam: spring.spacing !== undefined },
    ...{ springRatio: spring.motionRatio, time: 0 },
  };
}

/** One axle of a car at a moment of a drive. */
export function axleAt(
  car: Car,
  end: End,
  { time, rollAngle, tyreAngle, load, transfer }: Moment,
): SeenAxle {
  return {
    ...standing(car, end),
    ...{ time, rollAngle, tyreAngle: tyreAngle[end], load: load[end], transfer: transfer[end] },
  };
}

/** One axle of a car in a steady turn. */
export function axleInTurn(car: Car, end: End, turn: Distribution): SeenAxle {
  const { load, geometric, unsprung, elastic } = turn[end];
  return {
    ...standing(car, end),
    ...{ rollAngle: turn.rollAngle[end], tyreAngle: turn.tyreAngle[end], load },
    transfer: { geometric, unsprung, elastic, damper: 0 },
  };
}

const mean = (of: (end: End) => number): number => (of("front") + of("rear")) / 2;

/** Both axles of a car in a steady turn, one behind the other, as one: loads are of the two tyres of a side. */
export function carInTurn(car: Car, turn: Distribution): SeenAxle {
  const [front, rear] = [axleInTurn(car, "front", turn), axleInTurn(car, "rear", turn)];
  const both = { front, rear };
  const sum = (part: keyof TransferParts) => front.transfer[part] + rear.transfer[part];
  return {
    ...front,
    ...{ hasBar: front.hasBar || rear.hasBar, isBeam: front.isBeam && rear.isBeam },
    track: mean((end) => both[end].track),
    wheelHeight: mean((end) => both[end].wheelHeight),
    rollCentreHeight: mean((end) => both[end].rollCentreHeight),
    rollAngle: mean((end) => both[end].rollAngle),
    tyreAngle: mean((end) => both[end].tyreAngle),
    load: { left: front.load.left + rear.load.left, right: front.load.right + rear.load.right },
    transfer: {
      ...{ geometric: sum("geometric"), unsprung: sum("unsprung") },
      ...{ elastic: sum("elastic"), damper: sum("damper") },
    },
  };
}

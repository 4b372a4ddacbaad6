/** What anybody can read or measure of a car in ten minutes, SI. */
export interface FirstCar {
  readonly name: string;
  /** kg with driver and fuel */
  readonly mass: number;
  /** Share of it on the front axle, 0–1. */
  readonly frontShare: number;
  /** m */
  readonly wheelbase: number;
  readonly driven: "front" | "rear" | "all";
  /** On which side the driver sits. */
  readonly seat: "left" | "middle" | "right";
  readonly front: FirstAxle;
  readonly rear: FirstAxle;
}

/** The same of an axle. */
export interface FirstAxle {
  /** m */
  readonly track: number;
  readonly kind: "independent" | "beam";
  /** m of the tyre without load, from its size */
  readonly tyreRadius: number;
  /** Pa above atmosphere, warm */
  readonly pressure: number;
  /** m across; 0 for no bar */
  readonly bar: number;
  /** m from the ground to the body */
  readonly rideHeight: number;
}

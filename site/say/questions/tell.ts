import type { Quantity } from "@rollbook/lib";

/** An SI value as text in the reader's unit; the decimals are those of the metric unit. */
export type Show = (quantity: Quantity, value: number, decimals: number) => string;

/** The numbers of questions as text. */
export function tellIn(show: Show) {
  return {
    newtons: (force: number) => show("force", force, 0),
    degrees: (angle: number, decimals = 1) => show("angle", angle, decimals),
    percent: (share: number, decimals = 1) => show("share", Math.abs(share), decimals),
    kilograms: (mass: number) => show("mass", mass, 0),
    metres: (length: number, decimals = 2) => show("length", length, decimals),
    millimetres: (length: number, decimals = 0) => show("lengthSmall", length, decimals),
    pressure: (pressure: number) => show("pressure", pressure, 0),
    speed: (speed: number, decimals = 1) => show("speed", speed, decimals),
    rollStiffness: (stiffness: number) => show("rollStiffness", stiffness, 0),
    acceleration: (acceleration: number, decimals = 2) =>
      show("acceleration", acceleration, decimals),
    /** A turn, in brackets also in g where that is another unit. */
    turn: (acceleration: number) => {
      const own = show("acceleration", acceleration, 1);
      const inG = show("accelerationInG", acceleration, 2);
      return own === inG ? own : `${own} (${inG})`;
    },
  };
}

export type Tell = ReturnType<typeof tellIn>;

import type { CarInRoll } from "../../../lib/load/car-in-roll.js";

const g = 9.80665;
const moment = 810 * 1.07 + 80 * 1.35 + 30 * 2.2; // kg·m of the sprung masses behind the front axle
const height = (810 * 0.54 + 80 * 0.48 + 30 * 0.4) / 920;
const sprungFront = 920 - moment / 2.4;
const gain = Math.PI / 180; // camber gains of 22 and 18 degrees for each metre

/**
 * Vertical stiffness of a club tyre at a load, N/m: F = b·ρ + a·ρ² with a = Q_FZ2·Fz0/R0² has the
 * slope √(b² + 4aF), and 215 000 N/m at 3000 N – Pacejka 2012, eq. 4.E68, solved for the slope.
 */
const tyreAt = (load: number) =>
  Math.sqrt(215e3 ** 2 + 4 * ((20 * 3000) / 0.29 ** 2) * (load - 3000));
const tyrePair = (mass: number, track: number) => 0.5 * tyreAt((mass * g) / 2) * track ** 2;

/** The demo car in roll, worked out by hand from the numbers of its file. */
export const demoInRoll: CarInRoll = {
  sprungMass: 920,
  sprungHeight: height,
  sprungFrontShare: sprungFront / 920,
  front: {
    track: 1.44,
    rollStiffness: 0.5 * 25350 * 1.44 ** 2 + 22e3 * (0.6 * 1.44) ** 2,
    tyreRollStiffness: tyrePair(sprungFront + 75, 1.44),
    ownForceShare: 22 * gain * 0.72,
    independent: true,
    rollCentreHeight: 0.05,
    unsprungMass: 75,
    unsprungHeight: 0.29,
  },
  rear: {
    track: 1.45,
    rollStiffness: 0.5 * 28125 * 1.45 ** 2 + 5e3 * (0.6 * 1.45) ** 2,
    tyreRollStiffness: tyrePair(920 - sprungFront + 85, 1.45),
    ownForceShare: 18 * gain * 0.725,
    independent: true,
    rollCentreHeight: 0.09,
    unsprungMass: 85,
    unsprungHeight: 0.29,
  },
};

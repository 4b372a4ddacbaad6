import type { Car } from "../../car/car.js";
import { type DrivenCorner, driveCorner } from "./drive-corner.js";
import type { Practice } from "./practice.js";

export const driveNames = ["known", "changed", "again"] as const;
export type DriveName = (typeof driveNames)[number];

/** What was driven so far; the car that is known always comes first. */
export interface Drives {
  readonly known: DrivenCorner;
  readonly changed?: DrivenCorner;
  readonly again?: DrivenCorner;
}

/** The corner with the car that is known, no faster than the corner says. */
export const driveKnown = ({ car, corner }: Practice): DrivenCorner =>
  driveCorner(car, corner, { wanted: corner.speed });

/** The corner with another set-up, at the same speed where it can. */
export const driveOther = (car: Car, practice: Practice, known: DrivenCorner): DrivenCorner =>
  driveCorner(car, practice.corner, { measured: practice.car, wanted: known.speed });

/** The drives that there are, with their names. */
export const namedDrives = (drives: Drives): (readonly [DriveName, DrivenCorner])[] =>
  driveNames.flatMap((name) => {
    const drive = drives[name];
    return drive === undefined ? [] : [[name, drive] as const];
  });

export const latestDrive = ({ known, changed, again }: Drives): DrivenCorner =>
  again ?? changed ?? known;

import { type Car, demoCar, freshSeed, type Puzzle, practiceCorners, rungs } from "@rollbook/lib";
import { chosenCar, ownCars } from "@rollbook/page";
import { words } from "../../say/practice/words.js";
import { inChosenClass } from "../../store/classes.js";
import { markOf } from "./car-mark.js";
import { puzzleFrom } from "./puzzle-link.js";
import { onRung, openNow } from "./rounds.js";

/** Cars that a puzzle may be about, as they run in the chosen class. */
export const carsAtHand = (): readonly Car[] =>
  [demoCar, ...ownCars.now.value.cars].map(inChosenClass);

/** What tells a car in a link to its puzzle; nothing for the workbook's own as it is. */
export function markIn(car: Car): string | undefined {
  const mark = markOf(car);
  return mark === markOf(demoCar) ? undefined : mark;
}

/** A puzzle for this learner: the car that the course is about, in its class. */
function freshPuzzle(): Puzzle {
  const car = markIn(inChosenClass(chosenCar()));
  const first = rungs[openNow() - 1];
  const puzzle = onRung(
    { seed: freshSeed(), level: 1, place: practiceCorners.practice },
    first ?? { level: 1, worked: 0 },
  );
  return car === undefined ? puzzle : { ...puzzle, car };
}

/** The car that a puzzle was made with; nothing where it is not here. */
function carIn({ car }: Puzzle): Car | undefined {
  if (car === undefined) return demoCar;
  const asFiled = [demoCar, ...ownCars.now.value.cars]; // a link from where no class was chosen
  return [...carsAtHand(), ...asFiled].find((one) => markOf(one) === car);
}

/** The car that a puzzle was made with, or the workbook's own where it is not here. */
export const carFor = (puzzle: Puzzle): Car => carIn(puzzle) ?? demoCar;

/** A puzzle to begin with, what is wrong with the link that asked for it, and whether it begins at once. */
export interface Asked {
  readonly puzzle: Puzzle;
  readonly faults: readonly string[];
  readonly begin: boolean;
}

/** The puzzle that the end of an address asks for, or a fresh one. */
export function askedFor(hash: string): Asked {
  const linked = puzzleFrom(hash, freshSeed());
  const asked = linked?.puzzle ?? freshPuzzle();
  const missing = carIn(asked) === undefined;
  const { car: _, ...others } = asked;
  const faults = [...(linked?.faults ?? []), ...(missing ? [words.faults.otherCar] : [])];
  return {
    puzzle: missing ? others : asked,
    faults,
    begin: linked !== undefined && faults.length === 0,
  };
}

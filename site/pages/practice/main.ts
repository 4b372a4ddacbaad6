import { type Car, demoCar } from "@rollbook/lib";
import { chosenCar, element, ownCars, placeOf } from "@rollbook/page";
import { markOf } from "./puzzle/car-mark.js";
import { puzzleFrom } from "./puzzle/link.js";
import { freshSeed, type Puzzle, presets } from "./puzzle/puzzle.js";
import { play } from "./view/play.js";
import { words } from "./words.js";

/** A puzzle for this learner: the car that the course is about, if it is one of their own. */
function freshPuzzle(): Puzzle {
  const car = chosenCar();
  const own = ownCars.now.value.cars.includes(car) || car.name !== demoCar.name;
  const puzzle = { seed: freshSeed(), level: 1, place: presets.practice } as const;
  return own ? { ...puzzle, car: markOf(car) } : puzzle;
}

/** The car that a puzzle was made with, or the workbook's own where it is not here. */
function carFor({ car }: Puzzle): Car | undefined {
  if (car === undefined) return demoCar;
  return ownCars.now.value.cars.find((one) => markOf(one) === car);
}

function open(place: HTMLElement): void {
  const linked = puzzleFrom(location.hash, freshSeed());
  const asked = linked?.puzzle ?? freshPuzzle();
  const missing = carFor(asked) === undefined;
  const { car: _, ...others } = asked;
  const puzzle = missing ? others : asked;
  const faults = [...(linked?.faults ?? []), ...(missing ? [words.faults.otherCar] : [])];
  const told =
    faults.length > 0 ? [element("p", { class: "fault", role: "alert" }, faults.join(" "))] : [];
  const begin = linked !== undefined && faults.length === 0;
  play(place, puzzle, (one) => carFor(one) ?? demoCar, { told, begin });
}

const place = placeOf("practice");
if (place) {
  open(place);
  addEventListener("hashchange", () => {
    if (location.hash.startsWith("#?")) open(place);
  });
}

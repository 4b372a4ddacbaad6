import { demoCar, fromShown, type Parameter, parameters } from "@rollbook/lib";
import { element, ownCars, slider } from "@rollbook/page";
import { type Chip, chips } from "../../workshop/parts/chips.js";
import { markOf } from "../puzzle/car-mark.js";
import {
  freshSeed,
  LARGEST_SEED,
  levels,
  type Place,
  type PresetName,
  type Puzzle,
  presetOf,
  presets,
} from "../puzzle/puzzle.js";
import { words } from "../words.js";
import { button, part } from "./parts.js";

const grade: Parameter = {
  name: words.grade,
  symbol: "",
  quantity: "share",
  min: fromShown("share", -25),
  max: fromShown("share", 25),
  step: fromShown("share", 1),
  start: 0,
  decimals: 0,
};
const seed: Parameter = {
  name: words.puzzle,
  symbol: "",
  quantity: "count",
  min: 0,
  max: LARGEST_SEED,
  step: 1,
  start: 1,
  decimals: 0,
};
const speed: Parameter = { ...parameters.speed, name: words.speedAsked };

/** Corner, level, car and number; `begin` gets the puzzle when the learner goes there. */
export function choosePart(start: Puzzle, begin: (puzzle: Puzzle) => void): HTMLElement {
  let puzzle = start;
  const set = (changed: Partial<Puzzle>) => {
    puzzle = { ...puzzle, ...changed };
  };
  const setCar = (mark: string) => {
    const { car: _, ...others } = puzzle;
    puzzle = mark === "" ? others : { ...others, car: mark };
  };
  const about = element("p", { class: "quiet", id: "about-level" });
  const tellLevel = () => {
    about.textContent = words.aboutLevels[puzzle.level];
  };
  tellLevel();
  const level = levels.map((value) => ({ value, text: `${value} · ${words.levels[value]}` }));
  return part(
    "choose",
    words.choose,
    cornerChosen(puzzle.place, (place) => set({ place })),
    chips("level", words.level, level, puzzle.level, (value) => {
      set({ level: value });
      tellLevel();
    }),
    about,
    ...carChosen(puzzle, setCar),
    numberChosen(puzzle.seed, (value) => set({ seed: value })),
    button("begin", words.begin, () => begin(puzzle), "go"),
  );
}

/** The corners to choose from, or one of the learner's own. */
function cornerChosen(start: Place, report: (place: Place) => void): HTMLElement {
  let place = start;
  const own = element("div", { class: "own" });
  const change = (changed: Partial<Place>) => {
    place = { ...place, ...changed };
    report(place);
  };
  own.append(...ownFields(place, change));
  const names = Object.keys(presets) as PresetName[];
  const choices: Chip<PresetName | "own">[] = [
    ...names.map((value) => ({ value, text: words.corners[value] })),
    { value: "own", text: words.ownCorner },
  ];
  const chosen = presetOf(place) ?? "own";
  own.hidden = chosen !== "own";
  const corner = chips("corner", words.corner, choices, chosen, (name) => {
    own.hidden = name !== "own";
    if (name !== "own") change(presets[name]);
    own.replaceChildren(...ownFields(place, change));
  });
  return element("div", {}, corner, own);
}

function ownFields(place: Place, change: (changed: Partial<Place>) => void): HTMLElement[] {
  const { direction } = place;
  const turns = (["left", "right"] as const).map((value) => ({ value, text: words.turns[value] }));
  const rows = [
    slider("own-radius", parameters.cornerRadius, (radius) => change({ radius })),
    slider("own-speed", speed, (value) => change({ speed: value })),
    slider("own-grade", grade, (value) => change({ grade: value })),
  ] as const;
  rows[0].set(place.radius);
  rows[1].set(place.speed);
  rows[2].set(place.grade ?? 0);
  const turn = chips("own-turn", words.turn, turns, direction, (value) =>
    change({ direction: value }),
  );
  return [...rows.map(({ row }) => row), turn];
}

/** The workbook's own car, or one of the learner's. */
function carChosen({ car }: Puzzle, set: (mark: string) => void): HTMLElement[] {
  const own = ownCars.now.value.cars;
  if (own.length === 0) return [];
  const select = element("select", { id: "car" });
  select.append(
    element("option", { value: "" }, words.workbooksCar(demoCar.name)),
    ...own.map((one) => element("option", { value: markOf(one) }, one.name)),
  );
  select.value = car ?? "";
  select.addEventListener("change", () => set(select.value));
  const label = element("label", { for: "car" }, words.car);
  return [element("div", { class: "field" }, label, select)];
}

function numberChosen(start: number, report: (value: number) => void): HTMLElement {
  const row = slider("seed", seed, report);
  row.set(start);
  const other = button("fresh", words.another, () => {
    const value = freshSeed();
    row.set(value);
    report(value);
  });
  const help = element("p", { class: "quiet" }, words.puzzleHelp);
  return element("div", { class: "number" }, row.row, other, help);
}

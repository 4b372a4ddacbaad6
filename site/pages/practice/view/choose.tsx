import { useSignal } from "@preact/signals";
import {
  demoCar,
  freshSeed,
  LARGEST_PUZZLE,
  type Parameter,
  type PracticeCornerName,
  type Puzzle,
  parameters,
  pointsOf,
  practiceCornerName,
  practiceCorners,
  rungOf,
  rungs,
  SURE,
  SURE_ROUNDS,
  type UnnamedCorner,
} from "@rollbook/lib";
import { words } from "../../../say/practice/words.js";
import { fromShown } from "../../../say/units.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { ChoiceField } from "../../../ui/field.js";
import { Forbidden } from "../../../ui/forbidden.js";
import { SliderRow } from "../../../ui/slider-row.js";
import { carFor, carsAtHand, markIn } from "../puzzle-for.js";
import { allOpen, onRung, openNow } from "../rounds.js";
import { Part } from "./part.js";

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
  max: LARGEST_PUZZLE,
  step: 1,
  start: 1,
  decimals: 0,
};
const speed: Parameter = { ...parameters.speed, name: words.speedAsked };

interface Choosing<Value> {
  readonly value: Value;
  readonly set: (value: Value) => void;
}

/** Corner, level, car and number of the next puzzle. */
export function Choose({
  value: puzzle,
  set,
  begin,
}: Choosing<Puzzle> & { readonly begin: () => void }) {
  return (
    <Part id="choose" heading={words.choose} lead={false}>
      <Corner value={puzzle.place} set={(place) => set({ ...puzzle, place })} />
      <RungChoice value={puzzle} set={set} />
      <CarChoice value={puzzle} set={set} />
      <div class="number">
        <SliderRow
          id="seed"
          parameter={seed}
          value={puzzle.seed}
          report={(value) => set({ ...puzzle, seed: value })}
        />
        <Button id="fresh" work={() => set({ ...puzzle, seed: freshSeed() })}>
          {words.another}
        </Button>
        <p class="quiet">{words.puzzleHelp}</p>
      </div>
      <Button id="begin" large work={begin}>
        {words.begin}
      </Button>
    </Part>
  );
}

/** How much of the round is the learner's; what is not open yet is shut, but for who asks. */
function RungChoice({ value: puzzle, set }: Choosing<Puzzle>) {
  const [now, open] = [rungOf(puzzle), openNow()];
  const choices = rungs.map((_, value) => ({
    value,
    text: `${value + 1} · ${words.rungs[value]}`,
    shut: value >= open && value !== now,
  }));
  const choose = (value: number) => {
    const rung = rungs[value];
    if (rung) set(onRung(puzzle, rung));
  };
  const shutOne = words.rungs[open];
  return (
    <>
      <Chips id="level" question={words.level} choices={choices} chosen={now} choose={choose}>
        {shutOne !== undefined && (
          <p class="quiet">
            {words.rungOpens(shutOne, SURE_ROUNDS, pointsOf(SURE))}{" "}
            <Button id="open-all" work={() => void allOpen.set(true)}>
              {words.openAll}
            </Button>
          </p>
        )}
      </Chips>
      <p class="quiet" id="about-level">
        {words.aboutRungs[now]}
      </p>
    </>
  );
}

const names = Object.keys(practiceCorners) as PracticeCornerName[];
const corners = [
  ...names.map((value) => ({ value, text: words.corners[value] })),
  { value: "own", text: words.ownCorner } as const,
];

/** The corners to choose from, or one of the learner's own. */
function Corner({ value: place, set }: Choosing<UnnamedCorner>) {
  const own = useSignal(practiceCornerName(place) === undefined);
  const choose = (name: PracticeCornerName | "own") => {
    own.value = name === "own";
    if (name !== "own") set(practiceCorners[name]);
  };
  return (
    <div>
      <Chips
        id="corner"
        question={words.corner}
        choices={corners}
        chosen={own.value ? "own" : (practiceCornerName(place) ?? "own")}
        choose={choose}
      />
      <div class="own" hidden={!own.value}>
        <OwnCorner value={place} set={set} />
      </div>
    </div>
  );
}

const turns = (["left", "right"] as const).map((value) => ({ value, text: words.turns[value] }));

function OwnCorner({ value: place, set }: Choosing<UnnamedCorner>) {
  return (
    <>
      <SliderRow
        id="own-radius"
        parameter={parameters.cornerRadius}
        value={place.radius}
        report={(radius) => set({ ...place, radius })}
      />
      <SliderRow
        id="own-speed"
        parameter={speed}
        value={place.speed}
        report={(value) => set({ ...place, speed: value })}
      />
      <SliderRow
        id="own-grade"
        parameter={grade}
        value={place.grade ?? 0}
        report={(value) => set({ ...place, grade: value })}
      />
      <Chips
        id="own-turn"
        question={words.turn}
        choices={turns}
        chosen={place.direction}
        choose={(direction) => set({ ...place, direction })}
      />
    </>
  );
}

/** The workbook's own car, or one of the learner's. */
function CarChoice({ value: puzzle, set }: Choosing<Puzzle>) {
  const [first = demoCar, ...own] = carsAtHand();
  if (own.length === 0 && first === demoCar) return null;
  const choose = (mark: string) => {
    const { car: _, ...others } = puzzle;
    set(mark === "" ? others : { ...others, car: mark });
  };
  const choices = [
    [markIn(first) ?? "", words.workbooksCar(first.name)] as const,
    ...own.map((car) => [markIn(car) ?? "", car.name] as const),
  ];
  return (
    <>
      <ChoiceField
        id="car"
        label={words.car}
        choices={choices}
        value={puzzle.car ?? ""}
        choose={choose}
      />
      <Forbidden car={carFor(puzzle)} />
    </>
  );
}

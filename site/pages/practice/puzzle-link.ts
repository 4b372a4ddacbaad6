import {
  type HelpLevel,
  helpLevels,
  LARGEST_PUZZLE,
  type Puzzle,
  practiceCorners,
  type Quantity,
  type UnnamedCorner,
  type WorkedSteps,
} from "@rollbook/lib";
import { words } from "../../say/practice/words.js";
import { fromShown, toShown } from "../../say/units.js";

/** What a link asks for, and a sentence for each part that cannot be had. */
export interface Linked {
  readonly puzzle: Puzzle;
  readonly faults: readonly string[];
}

const LONGEST = 40; // characters of a link that are shown again
const { faults: say } = words;

const numbers = {
  radius: { quantity: "length", from: 5, to: 500, unit: " m" },
  speed: { quantity: "speed", from: 10, to: 300, unit: " km/h" },
  grade: { quantity: "share", from: -25, to: 25, unit: " %" },
} as const satisfies Record<string, { quantity: Quantity; from: number; to: number; unit: string }>;

const tidy = (value: number): string => String(Number(value.toPrecision(9)));

/** The end of the address of a puzzle, in metric units. */
export function linkTo({ seed, level, worked, place, car }: Puzzle): string {
  const query = new URLSearchParams({
    seed: String(seed),
    level: String(level),
    ...(worked && { worked: String(worked) }),
    radius: tidy(place.radius),
    speed: tidy(toShown("speed", place.speed)),
    grade: tidy(toShown("share", place.grade ?? 0)),
    turn: place.direction,
    ...(car !== undefined && { car }),
  });
  return `#?${query}`;
}

/** A link to a puzzle as it is written now; nothing where it is none or has a fault. */
export function tidyLink(link: string): string | undefined {
  const linked = puzzleFrom(link, 0);
  return linked === undefined || linked.faults.length > 0 ? undefined : linkTo(linked.puzzle);
}

/** What is read of a link so far. */
type Draft = { -readonly [Field in keyof Puzzle]: Puzzle[Field] };

/** The puzzle that the end of an address asks for; nothing where it asks for none. */
export function puzzleFrom(hash: string, fresh: number): Linked | undefined {
  if (!hash.startsWith("#?")) return undefined;
  const draft: Draft = { seed: fresh, level: 1, place: practiceCorners.practice };
  const faults = [...new URLSearchParams(hash.slice(2))].flatMap(([key, text]) => {
    const take = Object.hasOwn(takers, key) ? takers[key] : undefined;
    const fault = take ? take(text, draft) : say.unknown(key.slice(0, LONGEST));
    return fault ?? [];
  });
  return { puzzle: draft, faults };
}

/** Takes a text into the draft, or says why it cannot. */
type Taker = (text: string, draft: Draft) => string | undefined;

const takers: Readonly<Record<string, Taker>> = {
  seed: whole("seed", 0, LARGEST_PUZZLE, (seed, draft) => {
    draft.seed = seed;
  }),
  level: whole("level", 1, helpLevels.length, (level, draft) => {
    draft.level = level as HelpLevel;
  }),
  worked: whole("worked", 0, 3, (worked, draft) => {
    if (worked > 0) draft.worked = worked as WorkedSteps;
  }),
  radius: measured("radius"),
  speed: measured("speed"),
  grade: measured("grade"),
  turn(text, draft) {
    if (text !== "left" && text !== "right") return say.turn(text.slice(0, LONGEST));
    draft.place = { ...draft.place, direction: text };
    return undefined;
  },
  car(text, draft) {
    if (!/^[0-9a-f]{8}$/.test(text)) return say.car(text.slice(0, LONGEST));
    draft.car = text;
    return undefined;
  },
};

function whole(
  name: string,
  from: number,
  to: number,
  take: (value: number, draft: Draft) => void,
): Taker {
  return (text, draft) => {
    const value = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
    if (!(value >= from && value <= to)) return say.whole(name, from, to, text.slice(0, LONGEST));
    take(value, draft);
    return undefined;
  };
}

function measured(name: keyof typeof numbers & keyof UnnamedCorner): Taker {
  const { quantity, from, to, unit } = numbers[name];
  return (text, draft) => {
    const value = text.trim() === "" ? Number.NaN : Number(text);
    if (!(value >= from && value <= to))
      return say.number(name, from, to, unit, text.slice(0, LONGEST));
    draft.place = { ...draft.place, [name]: fromShown(quantity, value) };
    return undefined;
  };
}

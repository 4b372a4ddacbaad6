import {
  type Car,
  type Change,
  carWith,
  type Practice,
  practiceFrom,
  type Report,
  scoreCause,
  scoreNext,
  scoreReport,
} from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { changeSize, leverName } from "../../../say/change.js";
import { practiceLabel } from "../../../say/practice.js";
import { soon } from "../../workshop/parts/soon.js";
import { type Drives, driveKnown, driveOther } from "../drive/drives.js";
import { linkTo } from "../puzzle/link.js";
import { cornerOf, freshSeed, type Puzzle } from "../puzzle/puzzle.js";
import { words } from "../words.js";
import { causePart, nextPart } from "./answer.js";
import { choosePart } from "./choose.js";
import { historyFold } from "./history.js";
import { button, follow, notice, part, reasonOf } from "./parts.js";
import { reportPart } from "./report.js";
import { type Scores, scorePart, sharesOf, sharing } from "./score.js";
import { tracesOf } from "./traces.js";

const later = soon();

/** Does work that takes a moment, saying so; a refusal is told in its place. */
function withNotice(sentence: string, work: () => void): void {
  notice.textContent = sentence;
  later(() => {
    notice.textContent = "";
    try {
      work();
    } catch (error) {
      notice.textContent = words.cannotDrive(reasonOf(error));
    }
  });
}

/** Lets what was answered stand as it is. */
function close(answered: HTMLElement | null): void {
  for (const control of answered?.querySelectorAll<HTMLButtonElement>("input, select, button") ??
    [])
    control.disabled = true;
}

/** The page from the choice of a corner to the score. */
export function play(
  place: HTMLElement,
  start: Puzzle,
  carFor: (puzzle: Puzzle) => Car,
  { told, begin }: { told: readonly HTMLElement[]; begin: boolean },
): void {
  const round = element("div", {});
  const history = historyFold();
  const first = (puzzle: Puzzle) =>
    withNotice(words.preparing, () => {
      const practice = practiceFrom(puzzle.seed, cornerOf(puzzle.place), carFor(puzzle));
      window.history.replaceState(null, "", linkTo(puzzle));
      round.replaceChildren();
      drivePart(round, puzzle, practice, {
        kept: (scores) =>
          history.add({ at: Date.now(), link: linkTo(puzzle), ...sharesOf(scores) }),
        again: () => play(place, puzzle, carFor, { told: [], begin: true }),
        another: () => {
          const other = { ...puzzle, seed: freshSeed() };
          play(place, other, carFor, { told: [], begin: true });
        },
      });
    });
  place.replaceChildren(...told, choosePart(start, first), notice, round, history.fold);
  if (begin) first(start);
}

/** What follows a round. */
interface After {
  kept(scores: Scores): void;
  again(): void;
  another(): void;
}

function drivePart(round: HTMLElement, puzzle: Puzzle, practice: Practice, after: After): void {
  const drive = part("drive", words.drives, element("p", {}, words.ready));
  const known = button("drive-known", words.driveKnown, () =>
    withNotice(words.driving, () => {
      const drives: Drives = { known: driveKnown(practice) };
      const traces = tracesOf(practice, puzzle.level, drives.known);
      const changed = button("drive-changed", words.driveChanged, () =>
        withNotice(words.driving, () => {
          const both = { ...drives, changed: driveOther(practice.changed, practice, drives.known) };
          traces.show(both);
          changed.remove();
          round.append(askReport(round, puzzle, practice, { drives: both, traces, after }));
          drive.querySelector("h2")?.focus();
        }),
      );
      changed.classList.add("go");
      known.replaceWith(traces.figure);
      drive.append(changed);
      drive.querySelector("h2")?.focus();
    }),
  );
  known.classList.add("go");
  drive.append(known);
  follow(round, drive);
}

/** What was driven, and where it is shown. */
interface Driven {
  readonly drives: Drives;
  readonly traces: ReturnType<typeof tracesOf>;
  readonly after: After;
}

function askReport(round: HTMLElement, puzzle: Puzzle, practice: Practice, done: Driven) {
  const asked: HTMLElement = reportPart(practice, puzzle.level, (report) => {
    close(asked);
    withNotice(words.preparing, () => {
      const causes: HTMLElement = causePart(practice, puzzle.level, (cause) => {
        close(causes);
        follow(round, askNext(round, puzzle, practice, { ...done, report, cause }));
      });
      follow(round, causes);
    });
  });
  return asked;
}

type Answered = Driven & { readonly report: Report; readonly cause: Change };

function askNext(round: HTMLElement, puzzle: Puzzle, practice: Practice, answered: Answered) {
  const asked: HTMLElement = nextPart(practice, (next) =>
    withNotice(words.driving, () => {
      const { drives, traces } = answered;
      const car = carWith(next, practice.changed, practice.car);
      traces.show({ ...drives, again: driveOther(car, practice, drives.known) });
      traces.reveal();
      close(asked);
      follow(round, scored(puzzle, practice, car, { ...answered, next }));
    }),
  );
  return asked;
}

function scored(
  puzzle: Puzzle,
  practice: Practice,
  car: Car,
  { report, cause, next, after }: Answered & { readonly next: Change },
): HTMLElement {
  const scores = {
    report: scoreReport(practice, report),
    cause: scoreCause(practice, cause),
    next: scoreNext(practice, next),
  };
  after.kept(scores);
  const answers = {
    cause: practiceLabel(cause, practice.car, reader),
    next: `${leverName(next, reader)} ${changeSize(next, reader)}`,
  };
  const acts = [
    button("another", words.another, after.another, "go"),
    button("same-again", words.sameAgain, after.again),
    ...sharing(linkTo(puzzle)),
  ];
  return scorePart(practice, car, scores, { report, answers }, acts);
}

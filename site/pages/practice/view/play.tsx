import { signal } from "@preact/signals";
import {
  type Change,
  freshSeed,
  type Puzzle,
  practiceCornerName,
  practiceCorners,
  Refusal,
  rungOf,
  rungs,
  type Said,
  type UnnamedCorner,
  withRound,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { refusalInWords } from "../../../say/refusal.js";
import { Button } from "../../../ui/button.js";
import { hush, Notice, say } from "../../../ui/notice.js";
import { type Asked, carFor } from "../puzzle-for.js";
import { linkTo } from "../puzzle-link.js";
import { onRung, openNow, rounds } from "../rounds.js";
import {
  driven,
  finished,
  keptRound,
  type Round,
  reported,
  roundOf,
  withCauses,
  withNamed,
} from "../state.js";
import { CausePart, NextPart } from "./answer.js";
import { Choose } from "./choose.js";
import { DrivePart } from "./drive.js";
import { History, keepRounds } from "./history.js";
import { ReportPart } from "./report.js";
import { ScorePart } from "./score.js";
import { Sharing } from "./sharing.js";

/** What the learner has chosen for the next puzzle, what is wrong with the link, and the round that is played. */
const choice = signal<Puzzle | undefined>(undefined);
const faults = signal<readonly string[]>([]);
const round = signal<Round | undefined>(undefined);
/** Which opening of the page this is, and which round on it: each has views of its own. */
const opened = signal(0);
const begun = signal(0);

let latest = 0;

/** Does work that takes a moment once the page has said so; a refusal is told in its place, a later work replaces it. */
function withNotice(sentence: string, work: () => void): void {
  say(sentence);
  latest += 1;
  const mine = latest;
  requestAnimationFrame(() =>
    setTimeout(() => {
      if (mine !== latest) return;
      hush();
      try {
        work();
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        say(words.cannotDrive(refusalInWords(error, reader)));
      }
    }),
  );
}

/** Opens the page on a puzzle. */
export function open({ puzzle, faults: told, begin }: Asked): void {
  choice.value = puzzle;
  faults.value = told;
  round.value = undefined;
  opened.value += 1;
  if (begin) start(puzzle);
}

function start(puzzle: Puzzle): void {
  withNotice(words.preparing, () => {
    round.value = roundOf(puzzle, carFor(puzzle));
    begun.value += 1;
    history.replaceState(null, "", linkTo(puzzle));
  });
}

const again = (puzzle: Puzzle): void => open({ puzzle, faults: [], begin: true });

/** Shows a round, and keeps it where it is over. */
function shown(done: Round): void {
  round.value = done;
  if (done.over === undefined) return;
  const kept = keptRound(done.scores, linkTo(done.puzzle), Date.now());
  void keepRounds(withRound(rounds.now.value, kept));
}

/** The page from the choice of a corner to the score. */
export function Play() {
  const puzzle = choice.value;
  if (puzzle === undefined) return null;
  const set = (changed: Puzzle) => {
    choice.value = changed;
  };
  return (
    <>
      {faults.value.length > 0 && (
        <p class="fault" role="alert">
          {faults.value.join(" ")}
        </p>
      )}
      <Choose
        key={opened.value}
        value={puzzle}
        set={set}
        begin={() => start(choice.value ?? puzzle)}
      />
      <Notice />
      <div>{round.value && <RoundView key={begun.value} now={round.value} />}</div>
      <History />
    </>
  );
}

/** A round as far as it has come. */
function RoundView({ now }: { readonly now: Round }) {
  const { drives, causes, named, over } = now;
  const drive = () => withNotice(words.driving, () => shown(driven(now)));
  const fileReport = (said: Said) => {
    const answered = reported(now, said);
    shown(answered);
    if (answered.over === undefined) withNotice(words.preparing, () => shown(withCauses(answered)));
  };
  const fileNamed = (filed: readonly Change[]) =>
    withNotice(words.preparing, () => shown(withNamed(now, filed)));
  const fileNext = (next: Change) => withNotice(words.driving, () => shown(finished(now, next)));
  return (
    <>
      <DrivePart round={now} drive={drive} />
      {drives?.changed && <ReportPart round={now} file={fileReport} />}
      {causes && <CausePart round={now} file={fileNamed} />}
      {named && <NextPart round={now} file={fileNext} />}
      {over && (
        <ScorePart round={now}>
          <AfterIt puzzle={now.puzzle} />
        </ScorePart>
      )}
    </>
  );
}

/** Any of the corners to choose from, but who drives one of their own stays there. */
function elsewhere(place: UnnamedCorner): UnnamedCorner {
  const all = Object.values(practiceCorners);
  const any = all[Math.floor(Math.random() * all.length)];
  return practiceCornerName(place) === undefined || any === undefined ? place : any;
}

/** What to do after a round: the next rung where it has just opened, another puzzle, the same again. */
function AfterIt({ puzzle }: { readonly puzzle: Puzzle }) {
  const next = rungOf(puzzle) + 1;
  const rung = next < openNow() ? rungs[next] : undefined;
  const fresh = { ...puzzle, seed: freshSeed(), place: elsewhere(puzzle.place) };
  return (
    <>
      {rung && (
        <Button id="next-rung" large work={() => again(onRung(fresh, rung))}>
          {words.nextRung(words.rungs[next] ?? "")}
        </Button>
      )}
      <Button id="another" large={rung === undefined} work={() => again(fresh)}>
        {words.another}
      </Button>
      <Button id="same-again" work={() => again(puzzle)}>
        {words.sameAgain}
      </Button>
      <Sharing link={linkTo(puzzle)} />
    </>
  );
}

import { signal } from "@preact/signals";
import { type Change, freshSeed, type Puzzle, Refusal, withRound } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { refusalInWords } from "../../../say/refusal.js";
import { Button } from "../../../ui/button.js";
import { hush, Notice, say } from "../../../ui/notice.js";
import { type Asked, carFor } from "../puzzle-for.js";
import { linkTo } from "../puzzle-link.js";
import { rounds } from "../rounds.js";
import { driven, finished, keptRound, type Round, roundOf, withCauses } from "../state.js";
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

/** Makes the next change, drives, scores and keeps the round. */
function finish(now: Round, next: Change): void {
  const done = finished(now, next);
  round.value = done;
  if (done.scores === undefined) return;
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
  const { drives, causes, cause, scores, puzzle } = now;
  const drive = () =>
    withNotice(words.driving, () => {
      round.value = driven(now);
    });
  const fileReport = (filed: NonNullable<Round["report"]>) => {
    const answered = { ...now, report: filed };
    round.value = answered;
    withNotice(words.preparing, () => {
      round.value = withCauses(answered);
    });
  };
  const fileCause = (filed: Change) => {
    round.value = { ...now, cause: filed };
  };
  return (
    <>
      <DrivePart round={now} drive={drive} />
      {drives?.changed && <ReportPart round={now} file={fileReport} />}
      {causes && <CausePart round={now} file={fileCause} />}
      {cause && (
        <NextPart round={now} file={(next) => withNotice(words.driving, () => finish(now, next))} />
      )}
      {scores && (
        <ScorePart round={now}>
          <Button id="another" large work={() => again({ ...puzzle, seed: freshSeed() })}>
            {words.another}
          </Button>
          <Button id="same-again" work={() => again(puzzle)}>
            {words.sameAgain}
          </Button>
          <Sharing link={linkTo(puzzle)} />
        </ScorePart>
      )}
    </>
  );
}

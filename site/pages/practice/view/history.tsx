import { type PracticeRound, pointsOf, rungOf, totalOf } from "@rollbook/lib";
import { cornerOf } from "../../../say/practice/puzzle.js";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import { Fold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { puzzleFrom } from "../puzzle-link.js";
import { rounds } from "../rounds.js";

/** Keeps these rounds and no others, and says so where the device refused. */
export async function keepRounds(all: readonly PracticeRound[]): Promise<void> {
  if (!(await rounds.set(all))) say(words.notKept);
}

function forget(): void {
  const old = rounds.now.value;
  say(words.forgotten, () => void keepRounds(old));
  void keepRounds([]);
}

/** The rounds kept on this device, the last one first. */
export function History() {
  const all = rounds.now.value;
  return (
    <Fold id="rounds" title={words.history}>
      {all.length === 0 ? (
        <p>{words.noHistory}</p>
      ) : (
        <>
          <ul>
            {[...all].reverse().map((round) => (
              <RoundRow key={round.at} {...round} />
            ))}
          </ul>
          <Button id="forget" work={forget}>
            {words.forget}
          </Button>
        </>
      )}
    </Fold>
  );
}

function RoundRow(round: PracticeRound) {
  const puzzle = puzzleFrom(round.link, 0)?.puzzle;
  const corner = puzzle === undefined ? "" : cornerOf(puzzle.place).name;
  const total = totalOf(round);
  const told = total === undefined ? words.watched : words.total(pointsOf(total));
  return (
    <li>
      {new Date(round.at).toLocaleDateString()} ·{" "}
      <a href={round.link}>
        {words.round(corner, words.rungs[puzzle ? rungOf(puzzle) : 0] ?? "", told)}
      </a>
    </li>
  );
}

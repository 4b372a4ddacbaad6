import { pointsOf } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { changeSize, leverName } from "../../../say/change.js";
import { inList } from "../../../say/in-list.js";
import { practiceLabel, scoreReasonInWords } from "../../../say/practice/score.js";
import { words } from "../../../say/practice/words.js";
import { List } from "../../../ui/list.js";
import type { Round, Scores } from "../state.js";

/** What one answer was worth and why, as soon as it is given. */
export function Scored({ name, round }: { readonly name: keyof Scores; readonly round: Round }) {
  const answer = round.scores[name];
  if (answer === undefined) return null;
  const told = answer.reasons.map((reason) => scoreReasonInWords(reason, round.practice, reader));
  return (
    <div class="scored" role="status">
      <p>
        <b>{words.partScore(words.parts[name], pointsOf(answer.score))}</b>
      </p>
      <List texts={[...saidBefore(name, round), ...told]} />
    </div>
  );
}

/** What the learner had answered, and for a report how sure of it. */
function saidBefore(
  name: keyof Scores,
  { report, named, next, practice, scores }: Round,
): string[] {
  if (name === "cause")
    return named === undefined
      ? []
      : [words.yourAnswer(inList(named.map((one) => practiceLabel(one, practice.car, reader))))];
  if (name === "next")
    return next === undefined
      ? []
      : [words.yourAnswer(`${leverName(next, reader)} ${changeSize(next, reader)}`)];
  if (report === "cannot tell") return [words.yourAnswer(words.saidNothing)];
  if (report?.confidence !== "certain") return [];
  return [(scores.report?.score ?? 0) > 0 ? words.certain.right : words.certain.wrong];
}

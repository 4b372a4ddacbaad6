import { type PhaseShifts, phaseNames, pointsOf } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import type { ComponentChildren } from "preact";
import { changeSize, leverName } from "../../../say/change.js";
import { addressOf } from "../../../say/figure-state.js";
import { practiceLabel, scoreReasonInWords } from "../../../say/practice/score.js";
import { whyOf } from "../../../say/practice/why.js";
import { words } from "../../../say/practice/words.js";
import { List } from "../../../ui/list.js";
import { shiftText } from "../../../ui/shift-bars.js";
import { type Round, type Scores, totalScore } from "../state.js";
import { Part } from "./part.js";
import { RowTable } from "./row-table.js";

/** What each answer was worth, why, and how far balance moved. */
export function ScorePart({
  round,
  children,
}: {
  readonly round: Round;
  /** What to do next. */
  readonly children: ComponentChildren;
}) {
  const { scores, report, cause, next, left, practice } = round;
  if (!scores || !report || !cause || !next || !left) return null;
  const named = {
    cause: practiceLabel(cause, practice.car, reader),
    next: `${leverName(next, reader)} ${changeSize(next, reader)}`,
  };
  const sure = report.confidence !== "certain" ? [] : [certainly(scores.report.score > 0)];
  return (
    <Part id="score" heading={words.score}>
      <p class="total">{words.total(pointsOf(totalScore(scores)))}</p>
      <Scored name="report" round={round} first={sure} />
      <Scored name="cause" round={round} first={[words.yourAnswer(named.cause)]} />
      <Why round={round} />
      <Scored name="next" round={round} first={[words.yourAnswer(named.next)]} />
      <h3>{words.shifts}</h3>
      <Shifts hidden={practice.shifts} left={left} />
      <p class="acts">{children}</p>
    </Part>
  );
}

const certainly = (right: boolean): string => (right ? words.certain.right : words.certain.wrong);

function Scored({
  name,
  round: { scores, practice },
  first,
}: {
  readonly name: keyof Scores;
  readonly round: Round;
  readonly first: readonly string[];
}) {
  if (scores === undefined) return null;
  const { score, reasons } = scores[name];
  const told = reasons.map((reason) => scoreReasonInWords(reason, practice, reader));
  return (
    <>
      <h3>{words.partScore(words.parts[name], pointsOf(score))}</h3>
      <List texts={[...first, ...told]} />
    </>
  );
}

/** Why the hidden change moved balance, and the figure that shows it. */
function Why({ round }: { readonly round: Round }) {
  const { because, shownBy } = whyOf(round.practice.hidden);
  return (
    <p class="why">
      <b>{words.why}</b> {spell(because)}{" "}
      <a href={addressOf(shownBy)}>{words.seeIt(Number.parseInt(shownBy.chapter, 10))}</a>.
    </p>
  );
}

function Shifts({ hidden, left }: Readonly<Record<"hidden" | "left", PhaseShifts>>) {
  return (
    <RowTable
      label={words.shifts}
      columns={[words.phase, words.byHidden, words.left]}
      rows={phaseNames.map((phase) => [phase, shiftText(hidden[phase]), shiftText(left[phase])])}
    />
  );
}

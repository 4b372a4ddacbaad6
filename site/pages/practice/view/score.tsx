import { type Change, type PhaseShifts, phaseNames, pointsOf } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { Surer, useSure } from "../../../bands/surer.js";
import { addressOf } from "../../../say/figure-state.js";
import { whyOf } from "../../../say/practice/why.js";
import { words } from "../../../say/practice/words.js";
import { surerWords } from "../../../say/surer.js";
import { ChapterLink } from "../../../ui/chapter-link.js";
import { type SureShifts, shiftWithin } from "../../../ui/shift-bars.js";
import { type Round, totalScore } from "../state.js";
import { Part } from "./part.js";
import { RowTable } from "./row-table.js";

/** What the round was worth, why the car moved, and how far. */
export function ScorePart({
  round,
  children,
}: {
  readonly round: Round;
  /** What to do next. */
  readonly children: ComponentChildren;
}) {
  const { scores, left, practice } = round;
  const { driver, hidden, shifts } = practice;
  const of = useMemo(() => {
    const { car, corner } = practice;
    return { car, measured: car, speed: corner.speed, changes: hidden };
  }, [practice, hidden]);
  const [one, ...more] = useSure(of)?.changes ?? [];
  const sure = more.length === 0 ? one?.phases : undefined;
  const total = totalScore(scores);
  const { name, habit } = words.drivers[driver];
  return (
    <Part id="score" heading={words.score}>
      <p class="total">{total === undefined ? words.watched : words.total(pointsOf(total))}</p>
      {hidden.map((change, i) => (
        <Why key={i} change={change} />
      ))}
      <p>{words.driverHabit(name, habit)}</p>
      <h3>{words.shifts}</h3>
      <Shifts hidden={shifts} left={left} sure={sure} />
      <Surer id="practice-sure" of={of} />
      <p class="acts">{children}</p>
    </Part>
  );
}

/** Why a hidden change moved balance, and the figure that shows it. */
function Why({ change }: { readonly change: Change }) {
  const { because, shownBy } = whyOf(change);
  return (
    <p class="why">
      <b>{words.why}</b> {spell(because)}{" "}
      <ChapterLink to={addressOf(shownBy)}>
        {words.seeIt(Number.parseInt(shownBy.chapter, 10))}
      </ChapterLink>
      .
    </p>
  );
}

function Shifts({
  hidden,
  left,
  sure,
}: {
  readonly hidden: PhaseShifts;
  readonly left: PhaseShifts | undefined;
  /** How sure the hidden change is, where it is one and that is known. */
  readonly sure: SureShifts | undefined;
}) {
  const columns = [words.phase, words.byHidden, ...(left ? [words.left] : [])];
  const rows = phaseNames.map((phase) => {
    const within = sure?.[phase].understeerMargin;
    const verdict = within && ` (${surerWords.verdicts[within.sign.verdict]})`;
    return [
      phase,
      `${shiftWithin(hidden[phase], within)}${verdict ?? ""}`,
      ...(left ? [shiftWithin(left[phase], within)] : []),
    ];
  });
  return <RowTable label={words.shifts} columns={columns} rows={rows} />;
}

import { type Car, phaseNames, type SheetRow, tightestOfEach, type Venue } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { limitName, shownTo, standingOf } from "../../../say/class-rules.js";
import { movedInWords } from "../../../say/figures.js";
import { toDoInWords } from "../../../say/plan.js";
import { Fold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import { shiftWithin } from "../../../ui/shift-bars.js";
import { asides, bewares } from "../day/beware.js";
import { RunShifts, useSureRun } from "../parts/sure-shifts.js";
import { words } from "../words.js";

const { plan } = words;

interface Of {
  readonly row: SheetRow;
}

/** The car of the plan and where it drives. */
interface Where {
  readonly measured: Car;
  readonly venue: Venue;
}

/** What the model says of one run of the plan. */
export function Outcome({ row, ...sampled }: Of & Where) {
  const id = `run-${row.run}`;
  const toDo = toDoInWords(row, reader);
  const end = row.startsAt + row.lasts;
  const moves = row.moved === undefined ? [] : movedInWords(row.moved, reader);
  return (
    <>
      <p class="when">{plan.from(words.hours(row.startsAt), words.hours(end))}</p>
      <Sentences texts={bewares(row)} kind="beware" />
      {toDo.length > 0 ? (
        <List texts={toDo} kind="to-do" />
      ) : (
        <p class="quiet">{plan.nothingToDo}</p>
      )}
      <RunShifts id={`${id}-sure`} row={row} caption={plan.shifts} {...sampled} />
      <Sentences texts={asides(row)} kind="quiet" />
      <Fold id={`${id}-margins`} title={plan.margins}>
        <Margins row={row} />
      </Fold>
      {toDo.length > 0 && (
        <Fold id={`${id}-corners`} title={plan.byCorner}>
          <ByCorner row={row} {...sampled} />
        </Fold>
      )}
      {moves.length > 0 && (
        <Fold id={`${id}-moves`} title={plan.moves}>
          <List texts={moves} />
        </Fold>
      )}
    </>
  );
}

function Sentences({ texts, kind }: { readonly texts: readonly string[]; readonly kind: string }) {
  return (
    <>
      {texts.map((sentence) => (
        <p key={sentence} class={kind}>
          {spell(sentence)}
        </p>
      ))}
    </>
  );
}

function Margins({ row: { margins } }: Of) {
  if (margins.length === 0) return <p>{plan.noLimits}</p>;
  const show = shownTo(reader);
  const texts = tightestOfEach(margins).map((margin) =>
    plan.margin(limitName(margin, show), standingOf(margin, show)),
  );
  return <List texts={texts} />;
}

/** Corners down, parts of the corner across. */
function ByCorner({ row, ...where }: Of & Where) {
  const { cells, run } = row;
  const { shifts } = useSureRun(row, where);
  const corners = [...new Set(cells.map(({ corner }) => corner))];
  const shiftAt = (corner: string, phase: string) =>
    cells.find((cell) => cell.corner === corner && cell.phase === phase)?.shift ?? 0;
  const label = `${plan.byCorner}, ${plan.run(run)}`;
  return (
    <div class="table" role="region" tabIndex={0} aria-label={label}>
      <table>
        <thead>
          <tr>
            <td />
            {phaseNames.map((phase) => (
              <th key={phase} scope="col">
                {phase}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {corners.map((corner) => (
            <tr key={corner}>
              <th scope="row">{corner}</th>
              {phaseNames.map((phase) => (
                <td key={phase} class="number">
                  {shiftWithin(shiftAt(corner, phase), shifts?.[phase].understeerMargin)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

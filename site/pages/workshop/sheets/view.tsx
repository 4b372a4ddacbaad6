import { type CarSheet, runsOfDay } from "@rollbook/lib";
import { useEffect } from "preact/hooks";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../day/draft.js";
import { dayNow } from "../day/open-day.js";
import { useWorked } from "../day/use-worked.js";
import { worked } from "../day/worked.js";
import { NoDay } from "../parts/no-day.js";
import { words } from "../words.js";
import { isOnCard } from "./change-cards.js";
import { allKinds, chosen, forgetKey, isChosen, type Kind } from "./chosen.js";
import { Controls } from "./controls.js";
import { SheetOf } from "./sheet-of.js";
import { openSheetWall, SheetWall } from "./sheet-wall.js";

const { sheets: said } = words;

/** What to print, on which paper, and the sheets themselves. */
export function Sheets({ open }: { readonly open: boolean }) {
  const day = dayNow.value;
  const noRuns = day !== undefined && runsOfDay(day) === 0 ? words.run.noRuns : undefined;
  return (
    <>
      <h2 tabIndex={-1}>{words.views.sheets}</h2>
      {day === undefined || noRuns !== undefined ? (
        <NoDay sentence={noRuns} />
      ) : (
        <SheetsOf day={day} open={open} />
      )}
    </>
  );
}

function SheetsOf({ day, open }: { readonly day: Draft; readonly open: boolean }) {
  const { current } = useWorked(day, open);
  useEffect(() => forgetKey, [open]);
  const { rows = [], sheets = [] } = current ? worked(day) : {};
  const of = { day, rows, sheets };
  const shown = allKinds.filter((kind) => isChosen(kind) && isSomething(kind, sheets));
  const forAll = shown.filter((kind) => kind !== "key" && kind !== "home");
  return (
    <>
      <Controls
        hasCards={shown.includes("cards")}
        onTheWall={() => (forAll.length > 0 ? openSheetWall() : say(said.nothing))}
      />
      <div class="papers" id="papers" data-paper={chosen.value.paper}>
        {!current && <p>{said.working}</p>}
        {current && shown.length === 0 && <p>{said.nothing}</p>}
        {current && shown.map((kind) => <SheetOf key={kind} kind={kind} {...of} />)}
      </div>
      <SheetWall kinds={forAll} {...of} />
    </>
  );
}

/** Cards only where hands go to the car; of the other kinds there is always one. */
const isSomething = (kind: Kind, sheets: readonly CarSheet[]): boolean =>
  kind !== "cards" || sheets.some(({ rows }) => rows.some(isOnCard));

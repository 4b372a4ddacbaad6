import { type Car, type ChangeBand, isBrakesRearwards, type Proposal } from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import {
  easedNotes,
  leanNote,
  nearTippingNotes,
  onStopClauses,
} from "../../../say/balance-notes.js";
import { changeLabel } from "../../../say/change.js";
import { seatsKeptInWords } from "../../../say/class-rules.js";
import { putBackInWords, reasonInWords } from "../../../say/diagnosis.js";
import { movedInWords } from "../../../say/figures.js";
import { costInWords, whyItHelps } from "../../../say/proposal.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { Button } from "../../../ui/button.js";
import { Fold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import { say } from "../../../ui/notice.js";
import { ShiftBars } from "../../../ui/shift-bars.js";
import { Bewares } from "../parts/bewares.js";
import { ChangeInTurn } from "../parts/change-in-turn.js";
import { insertNext } from "../plan/steps.js";
import { words } from "../words.js";

interface Proposed {
  readonly one: Proposal;
  /** Before the change. */
  readonly car: Car;
  readonly carNumber: number;
  /** Minutes that a change may take on this car; nothing where nobody said. */
  readonly changeMinutes: number | undefined;
  readonly index: number;
  /** How sure it is, once that is known. */
  readonly band: ChangeBand | undefined;
}

/** A single change to make next: what it does, what speaks for it, and what goes with it. */
export function ProposedChange({ one, car, carNumber, changeMinutes, index, band }: Proposed) {
  const { change, phases, minutes, nearTipping } = one;
  const changed = useMemo(() => [change], [change]);
  const moves = movedInWords(one.moved, reader);
  const reasons = one.reasons.map((reason) => reasonInWords(reason, reader));
  const brakes = isBrakesRearwards(change) ? [words.safety.brakesRearwards] : [];
  return (
    <li>
      <h4>{changeLabel(change, car, reader)}</h4>
      <Bewares sentences={[...brakes, ...nearTippingNotes(nearTipping, [], format)]} />
      <ChangeInTurn car={car} changes={changed} />
      <p>
        <b>{said.why}.</b> {whyItHelps(one, reader)}
      </p>
      <List texts={[...reasons, ...asidesOf(one)]} />
      <Costs one={one} />
      <p class="quiet">{said.minutes(Math.ceil(minutes), changeMinutes)}</p>
      <ShiftBars
        phases={phases}
        caption={said.effect}
        sure={band?.phases ? (band.putBack ?? band.phases) : "waiting"}
      />
      <PutBack one={one} />
      {moves.length > 0 && (
        <Fold id={`side-${index}`} title={said.sideEffects}>
          <List texts={moves} />
        </Fold>
      )}
      <p class="tools">
        <Button id={`to-plan-${index}`} work={() => addToPlan(one, carNumber)}>
          {said.addToPlan}
        </Button>
      </p>
    </li>
  );
}

function Costs({ one: { costs } }: { readonly one: Proposal }) {
  if (costs.length === 0) return <p class="quiet">{said.noCosts}</p>;
  return (
    <div>
      <p>{said.costs}:</p>
      <List texts={costs.map((cost) => costInWords(cost, reader))} />
    </div>
  );
}

function PutBack({ one: { putBack, keptFromPutBack } }: { readonly one: Proposal }) {
  const kept = keptFromPutBack && seatsKeptInWords(keptFromPutBack, format);
  if (putBack.length === 0) return <p class="quiet">{kept ?? said.nothingBack}</p>;
  return (
    <div>
      {kept !== undefined && <p class="quiet">{kept}</p>}
      <p>{said.putBack}:</p>
      <List texts={putBack.map(putBackInWords)} />
    </div>
  );
}

/** What to know of a change besides what it does to balance. */
function asidesOf({ change, onStops, eased, leanCostUnknown }: Proposal): string[] {
  const end = "end" in change ? [change.end] : [];
  return [
    ...onStopClauses(onStops, "comes to be").map(said.clause),
    ...easedNotes(eased, format),
    ...(leanCostUnknown ? leanNote(end) : []),
  ];
}

/** As the next run; what is for between two sessions has the minutes that it takes. */
function addToPlan({ change, fits, minutes }: Proposal, car: number): void {
  const own = fits ? {} : { minutes: { change: Math.ceil(minutes) } };
  const added = insertNext({ kind: "change", change, ...own }, [car]);
  if (added !== undefined) say(said.added(added.run), added.takeBack);
}

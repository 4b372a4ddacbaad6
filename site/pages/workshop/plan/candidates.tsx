import { useSignal } from "@preact/signals";
import {
  type Candidate,
  type Car,
  candidatesFor,
  Refusal,
  standingCar,
  type Venue,
  venueSpeed,
  whyNotRanked,
} from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { dampersNote, pressureNote } from "../../../say/balance-notes.js";
import { changeLabel } from "../../../say/change.js";
import { Button } from "../../../ui/button.js";
import { shiftText } from "../../../ui/shift-bars.js";
import { useWorkAtRest } from "../../../ui/work-at-rest.js";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";
import { appendStep, editedCar } from "./steps.js";

const { plan } = words;

/** Changes that are large enough to feel, worked out while the fold is open. */
export function Candidates({ day, open }: { readonly day: Draft; readonly open: boolean }) {
  const { venue } = day;
  const own = day.others?.find(({ carNumber }) => carNumber === editedCar.value);
  const { car } = own ?? day;
  const unfolded = useSignal(false);
  const { output = [], current } = useWorkAtRest(
    JSON.stringify([car, venue.corners]),
    open && unfolded.value,
    () => candidatesOf(car, venue),
  );
  const toggled = ({ open }: { readonly open: boolean }) => {
    unfolded.value = open;
  };
  return (
    <details id="candidates" onToggle={({ currentTarget }) => toggled(currentTarget)}>
      <summary>{plan.candidates}</summary>
      <p class="quiet">{plan.candidatesHelp}</p>
      <p class="quiet">{dampersNote}</p>
      <p class="quiet">{pressureNote(endsNotRanked(car)).map((note) => spell(note))}</p>
      <ul class="candidates">
        {!current && <li>{plan.working}</li>}
        {current && output.length === 0 && <li>{plan.noCandidates}</li>}
        {current &&
          output.map((candidate, i) => (
            <CandidateItem key={i} candidate={candidate} index={i} car={car} />
          ))}
      </ul>
    </details>
  );
}

/** Ends of a car whose changes of pressure are in no order. */
const endsNotRanked = (car: Car) =>
  (["front", "rear"] as const).filter(
    (end) => whyNotRanked(car, { lever: "tyrePressure", end }) !== undefined,
  );

function candidatesOf(car: Car, venue: Venue): Candidate[] {
  try {
    return candidatesFor(standingCar(car), venueSpeed(venue));
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

function CandidateItem({
  candidate: { change, shift },
  index,
  car,
}: {
  readonly candidate: Candidate;
  readonly index: number;
  readonly car: Car;
}) {
  const label = changeLabel(change, car, reader);
  const add = () => appendStep({ kind: "change", change });
  return (
    <li>
      <Button id={`candidate-${index}`} aria-label={plan.addThis(label)} work={add}>
        {plan.add}
      </Button>
      <span>{label}</span>
      <span class="number">{shiftText(shift)}</span>
    </li>
  );
}

import type { Signal } from "@preact/signals";
import { type Case, type Diagnosis, type Eased, placesOf, venueSpeed } from "@rollbook/lib";
import { format, reader, spell } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import type { BandsSoFar } from "../../../bands/bands.js";
import { WouldMakeSurer } from "../../../bands/surer.js";
import { easedNotes, nearTippingNotes } from "../../../say/balance-notes.js";
import { leverName } from "../../../say/change.js";
import { askInWords, outcomeInWords, whyNotInWords } from "../../../say/diagnosis.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { Fold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import { Bewares } from "../parts/bewares.js";
import { words } from "../words.js";
import { ProposedChange } from "./proposal.js";
import { useSureness } from "./sure.js";

interface Told {
  readonly diagnosis: Diagnosis;
  readonly of: Pick<Case, "car" | "measured">;
  readonly bands: Signal<BandsSoFar | undefined>;
  /** Which car of the plan it is. */
  readonly carNumber: number;
}

/** What to ask, what to change next, and why not the others. */
export function DiagnosisToldOf({ diagnosis, of: { car, measured }, bands, carNumber }: Told) {
  const { outcome, asks, notProposed, nearTipping, eased } = diagnosis;
  const asked = [...new Set(asks.map((ask) => askInWords(ask, reader)))];
  const others = notProposed.map(({ place, why }) =>
    said.because(leverName(place, reader), whyNotInWords(why, car, reader)),
  );
  return (
    <>
      <p class="summary">{outcomeInWords(outcome, car, reader)}</p>
      <Bewares sentences={nearTippingNotes(nearTipping, [], format)} />
      <EasedNotes eased={eased} />
      {asked.length > 0 && (
        <>
          <h3>{said.asks}</h3>
          <List texts={asked} />
        </>
      )}
      <Proposals diagnosis={diagnosis} of={{ car, measured }} bands={bands} carNumber={carNumber} />
      {others.length > 0 && (
        <Fold id="not-proposed" title={said.others(others.length)}>
          <List texts={others} />
        </Fold>
      )}
    </>
  );
}

function EasedNotes({ eased }: { readonly eased: readonly Eased[] }) {
  return easedNotes(eased, format).map((note) => (
    <p class="quiet" key={note}>
      {spell(note)}
    </p>
  ));
}

/** The single changes, the best first, and how sure each is as far as that is worked out. */
function Proposals({ diagnosis, of: { car, measured }, bands, carNumber }: Told) {
  const { proposals, targets } = diagnosis;
  const wanted = useMemo(
    () => ({
      ...{ car, measured, speed: venueSpeed(placesOf(targets)) },
      changes: proposals.map(({ change }) => change),
    }),
    [diagnosis],
  );
  useSureness(wanted, bands);
  if (proposals.length === 0) return null;
  const sure = bands.value;
  return (
    <>
      <h3>{said.proposals}</h3>
      <p class="quiet">
        {sure === undefined ? words.sure.working : words.sure.progress(sure.count, sure.of)}
      </p>
      <p class="quiet">{words.sure.help}</p>
      {sure && <WouldMakeSurer bands={sure} car={measured} />}
      <ol class="proposals">
        {proposals.map((one, i) => (
          <ProposedChange
            key={i}
            one={one}
            car={car}
            carNumber={carNumber}
            index={i}
            band={sure?.changes[i]}
          />
        ))}
      </ol>
    </>
  );
}

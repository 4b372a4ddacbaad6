import type { Signal } from "@preact/signals";
import {
  type Ask,
  type Case,
  type Diagnosis,
  type Eased,
  placesOf,
  type Report,
  venueSpeed,
} from "@rollbook/lib";
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
  readonly of: Pick<Case, "car" | "measured" | "named" | "changeMinutes">;
  /** The reports that it goes by. */
  readonly reports: readonly Report[];
  readonly run: number;
  readonly bands: Signal<BandsSoFar | undefined>;
  /** Which car of the plan it is. */
  readonly carNumber: number;
}

/** What to ask, what to change next, and why not the others. */
export function DiagnosisToldOf(told: Told) {
  const { diagnosis, of, reports, run } = told;
  const { car } = of;
  const { outcome, asks, notProposed, nearTipping, eased } = diagnosis;
  const whoseIs = ({ reports: about }: Ask) => [
    ...new Set(
      about.map((i) => of.named.find(({ report }) => report === reports[i])?.driver ?? ""),
    ),
  ];
  const asked = [...new Set(asks.map((ask) => askInWords(ask, whoseIs(ask), run, reader)))];
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
      <Proposals {...told} />
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
function Proposals({ diagnosis, of, bands, carNumber }: Told) {
  const { proposals, targets } = diagnosis;
  const { car, measured, changeMinutes } = of;
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
  const listed = proposals.map((one, index) => ({ one, index }));
  const between = listed.filter(({ one }) => !one.fits);
  const told = ({ one, index }: (typeof listed)[number]) => (
    <ProposedChange
      key={index}
      {...{ one, index, car, carNumber, changeMinutes }}
      band={sure?.changes[index]}
    />
  );
  return (
    <>
      <h3>{said.proposals}</h3>
      <p class="quiet">
        {sure === undefined ? words.sure.working : words.sure.progress(sure.count, sure.of)}
      </p>
      <p class="quiet">{words.sure.help}</p>
      {sure && <WouldMakeSurer bands={sure} car={measured} />}
      <ol class="proposals">{listed.filter(({ one }) => one.fits).map(told)}</ol>
      {between.length > 0 && (
        <>
          <h3>{said.between}</h3>
          <ol class="proposals">{between.map(told)}</ol>
        </>
      )}
    </>
  );
}

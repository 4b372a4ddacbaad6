import { useSignal } from "@preact/signals";
import { differenceOfSetUps, type Log, type Version, versionsOf } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import type { ComponentChild } from "preact";
import { useMemo } from "preact/hooks";
import { changeLabel } from "../../../say/change.js";
import { log as said } from "../../../say/workshop/log.js";
import { ChoiceField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import { Table } from "../../../ui/table.js";
import { timeOf } from "./time.js";

const { id, at, car, changes, note } = said.columns;
const columns = [id, at, car, changes, note];

/** Every version of every set-up, and what is new in it; any two can be laid side by side. */
export function SetUps({ log }: { readonly log: Log }) {
  const versions = useMemo(() => versionsOf(log), [log]);
  const rows = versions.map((version) => [
    version.entry.id,
    timeOf(version.entry.at),
    version.entry.car.name,
    newIn(version),
    version.entry.note ?? "",
  ]);
  return (
    <>
      <h3>{said.setUps}</h3>
      {versions.length === 0 ? (
        <p class="quiet">{said.nothing}</p>
      ) : (
        <Table label={said.setUps} columns={columns} rows={rows} />
      )}
      {versions.length > 1 && <Compare versions={versions} />}
    </>
  );
}

function newIn({ entry, before, changes, other }: Version): ComponentChild {
  if (entry.follows === undefined) return said.asMeasured;
  const labels = changes.map((change) => changeLabel(change, before ?? entry.car, reader));
  const lines = [...labels, ...(other.length > 0 ? [said.otherFields(other.join(", "))] : [])];
  return lines.length === 0 ? said.sameAsBefore : <List texts={lines} />;
}

/** Two of the versions, by their places in the list; the first and the last before anybody chose. */
function Compare({ versions }: { readonly versions: readonly Version[] }) {
  const from = useSignal("0");
  const to = useSignal<string | undefined>(undefined);
  const last = String(versions.length - 1);
  const choices = versions.map(
    ({ entry }, i) => [String(i), `${entry.id}, ${entry.car.name}, ${timeOf(entry.at)}`] as const,
  );
  return (
    <Fold id="compare" title={said.compare}>
      <div class="fields">
        <ChoiceField
          id="compare-from"
          label={said.compareFrom}
          choices={choices}
          value={from.value}
          choose={(at) => {
            from.value = at;
          }}
        />
        <ChoiceField
          id="compare-to"
          label={said.compareTo}
          choices={choices}
          value={to.value ?? last}
          choose={(at) => {
            to.value = at;
          }}
        />
      </div>
      <div role="status" id="differences">
        <Differences from={versions[Number(from.value)]} to={versions[Number(to.value ?? last)]} />
      </div>
    </Fold>
  );
}

function Differences({
  from,
  to,
}: {
  readonly from: Version | undefined;
  readonly to: Version | undefined;
}) {
  if (from === undefined || to === undefined) return null;
  const before = from.entry.car;
  const { changes, other } = differenceOfSetUps(before, to.entry.car);
  const lines = [...changes.map((change) => changeLabel(change, before, reader)), ...other];
  return lines.length === 0 ? <p>{said.noDifference}</p> : <List texts={lines} />;
}

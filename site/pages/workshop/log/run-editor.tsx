import { useSignal } from "@preact/signals";
import {
  type Conditions,
  MOST_LAPS,
  type RoadState,
  type RunEntry,
  readLaps,
  roadStates,
} from "@rollbook/lib";
import { log as said } from "../../../say/workshop/log.js";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField, TextField } from "../../../ui/field.js";
import { sayKept } from "../parts/say-kept.js";
import { type RunDraft, runDraft } from "./drafts.js";

/** What can be added to a run after it was driven. */
export function RunEditor({ entry }: { readonly entry: RunEntry }) {
  const fault = useSignal<string | undefined>(undefined);
  const draft = runDraft.now.value;
  if (draft === undefined) return null;
  const save = () => {
    const read = readLaps(draft.laps);
    fault.value = "laps" in read ? undefined : lapsFault(read);
    if (!("laps" in read)) return;
    write(versionOf(entry, conditionsOf(draft), read.laps));
    runDraft.clear();
    sayKept(said.runSaved);
  };
  return (
    <>
      <h4>{said.editRun(entry.driver, String(entry.runNumber ?? ""))}</h4>
      <RunFields draft={draft} lapsFault={fault.value} />
      <p class="tools">
        <Button id="run-save" work={save}>
          {said.save}
        </Button>
        <Button id="run-cancel" work={() => runDraft.clear()}>
          {said.cancel}
        </Button>
      </p>
    </>
  );
}

const lapsFault = (read: { fault: string } | { tooMany: number }): string =>
  "fault" in read ? said.lapsFault(read.fault) : said.tooManyLaps(MOST_LAPS);

const roads = [["", said.roadNotSaid], ...roadStates.map((one) => [one, one] as const)] as const;

const withRoad = ({ road: _, ...draft }: RunDraft, chosen: "" | RoadState): RunDraft =>
  chosen === "" ? draft : { ...draft, road: chosen };

function RunFields({
  draft,
  lapsFault,
}: {
  readonly draft: RunDraft;
  readonly lapsFault: string | undefined;
}) {
  const keep = (changed: RunDraft) => void runDraft.setTyped(changed);
  return (
    <>
      <ChoiceField
        id="run-road"
        label={said.road}
        choices={roads}
        value={draft.road ?? ""}
        choose={(road) => keep(withRoad(draft, road))}
      />
      <TextField
        id="run-conditions"
        label={said.columns.conditions}
        maxLength={1000}
        value={draft.conditions}
        type={(conditions) => keep({ ...draft, conditions })}
      />
      <TextField
        id="run-laps"
        label={said.columns.laps}
        note={said.lapsNote}
        maxLength={4000}
        value={draft.laps}
        fault={lapsFault}
        type={(laps) => keep({ ...draft, laps })}
      />
    </>
  );
}

function conditionsOf({ road, conditions }: RunDraft): Conditions {
  const words = conditions.trim();
  return { ...(road && { road }), ...(words !== "" && { words }) };
}

/** The run as it now is; it stands for the entry before. */
function versionOf(entry: RunEntry, conditions: Conditions, lapTimes: readonly number[]) {
  const { id, at: _, author: _author, conditions: _old, lapTimes: _laps, ...kept } = entry;
  return {
    ...kept,
    replaces: id,
    ...(Object.keys(conditions).length > 0 && { conditions }),
    ...(lapTimes.length > 0 && { lapTimes }),
  };
}

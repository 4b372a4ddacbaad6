import { useSignal } from "@preact/signals";
import { comparedIn, type MeasurementEntry, measuredIn, measuredOn } from "@rollbook/lib";
import { useMemo } from "preact/hooks";
import { measured as said } from "../../../say/workshop/measured.js";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField, TextField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { Withdraw } from "../log/withdraw.js";
import { MeasuredTable } from "../parts/measured-table.js";
import { sayKept } from "../parts/say-kept.js";
import {
  draft,
  type MeasuredDraft,
  measurementInWords,
  measurementsFrom,
  unitIn,
} from "./measured-draft.js";
import type { Topic } from "./topic.js";

/** The third column: what was measured of what was tested, beside what was felt and predicted. */
export function Measured(topic: Topic) {
  const { log, event, run, car, driver } = topic;
  const found = useMemo(() => measuredIn(log, event, run, car), [log, event, run, car]);
  const compared = useMemo(() => {
    const all = comparedIn(log, event, run, car);
    return driver === undefined ? all : all.filter((one) => one.driver === driver);
  }, [log, event, run, car, driver]);
  return (
    <>
      {run > 1 && (
        <>
          <h3>{said.heading}</h3>
          <MeasuredTable found={found} compared={compared} isOwn={driver !== undefined} />
          <p class="quiet">{said.own}</p>
        </>
      )}
      <Fold id="measured-write" title={said.write}>
        <Filed topic={topic} />
        <Form topic={topic} />
      </Fold>
    </>
  );
}

/** What is in the log of this run already. */
function Filed({ topic: { log, event, run, car } }: { readonly topic: Topic }) {
  const own = measuredOn(log, event).filter(
    ({ runNumber, carNumber = 1 }) => runNumber === run && carNumber === car,
  );
  if (own.length === 0) return null;
  return (
    <ul class="filed">
      {own.map((entry, i) => (
        <FiledOne key={entry.id} entry={entry} id={`measured-back-${i}`} />
      ))}
    </ul>
  );
}

function FiledOne({ entry, id }: { readonly entry: MeasurementEntry; readonly id: string }) {
  const text = measurementInWords(entry);
  return (
    <li>
      <span>{text}</span> <Withdraw id={id} of={entry.id} what={text} />
    </li>
  );
}

function Form({ topic: { event, run, car } }: { readonly topic: Topic }) {
  const fault = useSignal("");
  const now = draft.now.value;
  const keep = (more: Partial<MeasuredDraft>) => void draft.setTyped({ ...now, ...more });
  const save = () => {
    const read = measurementsFrom(now);
    fault.value = "fault" in read ? read.fault : "";
    if ("fault" in read) return;
    const about = { day: event.id, runNumber: run, ...(car > 1 && { carNumber: car }) };
    const driver = now.driver === "" ? {} : { driver: now.driver };
    write({ kind: "measurement", ...about, ...driver, measurements: read.measurements });
    void draft.set({ ...now, laps: "", roll: "", rollWithin: "" });
    sayKept(said.kept(run));
  };
  return (
    <>
      <ChoiceField
        id="measured-driver"
        label={said.driver}
        choices={[["", "–"], ...event.drivers.map((name) => [name, name] as const)]}
        value={now.driver}
        choose={(driver) => keep({ driver })}
      />
      <Line of="radius" note={unitIn("length")} now={now} keep={keep} />
      <Line of="laps" note={said.lapsNote} now={now} keep={keep} />
      <Line of="roll" note={unitIn("rollGradient")} now={now} keep={keep} />
      <Line of="rollWithin" note={unitIn("rollGradient")} now={now} keep={keep} />
      <p class="fault" role="alert">
        {fault.value}
      </p>
      <p class="tools">
        <Button id="measured-keep" work={save}>
          {said.keep}
        </Button>
      </p>
    </>
  );
}

interface Lined {
  readonly of: "radius" | "laps" | "roll" | "rollWithin";
  readonly note: string;
  readonly now: MeasuredDraft;
  readonly keep: (more: Partial<MeasuredDraft>) => void;
}

function Line({ of: key, note, now, keep }: Lined) {
  return (
    <TextField
      id={`measured-${key}`}
      label={said[key]}
      note={note}
      numeric={key !== "laps"} // the decimal keyboard of some phones has no space
      maxLength={400}
      value={now[key]}
      type={(text) => keep({ [key]: text })}
    />
  );
}

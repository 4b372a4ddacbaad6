import { signal } from "@preact/signals";
import { words } from "../../../say/measure/ride.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { FileInput } from "../../../ui/file-input.js";
import { say } from "../../../ui/notice.js";
import { carAtHand, keepWhole, lookAt } from "../state.js";
import { workedOut } from "../work/beside.js";
import {
  guessed,
  headsOf,
  type Kind,
  type Mapping,
  roles,
  spoken,
  unitsOf,
} from "../work/table.js";

interface Chosen {
  readonly text: string;
  readonly heads: readonly string[];
  readonly mapping: Mapping;
}

const table = signal<Chosen | undefined>(undefined);
const fault = signal<string | undefined>(undefined);
const LARGEST = 50e6; // bytes

async function choose([file]: readonly File[]): Promise<void> {
  if (file === undefined) return;
  table.value = undefined;
  fault.value = undefined;
  if (file.size > LARGEST) {
    fault.value = words.tooLarge;
    return;
  }
  const text = await file.text();
  const heads = headsOf(text);
  if (heads.length < 2) {
    fault.value = words.noHeads;
    return;
  }
  table.value = { text, heads, mapping: guessed(heads) };
}

async function takeIn({ text, mapping }: Chosen): Promise<void> {
  fault.value = undefined;
  const answer = await workedOut({ kind: "taken", text, mapping });
  if (answer.kind === "refused") fault.value = answer.why;
  if (answer.kind !== "taken") return;
  const begun = new Date().toISOString();
  const ride = { id: begun, begun, car: carAtHand.value.name, from: "table" } as const;
  if (!(await keepWhole(ride, answer.ride))) return;
  table.value = undefined;
  say(words.takenIn);
  await lookAt(ride.id);
}

function change(mapping: Mapping): void {
  if (table.value) table.value = { ...table.value, mapping };
}

function Columns({ heads, mapping }: Chosen) {
  const { columns, units } = mapping;
  const choices = [
    ["", words.noColumn],
    ...heads.map((head, i) => [String(i), head] as const),
  ] as const;
  return (
    <fieldset class="mapping">
      <legend>{words.mapping}</legend>
      {roles.map((role) => (
        <ChoiceField
          key={role}
          id={`column-${role}`}
          label={words.columnFor(spoken(role))}
          choices={choices}
          value={String(columns[role] ?? "")}
          choose={(next) => {
            const { [role]: _, ...others } = columns;
            change({ units, columns: next === "" ? others : { ...others, [role]: Number(next) } });
          }}
        />
      ))}
      {(Object.keys(unitsOf) as Kind[]).map((kind) => (
        <ChoiceField
          key={kind}
          id={`unit-${kind}`}
          label={words.unitFor(kind)}
          choices={Object.keys(unitsOf[kind]).map((unit) => [unit, unit] as const)}
          value={units[kind]}
          choose={(unit) => change({ columns, units: { ...units, [kind]: unit } })}
        />
      ))}
    </fieldset>
  );
}

/** A table of samples, and which of its columns is what. */
export function TakeIn() {
  const now = table.value;
  return (
    <>
      <h2>{words.tableHead}</h2>
      <p>{words.tableLead}</p>
      <p class="field">
        <label for="ride-table">{words.choose}</label>
        <FileInput id="ride-table" accept=".csv,.txt,text/csv" take={choose} />
      </p>
      {now && <Columns {...now} />}
      <p class="fault" role="alert" id="ride-table-fault">
        {fault.value}
      </p>
      {now && (
        <Button id="ride-take-in" work={() => void takeIn(now)}>
          {words.takeIn}
        </Button>
      )}
    </>
  );
}

import { type Signal, useSignal } from "@preact/signals";
import { sameName } from "@rollbook/lib";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { TextField } from "../../../ui/field.js";
import { focusSoon } from "../../../ui/focus.js";
import { knownDay } from "../day/known-day.js";
import { words } from "../words.js";
import { beginReport, reporting } from "./state.js";

const { report: said } = words;
const MOST_RUNS = 30;

/** The runs of the day, or as many as a day may have. */
function runChoices() {
  const runs = Math.min(MOST_RUNS, knownDay()?.steps.length || 8);
  return Array.from({ length: runs }, (_, i) => ({ value: i + 1, text: `${i + 1}` }));
}

/** Who is chosen so far: a name of the list, or one that is typed. */
function useChosen() {
  const { driver, run } = reporting.now.value;
  const names = knownDay()?.drivers ?? [];
  const known = names.find((name) => sameName(name, driver));
  return {
    names,
    typed: useSignal(known === undefined ? driver : ""),
    tapped: useSignal(known),
    run: useSignal(run),
    fault: useSignal<string | undefined>(undefined),
  };
}

/** The drivers of the day, to tap. */
function Names({
  of,
  typed,
  tapped,
}: {
  readonly of: readonly string[];
  readonly typed: Signal<string>;
  readonly tapped: Signal<string | undefined>;
}) {
  if (of.length === 0) return null;
  const choose = (name: string) => {
    tapped.value = name;
    typed.value = "";
  };
  return (
    <Chips
      id="who"
      question={said.name}
      choices={of.map((name) => ({ value: name, text: name }))}
      chosen={typed.value === "" ? tapped.value : undefined}
      choose={choose}
    />
  );
}

/** Asks who reports on which run. */
export function Who() {
  const { names, typed, tapped, run, fault } = useChosen();
  const goOn = () => {
    const name = typed.value.trim() || tapped.value;
    fault.value = name === undefined ? said.whoFault : undefined;
    if (name === undefined) return focusSoon("#who-name");
    beginReport(name, run.value);
    focusSoon("#report h3");
  };
  return (
    <>
      <h3>{said.who}</h3>
      <Names of={names} typed={typed} tapped={tapped} />
      <TextField
        id="who-name"
        label={names.length > 0 ? said.another : said.name}
        value={typed.value}
        fault={fault.value}
        type={(text) => {
          typed.value = text;
        }}
      />
      <Chips
        id="who-run"
        question={said.run}
        choices={runChoices()}
        chosen={run.value}
        choose={(chosen) => {
          run.value = chosen;
        }}
        kind="scale"
      />
      <Button id="who-go" large work={goOn}>
        {said.go}
      </Button>
    </>
  );
}

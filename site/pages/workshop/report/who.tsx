import { useSignal } from "@preact/signals";
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

/** Asks who reports on which run. */
export function Who() {
  const { driver, run } = reporting.now.value;
  const names = knownDay()?.drivers ?? [];
  const known = names.find((name) => sameName(name, driver));
  const typed = useSignal(known === undefined ? driver : "");
  const tapped = useSignal(known);
  const chosenRun = useSignal(run);
  const fault = useSignal<string | undefined>(undefined);
  const runs = Math.min(MOST_RUNS, knownDay()?.steps.length || 8);
  const goOn = () => {
    const name = typed.value.trim() || tapped.value;
    fault.value = name === undefined ? said.whoFault : undefined;
    if (name === undefined) return focusSoon("#who-name");
    beginReport(name, chosenRun.value);
    focusSoon("#report h3");
  };
  return (
    <>
      <h3>{said.who}</h3>
      {names.length > 0 && (
        <Chips
          id="who"
          question={said.name}
          choices={names.map((name) => ({ value: name, text: name }))}
          chosen={typed.value === "" ? tapped.value : undefined}
          choose={(name) => {
            tapped.value = name;
            typed.value = "";
          }}
        />
      )}
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
        choices={Array.from({ length: runs }, (_, i) => ({ value: i + 1, text: `${i + 1}` }))}
        chosen={chosenRun.value}
        choose={(chosen) => {
          chosenRun.value = chosen;
        }}
        kind="scale"
      />
      <Button id="who-go" large work={goOn}>
        {said.go}
      </Button>
    </>
  );
}

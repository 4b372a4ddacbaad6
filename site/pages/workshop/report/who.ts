import { sameName } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { knownDay } from "../day/known-day.js";
import { chips } from "../parts/chips.js";
import { button, tellFault } from "../parts/fields.js";
import { words } from "../words.js";

const { report: said } = words;
const MOST_RUNS = 30;

/** Asks who reports on which run; `done` gets the answer. */
export function whoAsked(
  driver: string,
  run: number,
  done: (driver: string, run: number) => void,
): HTMLElement[] {
  const names = knownDay()?.drivers ?? [];
  const runs = Array.from(
    { length: Math.min(MOST_RUNS, knownDay()?.steps.length || 8) },
    (_, i) => i + 1,
  );
  const known = names.find((name) => sameName(name, driver));
  const typed = element("input", {
    type: "text",
    id: "who-name",
    maxlength: 200,
    autocomplete: "off",
  });
  typed.value = known === undefined ? driver : "";
  let chosen = known;
  let chosenRun = run;
  const list = names.map((name) => ({ value: name, text: name }));
  const goOn = () => {
    const name = typed.value.trim() || chosen;
    tellFault(typed, name === undefined ? said.whoFault : undefined);
    if (name !== undefined) done(name, chosenRun);
    else typed.focus();
  };
  return [
    element("h3", {}, said.who),
    ...(list.length > 0
      ? [
          chips("who", said.name, list, known, (name) => {
            chosen = name;
            typed.value = "";
          }),
        ]
      : []),
    element(
      "div",
      { class: "field" },
      element("label", { for: "who-name" }, list.length > 0 ? said.another : said.name),
      typed,
      element("p", { class: "fault", id: "who-name-fault", role: "alert", hidden: true }),
    ),
    chips(
      "who-run",
      said.run,
      runs.map((value) => ({ value, text: `${value}` })),
      run,
      (value) => {
        chosenRun = value;
      },
      "scale",
    ),
    button("who-go", said.go, goOn, { class: "large" }),
  ];
}

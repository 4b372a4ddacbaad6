import {
  comparisons,
  confidences,
  driverInputs,
  grades,
  howOften,
  phaseNames,
  type Report,
  speedClasses,
} from "@rollbook/lib";
import { BalanceScale } from "../../../ui/balance-scale.js";
import { Chips, plainChips } from "../../../ui/chips.js";
import { LinesField, TextField } from "../../../ui/field.js";
import { knownDay } from "../day/known-day.js";
import { words } from "../words.js";
import { answer, reporting, tapCorner, typeCorner, typingCorner } from "./state.js";

const { report: said } = words;

/** Fields that are answered by one tap, and the ids of their questions. */
const tapped = {
  phase: ["ask-phase", said.phase, phaseNames],
  input: ["ask-input", said.input, driverInputs],
  howOften: ["ask-often", said.howOften, howOften],
  againstLastRun: ["ask-against", said.againstLastRun, comparisons],
  confidence: ["ask-sure", said.confidence, confidences],
  speedClass: ["ask-speed", said.speedClass, speedClasses],
  grade: ["ask-grade", said.grade, grades],
} as const satisfies Partial<Record<keyof Report, readonly [string, string, readonly string[]]>>;

function Tapped({ field }: { readonly field: keyof typeof tapped }) {
  const [id, question, values] = tapped[field];
  return (
    <Chips
      id={id}
      question={question}
      choices={plainChips<string>(values)}
      chosen={reporting.now.value.report[field]}
      choose={(value) => answer(field, value as never)}
    />
  );
}

/** Corners to tap where the venue is known, and speed and grade where it is not. */
function Where() {
  const { corner } = reporting.now.value.report;
  const names = knownDay()?.venue.corners.map(({ name }) => name) ?? [];
  const isOther = typingCorner.value || (corner !== undefined && !names.includes(corner));
  const choices = [
    ...names.map((name) => ({ value: name, text: name })),
    { value: "", text: said.otherCorner },
  ];
  return (
    <>
      {names.length > 0 && (
        <Chips
          id="ask-corner"
          question={said.corner}
          choices={choices}
          chosen={isOther ? "" : corner}
          choose={tapCorner}
        />
      )}
      {(names.length === 0 || isOther) && (
        <>
          <TextField
            id="ask-corner-text"
            label={said.cornerText}
            value={corner ?? ""}
            type={typeCorner}
            end={(name) => answer("corner", name)}
          />
          <Tapped field="speedClass" />
          <Tapped field="grade" />
        </>
      )}
    </>
  );
}

/** The questions of the report, the needed ones first. */
export function Questions() {
  const { report, run } = reporting.now.value;
  return (
    <div class="asked">
      <Where />
      <Tapped field="phase" />
      <Tapped field="input" />
      <BalanceScale balance={report.balance} choose={(balance) => answer("balance", balance)} />
      <Tapped field="howOften" />
      {run > 1 && <Tapped field="againstLastRun" />}
      <Tapped field="confidence" />
      <LinesField
        id="ask-words"
        label={said.words}
        rows={2}
        maxLength={2000}
        value={report.words ?? ""}
        type={(text) => answer("words", text)}
      />
    </div>
  );
}

import { type Signal, useSignal } from "@preact/signals";
import {
  confidences,
  driverInputs,
  type Practice,
  phaseNames,
  type Report,
  type Said,
  whatIsMissing,
} from "@rollbook/lib";
import { balanceText } from "../../../say/balance.js";
import { words } from "../../../say/practice/words.js";
import { questionFor } from "../../../say/report.js";
import { report as said } from "../../../say/workshop/report.js";
import { BalanceScale } from "../../../ui/balance-scale.js";
import { Button } from "../../../ui/button.js";
import { Chips, plainChips } from "../../../ui/chips.js";
import { List } from "../../../ui/list.js";
import { type Round, workedIn } from "../state.js";
import { Part } from "./part.js";
import { Scored } from "./scored.js";

/** The report of the changed car, asked in the terms of the workshop. */
export function ReportPart({
  round,
  file,
}: {
  readonly round: Round;
  readonly file: (said: Said) => void;
}) {
  const { practice, puzzle } = round;
  const worked = workedIn(round) > 0;
  return (
    <Part
      id="report"
      heading={words.report}
      done={round.report !== undefined}
      lead={false}
      after={worked ? <Worked round={round} /> : <Scored name="report" round={round} />}
    >
      <p>{words.reportIntro(practice.corner.name)}</p>
      {puzzle.level !== 2 && <DriverSays practice={practice} />}
      {!worked && <Own corner={practice.corner.name} file={file} />}
    </Part>
  );
}

/** The report that the learner makes. */
function Own({ corner, file }: { readonly corner: string; readonly file: (said: Said) => void }) {
  const report = useSignal<Report>({ corner });
  const open = useSignal<readonly string[]>([]);
  const send = () => {
    const missing = whatIsMissing(report.value).filter(({ needed }) => needed);
    open.value = missing.map(({ field }) => questionFor(field));
    if (missing.length === 0) file(report.value);
  };
  return (
    <>
      <Answers report={report} />
      <div class="fault" role="alert">
        {open.value.length > 0 && (
          <>
            {words.stillAsked}
            <List texts={open.value} />
          </>
        )}
      </div>
      <Button id="file-report" large work={send}>
        {words.fileReport}
      </Button>{" "}
      <Button id="cannot-tell" work={() => file("cannot tell")}>
        {words.cannotTell}
      </Button>
    </>
  );
}

/** The report that was made for the learner, and how one comes to it. */
function Worked({ round: { report, practice } }: { readonly round: Round }) {
  if (report === undefined || report === "cannot tell") return null;
  const { phase = "middle", balance = 0 } = report;
  return (
    <p class="shown-how">
      {words.workedReport(words.drivers[practice.driver].name, phase, balanceText(balance))}
    </p>
  );
}

/** Where in the corner, doing what, which end, and how sure. */
function Answers({ report }: { readonly report: Signal<Report> }) {
  const { phase, input, balance, confidence } = report.value;
  const set = (answer: Partial<Report>) => {
    report.value = { ...report.value, ...answer };
  };
  return (
    <>
      <Chips
        id="ask-phase"
        question={said.phase}
        choices={plainChips(phaseNames)}
        chosen={phase}
        choose={(value) => set({ phase: value })}
      />
      <Chips
        id="ask-input"
        question={said.input}
        choices={plainChips(driverInputs)}
        chosen={input}
        choose={(value) => set({ input: value })}
      />
      <BalanceScale balance={balance} choose={(value) => set({ balance: value })} />
      <Chips
        id="ask-sure"
        question={said.confidence}
        choices={plainChips(confidences)}
        chosen={confidence}
        choose={(value) => set({ confidence: value })}
      />
    </>
  );
}

/** What the driver felt, in points, part by part; with most help, the driver's habit too. */
function DriverSays({ practice }: { readonly practice: Practice }) {
  const { notes, driver, level } = practice;
  const { name, habit } = words.drivers[driver];
  const rows = phaseNames.map((phase) => words.driverRow(phase, balanceText(notes[phase])));
  return (
    <>
      <p>
        {words.driverSays(name)} {level === 1 && words.driverHabit(name, habit)}
      </p>
      <List texts={rows} />
    </>
  );
}

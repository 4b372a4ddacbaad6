import { neededFields, stages, tidied, whatIsMissing } from "@rollbook/lib";
import { questionFor } from "../../../say/report.js";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { say } from "../../../ui/notice.js";
import { runFor } from "../day/reporter.js";
import { Ballot } from "../paddock/ballot.js";
import { MyRun } from "../paddock/my-run.js";
import { isPhone } from "../paddock/place.js";
import { sayFiled } from "../paddock/say-filed.js";
import { clock } from "../run/state.js";
import { words } from "../words.js";
import { ExpectationAsked } from "./expect.js";
import { FiledReports } from "./filed.js";
import { Questions } from "./form.js";
import { HandOver } from "./hand-over.js";
import { askingWho, emptyReport, reporting, triedToFile } from "./state.js";
import { Who } from "./who.js";

const { report: said } = words;

/** Files the report as it stands. */
function file(): void {
  const { driver, run, report } = reporting.now.value;
  const { id } = runFor(driver, run);
  const entry = write({ kind: "report", author: driver, run: id, report: tidied(report) });
  emptyReport(driver, run);
  sayFiled(entry.id);
  scrollTo(0, 0);
  focusSoon("#report h2");
}

/** Files what is complete; else asks for what is missing and goes there. */
function tryToFile(): void {
  const [missing] = whatIsMissing(tidied(reporting.now.value.report)).filter(
    ({ needed }) => needed,
  );
  if (missing === undefined) {
    file();
    return;
  }
  triedToFile.value = true;
  say(questionFor(missing.field));
  const place = document.getElementById(`ask-${missing.field}`);
  place?.scrollIntoView({ block: "center" });
  focusSoon(place === null ? "#ask-corner-text" : `#ask-${missing.field} input`);
}

/** What is still asked, and the button that files. */
function FilingBar() {
  const report = tidied(reporting.now.value.report);
  const asks = neededFields.filter((field) => report[field] === undefined);
  const names = asks.map((field) => said.fields[field]).join(", ");
  return (
    <div class="filing-bar">
      <p id="still-asked">{asks.length === 0 ? said.complete : said.missing(names)}</p>
      <Button id="file-report" large work={tryToFile}>
        {said.file}
      </Button>
      {triedToFile.value && asks.length > 0 && (
        <Button id="file-anyway" work={file}>
          {said.fileAnyway}
        </Button>
      )}
    </div>
  );
}

/** Whether the desk's clock has come to the stage in which phones are asked what they expect. */
const isAskedNow = (run: number): boolean =>
  isPhone() && clock.now.value.run === run && clock.now.value.stage >= stages.indexOf("predict");

function Form() {
  const { driver, run } = reporting.now.value;
  const asked = isAskedNow(run);
  const change = () => {
    askingWho.value = true;
  };
  return (
    <>
      <div class="who-line">
        <h3 tabIndex={-1}>{said.as(driver, run)}</h3>
        <Button id="change-who" work={change}>
          {said.changeWho}
        </Button>
      </div>
      <ExpectationAsked key={`${driver} ${run} ${asked}`} open={asked} />
      <Questions />
      <FilingBar />
      <FiledReports />
      <HandOver />
    </>
  );
}

/** What a driver felt: first who, then the form. */
export function ReportView() {
  const asking = askingWho.value || reporting.now.value.driver === "";
  return (
    <>
      <h2 tabIndex={-1}>{words.views.report}</h2>
      <p class="quiet">{said.intro}</p>
      <MyRun />
      <Ballot />
      {asking ? <Who /> : <Form />}
    </>
  );
}

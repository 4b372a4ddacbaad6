import {
  confidences,
  driverInputs,
  driverReports,
  type Practice,
  phaseNames,
  type Report,
  whatIsMissing,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import { questionFor } from "../../../say/report.js";
import { report as said } from "../../../say/workshop/report.js";
import { chips, plainChips } from "../../workshop/parts/chips.js";
import { balanceAsked, balanceText } from "../../workshop/report/balance-scale.js";
import type { Level } from "../puzzle/puzzle.js";
import { words } from "../words.js";
import { button, part, sentences } from "./parts.js";

/** The report of the changed car, asked in the terms of the workshop. */
export function reportPart(
  practice: Practice,
  level: Level,
  file: (report: Report) => void,
): HTMLElement {
  let report: Report = { corner: practice.corner.name };
  const answer = <Field extends keyof Report>(field: Field, value: Report[Field]) => {
    report = { ...report, [field]: value };
  };
  const fault = element("div", { class: "fault", role: "alert" });
  const send = () => {
    const open = whatIsMissing(report).filter(({ needed }) => needed);
    fault.replaceChildren();
    if (open.length === 0) return file(report);
    fault.append(words.stillAsked, sentences(open.map(({ field }) => questionFor(field))));
  };
  return part(
    "report",
    words.report,
    element("p", {}, words.reportIntro(practice.corner.name)),
    ...(level === 2 ? [] : driverSays(practice)),
    chips("ask-phase", said.phase, plainChips(phaseNames), undefined, (phase) =>
      answer("phase", phase),
    ),
    chips("ask-input", said.input, plainChips(driverInputs), undefined, (input) =>
      answer("input", input),
    ),
    balanceAsked(report, answer),
    chips("ask-sure", said.confidence, plainChips(confidences), undefined, (sure) =>
      answer("confidence", sure),
    ),
    fault,
    button("file-report", words.fileReport, send, "go"),
  );
}

/** What the driver felt, in points, part by part. */
function driverSays(practice: Practice): HTMLElement[] {
  const rows = driverReports(practice).map(({ phase, balance }) =>
    words.driverRow(phase ?? "middle", balanceText(balance ?? 0)),
  );
  return [element("p", {}, words.driverSays), sentences(rows)];
}

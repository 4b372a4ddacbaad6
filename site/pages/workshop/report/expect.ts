import { type Confidence, confidences, type Expectation, expectations } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { driverRun, setUpFor } from "../day/reporter.js";
import { chips, plainChips } from "../parts/chips.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";

const { report: said } = words;

/** What a driver expects of the change before driving it, filed once, with a reason. */
export function expectation(driver: string, run: number, filed: () => void): HTMLElement[] {
  if (run < 2) return [];
  const done = driverRun(driver, run);
  if ((done?.predictions.length ?? 0) > 0)
    return [element("p", { class: "quiet" }, said.predicted)];
  if ((done?.reports.length ?? 0) > 0) return [];
  let expects: Expectation | undefined;
  let confidence: Confidence | undefined;
  const reason = element("input", { type: "text", id: "expect-reason", maxlength: 1000 });
  const file = () => {
    const because = reason.value.trim();
    if (expects === undefined || because === "") {
      say(said.becauseFault);
      return;
    }
    const sure = confidence === undefined ? {} : { confidence };
    write({
      kind: "prediction",
      setUp: setUpFor(run),
      by: driver,
      expects,
      reason: because,
      ...sure,
    });
    say(said.predicted);
    filed();
  };
  const choices = expectations.map((value) => ({ value, text: said.expects[value] }));
  return [
    element(
      "details",
      { id: "expect", class: "expect" },
      element("summary", {}, said.expect),
      chips("expect-what", said.expectWhat, choices, undefined, (value) => {
        expects = value;
      }),
      element(
        "div",
        { class: "field" },
        element("label", { for: "expect-reason" }, said.because),
        reason,
      ),
      chips("expect-sure", said.confidence, plainChips(confidences), undefined, (value) => {
        confidence = value;
      }),
      button("expect-file", said.filePrediction, file, { class: "large" }),
    ),
  ];
}

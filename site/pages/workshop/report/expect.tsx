import { type Confidence, confidences, type Expectation, expectations } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { Chips, plainChips } from "../../../ui/chips.js";
import { TextField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { driverRun, setUpFor } from "../day/reporter.js";
import { sayKept } from "../parts/say-kept.js";
import { words } from "../words.js";
import { reporting } from "./state.js";

const { report: said } = words;

/** What somebody is about to expect of a run, not filed yet. */
interface Expecting {
  readonly driver: string;
  readonly run: number;
  readonly expects?: Expectation;
  readonly confidence?: Confidence;
  readonly reason: string;
}

const oneOf = <Value extends string>(values: readonly Value[], kept: unknown) =>
  values.find((value) => value === kept);

function asExpecting(kept: unknown): Expecting | undefined {
  const { driver, run, expects, confidence, reason } = (kept ?? {}) as Record<string, unknown>;
  if (typeof driver !== "string" || typeof run !== "number" || typeof reason !== "string")
    return undefined;
  const way = oneOf(expectations, expects);
  const sure = oneOf(confidences, confidence);
  return {
    ...{ driver, run, reason: reason.slice(0, 1000) },
    ...(way && { expects: way }),
    ...(sure && { confidence: sure }),
  };
}

const expecting = documentOf<Expecting>({
  key: "workshop/expecting",
  empty: { driver: "", run: 0, reason: "" },
  read: asExpecting,
});

/** What this driver is about to expect of this run. */
function begun(): Expecting {
  const { driver, run } = reporting.now.value;
  const kept = expecting.now.value;
  return kept.driver === driver && kept.run === run ? kept : { driver, run, reason: "" };
}

const change = (more: Partial<Expecting>): void => void expecting.setTyped({ ...begun(), ...more });

function file(): void {
  const { driver, run, expects, confidence, reason } = begun();
  const because = reason.trim();
  if (expects === undefined || because === "") {
    say(said.becauseFault);
    return;
  }
  const sure = confidence === undefined ? {} : { confidence };
  write({
    kind: "prediction",
    setUp: setUpFor(driver, run),
    author: driver,
    by: driver,
    expects,
    reason: because,
    ...sure,
  });
  expecting.clear();
  sayKept(said.predicted);
}

/** What a driver expects of the change before driving it, filed once, with a reason. */
export function ExpectationAsked({ open }: { readonly open: boolean }) {
  const { driver, run } = reporting.now.value;
  if (run < 2) return null;
  const done = driverRun(driver, run);
  if ((done?.predictions.length ?? 0) > 0) return <p class="quiet">{said.predicted}</p>;
  if ((done?.reports.length ?? 0) > 0) return null;
  const { expects, confidence, reason } = begun();
  return (
    <Fold id="expect" kind="expect" title={said.expect} openAtFirst={open}>
      <Chips
        id="expect-what"
        question={said.expectWhat}
        choices={expectations.map((value) => ({ value, text: said.expects[value] }))}
        chosen={expects}
        choose={(way) => change({ expects: way })}
      />
      <TextField
        id="expect-reason"
        label={said.because}
        maxLength={1000}
        value={reason}
        type={(text) => change({ reason: text })}
      />
      <Chips
        id="expect-sure"
        question={said.confidence}
        choices={plainChips(confidences)}
        chosen={confidence}
        choose={(sure) => change({ confidence: sure })}
      />
      <Button id="expect-file" large work={file}>
        {said.filePrediction}
      </Button>
    </Fold>
  );
}

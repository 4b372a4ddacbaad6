import { driverInputs, GREATEST_BALANCE, phaseNames, type Report } from "@rollbook/lib";
import { balanceText } from "../../../say/balance.js";
import { reportLine } from "../../../say/workshop/report-line.js";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { LateFold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { driverRun } from "../day/reporter.js";
import { roundsOn } from "../day/worked.js";
import { words } from "../words.js";
import { answerSlip, fileSlip, isDouble, saysEnough, slipOf } from "./grid-state.js";
import type { AtHand } from "./state.js";

const { grid: said, report: asked } = words;

const balances = Array.from({ length: 2 * GREATEST_BALANCE + 1 }, (_, i) => i - GREATEST_BALANCE);

/** A grid in which the desk types what drivers wrote on slips: one row a driver. */
export function SlipGrid({ at }: { readonly at: AtHand }) {
  return (
    <LateFold id="slip-grid" title={said.title}>
      <p class="quiet">{said.help}</p>
      <Grid at={at} />
    </LateFold>
  );
}

function Grid({ at }: { readonly at: AtHand }) {
  const { run } = at.row;
  const drivers = roundsOn(at.day, run).flatMap(({ stints }) => stints.map(({ driver }) => driver));
  const corners = at.day.venue.corners.map(({ name }) => name);
  const heads = [said.driver, asked.corner, asked.phase, asked.input, asked.balance, said.file];
  return (
    <div class="table" role="region" tabIndex={0} aria-label={said.table(run)}>
      <table class="slip-grid">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {drivers.map((driver, i) => (
            <Row
              key={driver}
              driver={driver}
              run={run}
              index={i}
              next={(i + 1) % drivers.length}
              corners={corners}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface OfRow {
  readonly driver: string;
  readonly run: number;
  readonly index: number;
  /** Row of the next driver. */
  readonly next: number;
  readonly corners: readonly string[];
}

function Row({ driver, run, index, next, corners }: OfRow) {
  const slip = slipOf(driver, run);
  const count = driverRun(driver, run)?.reports.length ?? 0;
  const file = () => {
    if (!saysEnough(slip)) return say(said.empty(driver));
    say(said.filed(driver, reportLine({ report: fileSlip(driver, run) })));
    focusSoon(`#slip-${next}-corner`);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || event.target instanceof HTMLButtonElement) return;
    event.preventDefault();
    file();
  };
  return (
    <tr onKeyDown={onKeyDown}>
      <th scope="row">
        {driver}
        {count > 0 && <small class="quiet"> {said.already(count)}</small>}
        {isDouble(driver, run, slip) && <small class="beware"> {said.double}</small>}
      </th>
      <Answer of={{ driver, run, index, slip }} field="corner" values={corners} />
      <Answer of={{ driver, run, index, slip }} field="phase" values={phaseNames} />
      <Answer of={{ driver, run, index, slip }} field="input" values={driverInputs} />
      <td>
        <Balance driver={driver} run={run} index={index} slip={slip} />
      </td>
      <td>
        <Button id={`slip-${index}-file`} aria-label={said.fileOf(driver)} work={file}>
          {said.file}
        </Button>
      </td>
    </tr>
  );
}

type OfSlip = Pick<OfRow, "driver" | "run" | "index"> & { readonly slip: Report };

/** One answer of a slip, by its first letters. */
function Answer({
  of: { driver, run, index, slip },
  field,
  values,
}: {
  readonly of: OfSlip;
  readonly field: "corner" | "phase" | "input";
  readonly values: readonly string[];
}) {
  const choose = (value: string) =>
    answerSlip(driver, run, field, (value || undefined) as Report[typeof field]);
  return (
    <td>
      <Select
        id={`slip-${index}-${field}`}
        label={said.of(asked[field], driver)}
        values={values}
        value={slip[field] ?? ""}
        choose={choose}
      />
    </td>
  );
}

/** The scale, and "cannot tell", which is a good answer. */
function Balance({ driver, run, index, slip }: OfSlip) {
  const { balance, againstLastRun } = slip;
  const choose = (value: string) => {
    const told = value === said.cannotTell ? ("cannot tell" as const) : undefined;
    const points = balances.find((one) => balanceText(one) === value);
    answerSlip(driver, run, "balance", points);
    answerSlip(driver, run, "againstLastRun", told);
  };
  const shown = balance === undefined ? (againstLastRun ?? "") : balanceText(balance);
  return (
    <Select
      id={`slip-${index}-balance`}
      label={said.of(asked.balance, driver)}
      values={[...balances.map(balanceText), said.cannotTell]}
      texts={[...balances.map(typedAs), said.typedCannotTell]}
      value={shown}
      choose={choose}
    />
  );
}

/** So that two keys choose it: r2 for the rear, f1 for the front. */
const typedAs = (balance: number): string =>
  said.typed(Math.sign(balance), Math.abs(balance), balanceText(balance));

function Select({
  id,
  label,
  values,
  texts = values,
  value,
  choose,
}: {
  readonly id: string;
  readonly label: string;
  readonly values: readonly string[];
  /** What stands for each value in the list. */
  readonly texts?: readonly string[];
  readonly value: string;
  readonly choose: (value: string) => void;
}) {
  return (
    <select
      id={id}
      aria-label={label}
      value={value}
      onChange={({ currentTarget }) => choose(currentTarget.value)}
    >
      <option value="">{said.choose}</option>
      {values.map((one, i) => (
        <option key={one} value={one}>
          {texts[i]}
        </option>
      ))}
    </select>
  );
}

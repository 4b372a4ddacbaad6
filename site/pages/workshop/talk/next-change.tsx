import { balancesOf, type Case, caseOf, placesIn, type ReportedPlace } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { balanceText } from "../../../say/balance.js";
import { outcomeInWords } from "../../../say/diagnosis.js";
import { refusalInWords } from "../../../say/refusal.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { say } from "../../../ui/notice.js";
import { afterPaint } from "../../../ui/work-at-rest.js";
import { words } from "../words.js";
import {
  askedOf,
  type Choice,
  choiceFor,
  choose,
  isOutdated,
  type Pressure,
  pressureOff,
  type WorkedOut,
  workOut,
} from "./asked.js";
import { DiagnosisToldOf } from "./diagnosis.js";
import type { Topic } from "./topic.js";

/** Choice of places, then the ranked single changes. */
export function NextChange(topic: Topic) {
  const { log, event, run, car, driver } = topic;
  const given = useMemo(
    () => caseOf(log, event, run, { driver, car }),
    [log, event, run, driver, car],
  );
  if (given === undefined) return <p class="beware">{said.noSetUp}</p>;
  const places = placesIn(given.reports);
  const choice = choiceFor(topic, places);
  const { workedOut } = askedOf(topic);
  return (
    <>
      <Places
        places={places}
        chosen={choice.places}
        choose={(chosen) => choose(topic, { ...choice, places: chosen })}
      />
      <Chips
        id="pressure"
        question={said.pressure}
        choices={pressures}
        chosen={choice.pressure}
        choose={(pressure) => choose(topic, { ...choice, pressure })}
      />
      <Button id="work-out" large work={() => workOutSoon(topic, given, choice)}>
        {said.workOut}
      </Button>
      <div id="diagnosis">
        {workedOut && isOutdated(workedOut, given) && <p class="quiet">{said.outdated}</p>}
        {workedOut && <Answer workedOut={workedOut} {...topic} />}
      </div>
    </>
  );
}

const pressures = (Object.keys(pressureOff) as Pressure[]).map((value) => ({
  value,
  text: said.pressures[value],
}));

let withdraw = (): void => {};

/** Says that it is at it, works the answer out, and says where it leads. */
function workOutSoon(topic: Topic, given: Case, choice: Choice): void {
  const known = placesIn(given.reports);
  if (!known.some(({ key }) => choice.places.includes(key))) {
    say(said.chooseOne);
    return;
  }
  say(said.working);
  withdraw();
  withdraw = afterPaint(() => say(inShort(workOut(topic, given, choice))));
}

function inShort({ answer, given }: WorkedOut): string {
  if ("refusal" in answer) return said.cannotStand(refusalInWords(answer.refusal, reader));
  return outcomeInWords(answer.diagnosis.outcome, given.car, reader);
}

function Answer({ workedOut, run, car }: Topic & { readonly workedOut: WorkedOut }) {
  const { answer, given, bands } = workedOut;
  if ("refusal" in answer) return <p class="beware">{inShort(workedOut)}</p>;
  return <DiagnosisToldOf {...answer} of={given} run={run} bands={bands} carNumber={car} />;
}

function Places({
  places,
  chosen,
  choose,
}: {
  readonly places: readonly ReportedPlace[];
  readonly chosen: readonly string[];
  readonly choose: (keys: readonly string[]) => void;
}) {
  const set = (key: string, on: boolean) =>
    choose(on ? [...chosen, key] : chosen.filter((one) => one !== key));
  return (
    <fieldset class="places">
      <legend>{said.which}</legend>
      {places.map(({ key, corner, phase, reports }, i) => (
        <label class="check" for={`place-${i}`} key={key}>
          <input
            type="checkbox"
            id={`place-${i}`}
            checked={chosen.includes(key)}
            onChange={({ currentTarget }) => set(key, currentTarget.checked)}
          />
          {said.place(
            corner ?? words.report.nowhere,
            phase ?? words.report.noPhase,
            balancesOf(reports).map(balanceText).join(" "),
          )}
        </label>
      ))}
    </fieldset>
  );
}

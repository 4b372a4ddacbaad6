import { useSignal } from "@preact/signals";
import { reader } from "@rollbook/page";
import { changeLabel } from "../../../say/change.js";
import { fieldWords, circleWords as said } from "../../../say/measure/words.js";
import { formatAlike } from "../../../say/shown-range.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { ChoiceField } from "../../../ui/field.js";
import { circleChanges } from "../model/circle-change.js";
import { boxesFor, changeAt, type FormPlace, lapAt, readAt } from "../model/input.js";
import { lapField, MOST } from "../model/spec.js";
import { carAtHand, sheet, type } from "../state/sheet.js";
import { Box } from "./box.js";
import { Lines } from "./readings.js";

type Side = "before" | "after";
const sides: readonly Side[] = ["before", "after"];
const range = (count: number) => Array.from({ length: count }, (_, i) => i);

const isUsed = (side: Side, run: number) =>
  range(MOST.laps).some(
    (lap) => readAt(sheet.value, lapAt(side, run, lap), lapField) !== undefined,
  );

/** Pairs of runs to show: those in use and one more. */
function pairsShown(): number {
  const last = range(MOST.runs).findLast((run) => sides.some((side) => isUsed(side, run))) ?? -1;
  return Math.min(MOST.runs, last + 2);
}

function Run({
  form,
  side,
  run,
}: {
  readonly form: FormPlace;
  readonly side: Side;
  readonly run: number;
}) {
  const place = (lap: number) => lapAt(side, run, lap);
  const name = said.run(side, run + 1);
  return (
    <fieldset class="run">
      <legend>{name}</legend>
      <div class="boxes">
        {range(boxesFor(sheet.value, place, MOST.laps)).map((lap) => (
          <Box
            key={lap}
            form={form}
            place={place(lap)}
            field={lapField}
            label={`${name}, ${fieldWords.lap} ${lap + 1}`}
            caption={String(lap + 1)}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** Laps taken into a run as the car passes, on a clock that only goes forward. */
function useLaps(form: FormPlace) {
  const into = useSignal<string>("before.0");
  const passed = useSignal<number | undefined>(undefined);
  const told = useSignal("");
  const [side, run] = into.value.split(".") as [Side, string];
  const tap = () => {
    const now = performance.now();
    const last = passed.value;
    passed.value = now;
    if (last === undefined) {
      told.value = said.running(0, "");
      return;
    }
    const time = (now - last) / 1000;
    const lap = range(MOST.laps).find((i) => !sheet.value[lapAt(side, Number(run), i)]);
    if (lap === undefined) {
      told.value = said.full;
      return;
    }
    type(form, lapAt(side, Number(run), lap), time.toFixed(2));
    told.value = said.running(lap + 1, formatAlike("time", time, 2, reader.units));
  };
  const stop = () => {
    passed.value = undefined;
    told.value = "";
  };
  const chooseRun = (value: string) => {
    into.value = value;
    stop();
  };
  const isRunning = passed.value !== undefined;
  return { into: into.value, chooseRun, tap, stop, isRunning, told: told.value };
}

/** A stopwatch, and the run that its laps go into. */
function Stopwatch({ form }: { readonly form: FormPlace }) {
  const { into, chooseRun, tap, stop, isRunning, told } = useLaps(form);
  const choices = range(pairsShown()).flatMap((i) =>
    sides.map((one) => ({ value: `${one}.${i}`, text: said.run(one, i + 1) })),
  );
  return (
    <fieldset class="watch">
      <legend>{said.watch}</legend>
      <p class="note">{said.watchNote}</p>
      <Chips
        id="watch-into"
        question={said.into}
        choices={choices}
        chosen={into}
        choose={chooseRun}
      />
      <button type="button" id="lap" class="large" onPointerDown={tap} onKeyDown={keyed(tap)}>
        {said.tap}
      </button>{" "}
      <Button id="stop" work={stop} disabled={!isRunning}>
        {said.stop}
      </Button>
      <p class="told" role="status">
        {told}
      </p>
    </fieldset>
  );
}

/** Which change the runs with it had, for what the model says of it. */
function Changed({ form }: { readonly form: FormPlace }) {
  const car = carAtHand.value;
  const all = circleChanges(car).map(
    ({ key, change }) => [key, changeLabel(change, car, reader)] as const,
  );
  return (
    <ChoiceField
      id="circle-change"
      label={said.change}
      choices={[["", said.noChange], ...all]}
      value={sheet.value[changeAt]?.text ?? ""}
      choose={(key) => type(form, changeAt, key)}
    />
  );
}

/** The finger counts as it comes down, so does a key; a click would come later. */
const keyed = (tap: () => void) => (event: KeyboardEvent) => {
  if ((event.key !== "Enter" && event.key !== " ") || event.repeat) return;
  event.preventDefault();
  tap();
};

/** What is read on the circle besides its size. */
export function Circle({ form }: { readonly form: FormPlace }) {
  return (
    <>
      <h3>{said.steady}</h3>
      <p class="note">{said.steadyNote}</p>
      <Lines form={form} />
      <h3>{said.laps}</h3>
      <Changed form={form} />
      <Stopwatch form={form} />
      {range(pairsShown()).flatMap((run) =>
        sides.map((side) => <Run key={`${side} ${run}`} form={form} side={side} run={run} />),
      )}
    </>
  );
}

import { type PhaseName, parameterOf, phaseNames } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { words } from "../../../say/map.js";
import { SliderRow } from "../../../ui/slider-row.js";
import type { LiveMap } from "../live.js";
import { axesIn, withLever } from "../state.js";

type Part = "along" | "up" | "third";

function Choice<Value extends string>({
  id,
  label,
  options,
  value,
  choose,
}: {
  readonly id: string;
  readonly label: string;
  readonly options: readonly (readonly [Value, string])[];
  readonly value: Value | undefined;
  readonly choose: (value: Value) => void;
}) {
  return (
    <div class="choice">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value ?? ""}
        onChange={({ currentTarget }) => choose(currentTarget.value as Value)}
      >
        {options.map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

/** What the reader chooses: two levers of the map, a third to move, the part of the corner. */
export function Chooser({ live }: { readonly live: LiveMap }) {
  const state = live.state.value;
  const options = live.axes.map(({ key, name }) => [key, spell(name)] as const);
  const lever = (part: Part) => (
    <Choice
      id={`map-${part}`}
      label={words[part]}
      options={options}
      value={state[part]}
      choose={(key) => live.change(withLever(live.state.value, part, key))}
    />
  );
  const choosePhase = (phase: PhaseName) => live.change({ ...live.state.value, phase });
  return (
    <div class="choices">
      {lever("along")}
      {lever("up")}
      {live.axes.length > 2 && lever("third")}
      <Choice
        id="map-part"
        label={words.part}
        options={phaseNames.map((name) => [name, words.parts[name]] as const)}
        value={state.phase}
        choose={choosePhase}
      />
    </div>
  );
}

/** Where the slider of the third lever is, for a map that has one. */
export function Moving({ live }: { readonly live: LiveMap }) {
  const { third } = axesIn(live.state.value, live.axes);
  return (
    <div class="moving">
      {third && (
        <SliderRow
          key={third.key}
          id="map-third-value"
          parameter={parameterOf(third)}
          value={live.state.value.value ?? third.present}
          report={(value) => live.move(value)}
        />
      )}
    </div>
  );
}

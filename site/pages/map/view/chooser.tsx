import { type MapAxis, type PhaseName, parameterOf, phaseNames } from "@rollbook/lib";
import { slider, spell } from "@rollbook/page";
import { useEffect, useRef } from "preact/hooks";
import { words } from "../../../say/map.js";
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

/** The slider of the third lever: the chapters' own. */
export function ThirdLever({ live, axis }: { readonly live: LiveMap; readonly axis: MapAxis }) {
  const place = useRef<HTMLDivElement>(null);
  const made = useRef<ReturnType<typeof slider>>(undefined);
  useEffect(() => {
    made.current = slider("map-third-value", parameterOf(axis), (value) => live.move(value));
    place.current?.replaceChildren(made.current.row);
  }, [axis]);
  const { value } = live.state.value;
  useEffect(() => made.current?.set(value ?? axis.present), [axis, value]);
  return <div ref={place} />;
}

/** Where the slider of the third lever is, for a map that has one. */
export function Moving({ live }: { readonly live: LiveMap }) {
  const { third } = axesIn(live.state.value, live.axes);
  return <div class="moving">{third && <ThirdLever live={live} axis={third} />}</div>;
}

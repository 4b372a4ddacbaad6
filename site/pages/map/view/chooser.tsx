import { type PhaseName, parameterOf, phaseNames } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { words } from "../../../say/map.js";
import { ChoiceField } from "../../../ui/field.js";
import { SliderRow } from "../../../ui/slider-row.js";
import type { LiveMap } from "../live.js";
import { axesIn, withLever } from "../state.js";

type Part = "along" | "up" | "third";

/** What the reader chooses: two levers of the map, a third to move, the part of the corner. */
export function Chooser({ live }: { readonly live: LiveMap }) {
  const state = live.state.value;
  const options = live.axes.map(({ key, name }) => [key, spell(name)] as const);
  const lever = (part: Part) => (
    <ChoiceField
      id={`map-${part}`}
      label={words[part]}
      choices={options}
      value={state[part] ?? ""}
      choose={(key) => live.change(withLever(live.state.value, part, key))}
    />
  );
  const choosePhase = (phase: PhaseName) => live.change({ ...live.state.value, phase });
  return (
    <div class="choices">
      {lever("along")}
      {lever("up")}
      {live.axes.length > 2 && lever("third")}
      <ChoiceField
        id="map-part"
        label={words.part}
        choices={phaseNames.map((name) => [name, words.parts[name]] as const)}
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

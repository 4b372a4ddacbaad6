import { type MapAxis, parameterOf, phaseNames } from "@rollbook/lib";
import { element, type Slider, slider, spell } from "@rollbook/page";
import type { MapState } from "../state.js";
import { words } from "../words.js";

type Part = "along" | "up" | "third";

interface Told {
  lever(part: Part, key: string): void;
  phase(name: string): void;
  value(value: number): void;
}

/** What the reader chooses with: two levers of the map, a third to move, the part of the corner. */
export function controls(axes: readonly MapAxis[], told: Told) {
  const levers = (part: Part) =>
    choice(
      `map-${part}`,
      words[part],
      axes.map(({ key, name }) => [key, spell(name)]),
      (key) => told.lever(part, key),
    );
  const [along, up, third] = [levers("along"), levers("up"), levers("third")];
  const phase = choice(
    "map-part",
    words.part,
    phaseNames.map((name) => [name, words.parts[name]]),
    told.phase,
  );
  const moving = element("div", { class: "moving" });
  const node = element(
    "div",
    { class: "choices" },
    along.node,
    up.node,
    ...(axes.length > 2 ? [third.node] : []),
    phase.node,
  );
  let [shownKey, shown]: [string | undefined, Slider | undefined] = [undefined, undefined];
  return {
    node,
    moving,
    show(state: MapState, axis: MapAxis | undefined): void {
      along.set(state.along);
      up.set(state.up);
      phase.set(state.phase);
      if (axis === undefined) return;
      third.set(axis.key);
      if (shownKey !== axis.key) {
        shown = slider("map-third-value", parameterOf(axis), told.value);
        moving.replaceChildren(shown.row);
        shownKey = axis.key;
      }
      shown?.set(state.value ?? axis.present);
    },
  };
}

function choice(
  id: string,
  label: string,
  options: readonly (readonly [string, string])[],
  report: (value: string) => void,
) {
  const select = element(
    "select",
    { id },
    ...options.map(([value, text]) => element("option", { value }, text)),
  );
  select.addEventListener("change", () => report(select.value));
  return {
    node: element("div", { class: "choice" }, element("label", { for: id }, label), select),
    set: (value: string) => {
      select.value = value;
    },
  };
}

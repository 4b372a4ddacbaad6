import { type MapAxis, type PhaseName, parameters, phaseNames } from "@rollbook/lib";
import { words } from "../../say/map.js";
import { format, fromShown, toShown } from "../../say/units.js";
import { firstState, type MapState } from "./state.js";

/** What a link asks for, as far as the car has it, and a sentence for each thing it does not have. */
interface WantedMap {
  readonly state: MapState;
  readonly faults: readonly string[];
}

const longest = 40; // characters of a link that are shown again

/** The end of an address that opens this map again; values in the shown metric unit. */
export function linkToMap(state: MapState, axes: readonly MapAxis[]): string {
  const shown = (key: string | undefined, value: number | undefined) => {
    const axis = axes.find((one) => one.key === key);
    if (axis === undefined || value === undefined) return undefined;
    return String(tidy(toShown(parameters[axis.parameter].quantity, value)));
  };
  const parts = {
    along: state.along,
    up: state.up,
    third: state.third,
    value: shown(state.third, state.value),
    phase: state.phase === "middle" ? undefined : state.phase,
    x: shown(state.along, state.mark?.x),
    y: shown(state.up, state.mark?.y),
  };
  const given = Object.entries(parts).filter((part): part is [string, string] => Boolean(part[1]));
  return `#map?${new URLSearchParams(given)}`;
}

/** What the end of an address asks for; nothing where it asks for no map. */
export function mapFromLink(hash: string, axes: readonly MapAxis[]): WantedMap | undefined {
  const query = /^#map\?(.+)$/s.exec(hash)?.[1];
  const first = firstState(axes);
  if (query === undefined || first === undefined) return undefined;
  const asked = new URLSearchParams(query);
  const faults: string[] = [];
  const levers = leversFrom(asked, axes, first, faults);
  const phase = asked.get("phase") ?? "middle";
  if (!isPhase(phase)) faults.push(words.noSuch(words.part, phase.slice(0, longest)));
  const number = (name: string, key: string | undefined) =>
    valueFrom(
      asked.get(name),
      axes.find((axis) => axis.key === key),
      faults,
    );
  const value = number("value", levers.third);
  const [x, y] = [number("x", levers.along), number("y", levers.up)];
  const state: MapState = {
    ...levers,
    phase: isPhase(phase) ? phase : "middle",
    ...(value === undefined ? {} : { value }),
    ...(x === undefined || y === undefined ? {} : { mark: { x, y } }),
  };
  return { state, faults };
}

const isPhase = (name: string): name is PhaseName => phaseNames.some((phase) => phase === name);

type Levers = Pick<MapState, "along" | "up" | "third">;

/** Three levers, no two the same; those of the first map where the link has none. */
function leversFrom(
  asked: URLSearchParams,
  axes: readonly MapAxis[],
  first: MapState,
  faults: string[],
): Levers {
  const taken: string[] = [];
  const take = (part: "along" | "up" | "third"): string | undefined => {
    const given = asked.get(part);
    const free = (key: string) => axes.some((axis) => axis.key === key) && !taken.includes(key);
    if (given !== null && !free(given))
      faults.push(words.noSuch(words[part], given.slice(0, longest)));
    const wishes = [given, first[part], ...axes.map(({ key }) => key)];
    const found = wishes.find((key): key is string => typeof key === "string" && free(key));
    if (found !== undefined) taken.push(found);
    return found;
  };
  const [along, up, third] = [take("along"), take("up"), take("third")];
  const levers = { along: along ?? first.along, up: up ?? first.up };
  return third === undefined ? levers : { ...levers, third };
}

function valueFrom(
  text: string | null,
  axis: MapAxis | undefined,
  faults: string[],
): number | undefined {
  if (text === null || axis === undefined) return undefined;
  const { quantity, decimals } = parameters[axis.parameter];
  const given = text.trim() === "" ? Number.NaN : Number(text);
  if (!Number.isFinite(given)) {
    faults.push(words.notANumber(axis.name, text.slice(0, longest)));
    return undefined;
  }
  const value = fromShown(quantity, given);
  const kept = Math.min(axis.max, Math.max(axis.min, value));
  if (Math.abs(kept - value) > axis.step * 1e-6) {
    const [from, to, not] = [axis.min, axis.max, value].map((si) => format(quantity, si, decimals));
    faults.push(words.outOfRange(axis.name, from ?? "", to ?? "", not ?? ""));
  }
  return kept;
}

/** A number freed of the dust that conversion leaves. */
const tidy = (value: number): number => Number(value.toPrecision(9));

import {
  type Car,
  type MapAxis,
  type MapOf,
  phaseNames,
  type SetUpMap,
  setUpMap,
} from "@rollbook/lib";
import { element, reader, words as shared, spell } from "@rollbook/page";
import { pace } from "../detail.js";
import { linkToMap, mapFromLink } from "../link.js";
import { mapOf } from "../map-of.js";
import { type Scales, scalesOf } from "../scales.js";
import { axesIn, type MapState, markOf, withLever } from "../state.js";
import { words } from "../words.js";
import { chart } from "./chart.js";
import { controls } from "./controls.js";
import { legend } from "./legend.js";
import { linkButton } from "./link-button.js";
import { sentences } from "./sentences.js";
import { steer } from "./steering.js";
import { table } from "./table.js";

const finest = 64;
const rest = 150; // ms without a move until the map is drawn in full and told

/** Puts the map of a car into a place, with all that belongs to it. */
export function liveMap(
  place: HTMLElement,
  car: Car,
  axes: readonly MapAxis[],
  first: MapState,
): void {
  let state = first;
  let scales: Scales | undefined;
  let [waiting, timer] = [false, 0];
  const speed = pace();
  const [picture, key, numbers, said] = [chart(), legend(), table(), sentences()];
  const fault = element("p", { class: "fault", role: "alert", hidden: true });
  const blend = element("p", { class: "hint", hidden: true }, words.between);
  const link = linkButton(() => linkToMap(state, axes));
  const chooser = controls(axes, {
    lever: (part, lever) => change(withLever(state, part, lever)),
    phase: (name) =>
      change({ ...state, phase: phaseNames.find((one) => one === name) ?? "middle" }),
    value: move,
  });
  const now = () => mapOf(state, car, axes);

  function draw(of: MapOf, map: SetUpMap): void {
    scales ??= scalesOf(map, reader.units);
    picture.draw({ map, scales, along: of.along, up: of.up });
    read(of, false);
  }

  function frame(of: MapOf, cells: number): SetUpMap {
    const started = performance.now();
    const map = setUpMap(of, cells);
    draw(of, map);
    const took = performance.now() - started;
    speed.took(took);
    Object.assign(picture.node.dataset, { cells, frame: took.toFixed(2) });
    return map;
  }

  function read(of: MapOf, aloud: boolean): void {
    const mark = markOf(state, of.along, of.up);
    picture.point(mark.x, mark.y);
    said.read(of, mark, aloud);
  }

  /** Shows a sentence instead of the map where the car cannot stand so. */
  function unlessRefused(work: () => void): void {
    try {
      work();
      picture.node.hidden = false;
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      picture.node.hidden = true;
      said.refuse(error.message);
    }
  }

  /** Draws and tells everything in full. */
  function settle(): void {
    clearTimeout(timer);
    unlessRefused(() => {
      const of = now();
      const map = frame(of, finest);
      const fresh = scalesOf(map, reader.units);
      scales = fresh;
      draw(of, map);
      key.show(fresh, map.room.length > 0);
      said.tell(of, map);
      numbers.show(of);
      blend.hidden = ![of.along, of.up].some(({ parameter }) => parameter === "barPosition");
    });
  }

  function move(value: number): void {
    state = { ...state, value };
    link.forget();
    clearTimeout(timer);
    timer = window.setTimeout(settle, rest);
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      unlessRefused(() => void frame(now(), speed.detail()));
    });
  }

  function change(next: MapState): void {
    state = next;
    scales = undefined;
    fault.hidden = true;
    const { along, up, third } = axesIn(state, axes);
    chooser.show(state, third);
    picture.node.setAttribute("aria-label", spell(words.map(along.name, up.name)));
    link.forget();
    settle();
  }

  function follow(): boolean {
    const wanted = mapFromLink(location.hash, axes);
    if (wanted === undefined) return false;
    change(wanted.state);
    fault.textContent = spell(wanted.faults.join(" "));
    fault.hidden = wanted.faults.length === 0;
    return true;
  }

  steer(picture.node, {
    placeOf: picture.placeOf,
    now: () => {
      const { along, up } = axesIn(state, axes);
      return { mark: markOf(state, along, up), along, up };
    },
    to: (mark) => {
      state = { ...state, mark };
      link.forget();
      read(now(), true);
    },
  });
  const reset = element("button", { type: "button" }, shared.reset);
  reset.addEventListener("click", () => {
    history.replaceState(null, "", location.href.replace(/#.*$/s, ""));
    change(first);
  });
  const figure = element(
    "div",
    { class: "figure" },
    chooser.node,
    picture.node,
    chooser.moving,
    said.reading,
    element("p", { id: "map-keys", class: "hint" }, words.keys),
    said.result,
    fault,
    element("div", { class: "buttons" }, reset, ...link.nodes),
    key.node,
  );
  place.append(figure, numbers.node, blend, said.accuracy);

  new ResizeObserver(() => {
    picture.again();
    read(now(), false);
  }).observe(picture.node);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => picture.again());
  addEventListener("hashchange", follow);
  if (!follow()) change(first);
}

import {
  type ApproximateMap,
  approximateMap,
  type Car,
  finerMap,
  gridOf,
  type MapAxis,
  type MapOf,
  phaseNames,
  Refusal,
  type SetUpMap,
} from "@rollbook/lib";
import { element, reader, words as shared, spell } from "@rollbook/page";
import { linkToMap, mapFromLink } from "../link.js";
import { mapOf } from "../map-of.js";
import { type Scales, scalesOf } from "../scales.js";
import { mapSolver } from "../solve/solver.js";
import { axesIn, type MapState, markOf, withLever } from "../state.js";
import { words } from "../words.js";
import { chart } from "./chart.js";
import { controls } from "./controls.js";
import { legend } from "./legend.js";
import { linkButton } from "./link-button.js";
import { sentences } from "./sentences.js";
import { steer } from "./steering.js";
import { table } from "./table.js";

const rest = 150; // ms without a move until the map is worked out in full and told
const coarse = 22; // places a side of a map worked out while a lever moves

/** Puts the map of a car into a place, with all that belongs to it. */
export function liveMap(
  place: HTMLElement,
  car: Car,
  axes: readonly MapAxis[],
  first: MapState,
): void {
  let state = first;
  let scales: Scales | undefined;
  let [waiting, timer] = [0, 0]; // a frame that was asked for, and the rest after a move
  let base: SetUpMap | undefined; // exact, over the same levers, with the third one nearby
  let near: ApproximateMap | undefined; // the last one drawn
  let [round, worst] = [0, 0]; // of those drawn from one base
  let drawnFrom: SetUpMap | undefined;
  const solver = mapSolver("map-worker.js");
  const [picture, key, numbers, said] = [chart(), legend(), table(), sentences()];
  const progress = element("progress", { class: "progress", "aria-hidden": "true", max: 1 });
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

  /** Draws what few places tell of the map, and says how far off it is. */
  function sketch(of: MapOf, kind: "moving" | "working"): void {
    const started = performance.now();
    const map = approximateMap(of, gridOf(of), { base, near, round: round++ });
    near = map;
    worst = Math.max(drawnFrom === base ? worst : 0, map.error);
    drawnFrom = base;
    draw(of, map);
    said.howExact({ kind, error: worst });
    const took = performance.now() - started;
    Object.assign(picture.node.dataset, { drawn: kind, frame: took.toFixed(2) });
    if (kind === "working") key.show(scales ?? scalesOf(map, reader.units), map);
  }

  /** Has a coarse map worked out beside the page, so that what is drawn while a lever moves starts near. */
  function keepUp(of: MapOf): void {
    if (!solver.beside || solver.busy) return;
    const onDone = (map: SetUpMap) => {
      base = finerMap(map, gridOf(of));
    };
    solver.begin({ of, grid: gridOf(of, coarse), aside: true, onDone });
  }

  /** Draws and tells everything in full. */
  function finish(of: MapOf, map: SetUpMap): void {
    base = map;
    const fresh = scalesOf(map, reader.units);
    scales = fresh;
    draw(of, map);
    picture.node.dataset.drawn = "exact";
    progress.classList.remove("on");
    key.show(fresh, map);
    said.howExact({ kind: "exact" });
    said.tell(of, map);
    numbers.show(of);
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
      if (!(error instanceof Refusal)) throw error;
      picture.node.hidden = true;
      progress.classList.remove("on");
      said.refuse(error.message);
    }
  }

  /** Has the map worked out in full. */
  function settle(): void {
    clearTimeout(timer);
    solver.drop();
    unlessRefused(() => {
      const of = now();
      if (waiting !== 0 || near === undefined) sketch(of, "working");
      else said.howExact({ kind: "working", error: worst });
      cancelAnimationFrame(waiting);
      waiting = 0;
      progress.value = 0;
      progress.classList.add("on");
      solver.begin({
        of,
        grid: gridOf(of),
        onPart: (part) => {
          progress.value = part;
        },
        onDone: (map) => finish(of, map),
      });
    });
  }

  function move(value: number): void {
    if (progress.classList.contains("on")) solver.drop();
    progress.classList.remove("on");
    state = { ...state, value };
    link.forget();
    clearTimeout(timer);
    timer = window.setTimeout(settle, rest);
    if (waiting !== 0) return;
    waiting = requestAnimationFrame(() => {
      waiting = 0;
      unlessRefused(() => {
        sketch(now(), "moving");
        keepUp(now());
      });
    });
  }

  function change(next: MapState): void {
    state = next;
    scales = undefined;
    [base, near, worst] = [undefined, undefined, 0];
    fault.hidden = true;
    const { along, up, third } = axesIn(state, axes);
    blend.hidden = ![along, up].some(({ parameter }) => parameter === "barPosition");
    said.wait();
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
    progress,
    chooser.moving,
    said.exactness,
    said.reading,
    element("p", { id: "map-keys", class: "hint" }, words.keys),
    said.result,
    fault,
    element("div", { class: "buttons" }, reset, ...link.nodes),
    key.node,
  );
  place.append(figure, numbers.node, blend);

  new ResizeObserver(() => {
    picture.again();
    read(now(), false);
  }).observe(picture.node);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => picture.again());
  addEventListener("hashchange", follow);
  if (!follow()) change(first);
}

import {
  applyChange,
  changeTo,
  type MapOf,
  mapAxesOf,
  mapError,
  phaseNames,
  phases,
  readMap,
  type SetUpMap,
  setUpMap,
  USUAL_SPEED,
} from "@rollbook/lib";
import {
  chosenCar,
  element,
  format,
  placeOf,
  reader,
  words as shared,
  spell,
} from "@rollbook/page";
import { pace } from "./detail.js";
import { linkToMap, mapFromLink } from "./link.js";
import { type Scales, scalesOf } from "./scales.js";
import { axesIn, firstState, type MapState, markOf, withLever } from "./state.js";
import { markAfter, markAt } from "./steer.js";
import { readingText, resultText, settingsOf } from "./tell.js";
import { chart } from "./view/chart.js";
import { controls } from "./view/controls.js";
import { legend } from "./view/legend.js";
import { table } from "./view/table.js";
import { words } from "./words.js";

const rest = 150; // ms without a move until the map is drawn in full and told

function open(place: HTMLElement): void {
  const car = chosenCar();
  const axes = mapAxesOf(car);
  const first = firstState(axes);
  if (first === undefined) {
    place.replaceChildren(element("p", {}, words.tooFew(car.name)));
    return;
  }
  let state: MapState = first;
  let scales: Scales | undefined;
  let [waiting, timer] = [false, 0];
  const speed = pace();

  const picture = chart();
  const key = legend();
  const numbers = table();
  const result = element("p", { class: "says", role: "status" });
  const reading = element("p", { class: "says reading", role: "status", "aria-live": "off" });
  const fault = element("p", { class: "fault", role: "alert", hidden: true });
  const told = element("span", { class: "told", role: "status" });
  const accuracy = element("p", { class: "hint" });
  const chooser = controls(axes, {
    lever: (part, lever) => change(withLever(state, part, lever)),
    phase: (name) =>
      change({ ...state, phase: phaseNames.find((one) => one === name) ?? "middle" }),
    value: (value) => move(value),
  });

  function mapOf(): MapOf & { readonly along: MapOf["along"] } {
    const { along, up, third } = axesIn(state, axes);
    const value = third?.parameter === "barPosition" ? Math.round(state.value ?? 1) : state.value;
    const moved = third !== undefined && value !== undefined;
    return {
      car: moved ? applyChange(car, changeTo(third, value)) : car,
      measured: car,
      along,
      up,
      driving: { speed: USUAL_SPEED, ...phases[state.phase] },
    };
  }

  /** Shows a sentence instead of the map where the car cannot stand so. */
  function unlessRefused(work: () => void): void {
    try {
      work();
      picture.node.hidden = false;
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      picture.node.hidden = true;
      result.textContent = words.notDrawn(error.message);
    }
  }

  function solve(of: MapOf, cells: number): SetUpMap {
    const started = performance.now();
    const map = setUpMap(of, cells);
    scales ??= scalesOf(map, reader.units);
    picture.draw({ map, scales, along: of.along, up: of.up });
    read(of, false);
    const took = performance.now() - started;
    speed.took(took);
    Object.assign(picture.node.dataset, { cells, frame: took.toFixed(2) });
    return map;
  }

  function read(of: MapOf, announced: boolean): void {
    const { x, y } = markOf(state, of.along, of.up);
    picture.point(x, y);
    reading.setAttribute("aria-live", announced ? "polite" : "off");
    reading.textContent = spell(sentenceAt(of, x, y));
  }

  /** Everything in full: the fine map, the sentence, the table, the legend. */
  function settle(anew: boolean): void {
    clearTimeout(timer);
    if (anew) scales = undefined;
    unlessRefused(() => {
      const of = mapOf();
      const map = solve(of, 64);
      scales = scalesOf(map, reader.units);
      picture.draw({ map, scales, along: of.along, up: of.up });
      key.show(scales, map.room.length > 0);
      result.textContent = spell(resultText(map, of.along, of.up, format));
      numbers.show(of);
      accuracy.textContent = words.blended(format("acceleration", roundedUp(mapError(of)), 3));
    });
  }

  function move(value: number): void {
    state = { ...state, value };
    told.textContent = "";
    clearTimeout(timer);
    timer = window.setTimeout(() => settle(false), rest);
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      unlessRefused(() => void solve(mapOf(), speed.detail()));
    });
  }

  function change(next: MapState): void {
    state = next;
    const { along, up, third } = axesIn(state, axes);
    chooser.show(state, third);
    picture.node.setAttribute("aria-label", spell(words.map(along.name, up.name)));
    told.textContent = "";
    settle(true);
  }

  function markTo(mark: { x: number; y: number } | undefined): void {
    if (mark === undefined) return;
    state = { ...state, mark };
    told.textContent = "";
    read(mapOf(), true);
  }

  function follow(): boolean {
    const wanted = mapFromLink(location.hash, axes);
    if (wanted === undefined) return false;
    fault.textContent = spell(wanted.faults.join(" "));
    fault.hidden = wanted.faults.length === 0;
    change(wanted.state);
    return true;
  }

  picture.node.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { along, up } = axesIn(state, axes);
    const mark = markAfter(event.key, markOf(state, along, up), along, up);
    if (mark === undefined) return;
    event.preventDefault();
    markTo(mark);
  });
  const point = (event: PointerEvent) => {
    const { along, up } = axesIn(state, axes);
    markTo(markAt(picture.placeOf(event), along, up));
  };
  picture.node.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    picture.node.setPointerCapture(event.pointerId);
    point(event);
  });
  picture.node.addEventListener("pointermove", (event) => {
    if (picture.node.hasPointerCapture(event.pointerId)) point(event);
  });

  const link = element("button", { type: "button", class: "link" }, words.link);
  link.addEventListener("click", async () => {
    const address = location.href.replace(/#.*|$/s, linkToMap(state, axes));
    try {
      await navigator.clipboard.writeText(address);
      told.textContent = words.linked;
    } catch {
      history.replaceState(null, "", address);
      told.textContent = words.inBar;
    }
  });
  const reset = element("button", { type: "button" }, shared.reset);
  reset.addEventListener("click", () => {
    history.replaceState(null, "", location.href.replace(/#.*$/s, ""));
    fault.hidden = true;
    change(first);
  });

  place.replaceChildren(
    element("p", { class: "whose-car" }, words.whose(car.name)),
    element(
      "div",
      { class: "figure" },
      chooser.node,
      picture.node,
      chooser.moving,
      reading,
      element("p", { id: "map-keys", class: "hint" }, words.keys),
      result,
      fault,
      element("div", { class: "buttons" }, reset, link, told),
      key.node,
    ),
    numbers.node,
    element("p", { class: "hint" }, words.between),
    accuracy,
  );
  new ResizeObserver(() => {
    picture.again();
    read(mapOf(), false);
  }).observe(picture.node);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => picture.again());
  addEventListener("hashchange", follow);
  if (!follow()) change(first);
}

/** To the next thousandth above, so that what is said holds. */
const roundedUp = (error: number): number => Math.ceil(Math.max(error, 1e-9) * 1000) / 1000;

function sentenceAt(of: MapOf, x: number, y: number): string {
  try {
    return readingText(readMap(of, x, y), of.along, of.up, format);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return words.cannot(settingsOf(of.along, of.up, x, y, format), error.message);
  }
}

const place = placeOf("map");
if (place) open(place);

import type { DrivenCorner, Parameter, Practice } from "@rollbook/lib";
import { element, format, type LivePicture, livePicture, slider } from "@rollbook/page";
import { distanceAfter, lengthOf, momentAt, partsOf } from "../drive/along.js";
import { channelNames, channels, channelsOf } from "../drive/channels.js";
import { chartOf, type Look, tones, valuesAt } from "../drive/charts.js";
import { type Drives, driveNames, latest } from "../drive/drives.js";
import { planView } from "../drive/plan-view.js";
import { hereSays, saysOf } from "../drive/sentences.js";
import type { Level } from "../puzzle/puzzle.js";
import { words } from "../words.js";
import { button } from "./parts.js";

/** The figure of the drives. */
export interface Traces {
  readonly figure: HTMLElement;
  /** Shows one more drive. */
  show(drives: Drives): void;
  /** Shows the traces that the level kept back. */
  reveal(): void;
}

/** Plan view and traces of a puzzle's drives, all read at one place along the corner. */
export function tracesOf(practice: Practice, level: Level, known: DrivenCorner): Traces {
  const fault = element("p", { class: "fault", role: "alert", hidden: true });
  const tell = (sentence: string) => {
    fault.textContent = sentence;
    fault.hidden = false;
  };
  const title = words.alongTitle(practice.corner.name);
  const plan = livePicture(planView(practice.car, known), title, tell);
  const pictures: LivePicture<Look>[] = [plan];
  const panels = element("div", { class: "panels" }, plan.svg);
  const shown = new Set<string>();
  const addCharts = (names: typeof channelNames | ReturnType<typeof channelsOf>) => {
    for (const name of names.filter((one) => !shown.has(one))) {
      const chart = livePicture(chartOf(name, known), title, tell);
      shown.add(name);
      pictures.push(chart);
      panels.append(chart.svg);
    }
  };
  addCharts(channelsOf(level));

  let look: Look = { drives: { known }, distance: partsOf(known)[2]?.from ?? 0 };
  const says = element("p", { class: "says" });
  const here = element("p", { class: "here" });
  const values = element("div", {
    class: "table",
    role: "region",
    tabindex: 0,
    "aria-label": words.valuesHere,
  });
  const redraw = () => {
    for (const picture of pictures) picture.paint(look);
    here.textContent = hereSays(look.drives, look.distance);
    if (fold.open) values.replaceChildren(valuesTable(look, [...shown]));
  };
  const fold = element("details", {}, element("summary", {}, words.valuesHere), values);
  fold.addEventListener("toggle", redraw);
  const along = slider("place", placeOf(known), (distance) => {
    halt();
    look = { ...look, distance };
    redraw();
  });
  const move = (distance: number) => {
    look = { ...look, distance };
    along.set(distance);
    redraw();
  };
  const { control, halt } = player(() => look, move, here);
  const legend = element("p", { class: "legend" });
  const update = () => {
    says.textContent = saysOf(practice, look.drives);
    legend.replaceChildren(...legendOf(look.drives));
    redraw();
  };
  along.set(look.distance);
  here.setAttribute("aria-live", "polite");
  const bar = element("div", { class: "along" }, control, along.row);
  const figure = element(
    "figure",
    { class: "figure", id: "traces", "data-live": "" },
    element("figcaption", {}, title),
    legend,
    says,
    bar,
    here,
    fault,
    panels,
    element("p", { class: "quiet" }, words.planHelp),
    fold,
  );
  update();
  return {
    figure,
    show(drives) {
      look = { ...look, drives };
      update();
    },
    reveal() {
      addCharts(channelNames);
      redraw();
    },
  };
}

function placeOf(known: DrivenCorner): Parameter {
  const max = Math.floor(lengthOf(known));
  return {
    name: words.place,
    symbol: "s",
    quantity: "length",
    min: 0,
    max,
    step: 1,
    start: 0,
    decimals: 0,
  };
}

/** Plays the latest drive in its own time; who asks for less motion goes part by part. */
function player(look: () => Look, move: (distance: number) => void, here: Element) {
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  let frame = 0;
  const halt = () => {
    cancelAnimationFrame(frame);
    frame = 0;
    control.textContent = calm ? words.nextPart : words.play;
    here.setAttribute("aria-live", "polite");
  };
  const run = () => {
    const drive = latest(look().drives);
    const end = lengthOf(drive) - 1;
    const from = look().distance >= end ? 0 : look().distance;
    const start = performance.now() - 1000 * momentAt(drive, from).time;
    const step = (now: number) => {
      const distance = distanceAfter(drive, Math.max(0, now - start) / 1000);
      move(Math.min(distance, end));
      if (distance >= end) halt();
      else frame = requestAnimationFrame(step);
    };
    control.textContent = words.pause;
    here.setAttribute("aria-live", "off");
    frame = requestAnimationFrame(step);
  };
  const nextPart = () => {
    const parts = partsOf(latest(look().drives));
    const next = parts.find(({ from }) => from > look().distance + 0.5) ?? parts[0];
    move(Math.ceil(next?.from ?? 0));
  };
  const control: HTMLButtonElement = button("play", calm ? words.nextPart : words.play, () => {
    if (calm) nextPart();
    else if (frame === 0) run();
    else halt();
  });
  return { control, halt };
}

/** The stroke of each drive that is shown. */
function legendOf(drives: Drives): HTMLElement[] {
  return driveNames
    .filter((name) => drives[name] !== undefined)
    .map((name) => element("span", { class: `drive ${tones[name]}` }, words[name]));
}

function valuesTable(look: Look, shown: readonly string[]): HTMLElement {
  const moments = valuesAt(look);
  const heads = [words.what, ...moments.map(([name]) => words[name])];
  const traced = channelNames
    .filter((name) => shown.includes(name))
    .map((name) => {
      const { quantity, decimals } = channels[name];
      return [
        words.channels[name],
        ...moments.map(([, at]) => format(quantity, at[name], decimals)),
      ];
    });
  const loads = wheels.map(([end, side, name]) => [
    words.loads[name],
    ...moments.map(([, { load }]) => format("force", load[end][side], 0)),
  ]);
  return rowsOf(heads, [...traced, ...loads]);
}

const wheels = [
  ["front", "left", "frontLeft"],
  ["front", "right", "frontRight"],
  ["rear", "left", "rearLeft"],
  ["rear", "right", "rearRight"],
] as const;

/** A table whose first column heads its rows. */
export function rowsOf(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
): HTMLElement {
  const head = element("tr", {}, ...heads.map((text) => element("th", { scope: "col" }, text)));
  const body = rows.map(([first = "", ...rest]) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, first),
      ...rest.map((text) => element("td", {}, text)),
    ),
  );
  return element("table", {}, element("thead", {}, head), element("tbody", {}, ...body));
}

import type { Frame } from "./shapes.js";
import type { Chart, Drawing, Interval, Panel } from "./spec.js";
import { words } from "./words.js";

/** Where a panel's picture stands inside its SVG, in user units. */
export interface Layout extends Frame {
  readonly height: number;
  readonly box: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

const width = 480;
const chartHeight = 320;
const chartMargin = { top: 30, right: 24, bottom: 52, left: 64 };
const drawingMargin = 14;

export const isChart = <Values>(panel: Panel<Values>): panel is Chart<Values> => "y" in panel;

const scale =
  ([from, to]: Interval, [start, end]: Interval) =>
  (value: number): number =>
    start + ((value - from) / (to - from)) * (end - start);

function chartLayout<Values>(panel: Chart<Values>): Layout {
  const { top, right, bottom, left } = chartMargin;
  const box = { x: left, y: top, width: width - left - right, height: chartHeight - top - bottom };
  return {
    width,
    height: chartHeight,
    box,
    x: scale(panel.x.domain, [box.x, box.x + box.width]),
    y: scale(panel.y.domain, [box.y + box.height, box.y]),
  };
}

function drawingLayout<Values>({ view }: Drawing<Values>): Layout {
  const inner = width - 2 * drawingMargin;
  const unitsPerMetre = inner / (view.x[1] - view.x[0]);
  const box = {
    x: drawingMargin,
    y: drawingMargin,
    width: inner,
    height: (view.y[1] - view.y[0]) * unitsPerMetre,
  };
  return {
    width,
    height: box.height + 2 * drawingMargin,
    box,
    x: scale(view.x, [box.x, box.x + box.width]),
    y: scale(view.y, [box.y + box.height, box.y]),
  };
}

export function layoutOf<Values>(panel: Panel<Values>): Layout {
  return isChart(panel) ? chartLayout(panel) : drawingLayout(panel);
}

/** Attributes of the SVG that a panel is drawn into. */
export const pictureAttributes = ({ width, height }: Layout) => ({
  viewBox: `0 0 ${width} ${height}`,
  width,
  height,
});

/** Attributes of its layer that is cut off at the frame. */
export const clipAttributes = ({ box: { x, y, width, height } }: Layout) => ({
  x,
  y,
  width,
  height,
  viewBox: [x, y, width, height].join(" "),
});

/** What a panel shows, for those who cannot see it. */
export const panelLabel = <Values>(panel: Panel<Values>, title: string): string =>
  isChart(panel) ? `${title}: ${words.against(panel.y.label, panel.x.label)}` : panel.label;

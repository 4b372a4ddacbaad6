import { type PlotOptions, plot, type ScaleOptions } from "@observablehq/plot";
import { axisLabel, shownDomain, shownNames } from "../../../cells/frame-key.js";
import { isChart } from "../../../cells/layout.js";
import type { Axis, Chart, Drawing, Panel } from "../../../cells/spec.js";
import { toShown } from "../../../say/units.js";
import { plotMarks } from "./plot-marks.js";

/** A fixed scale in the shown unit, for values in SI. */
function scale(axis: Axis): ScaleOptions {
  const common: ScaleOptions = {
    type: "linear",
    domain: shownDomain(axis, "metric"),
    transform: (value: number) => toShown(axis.quantity, value),
    label: axisLabel(axis, "metric"),
    grid: true,
  };
  if (!axis.names) return { ...common, ticks: 6 };
  const names = new Map(shownNames(axis, "metric"));
  return { ...common, ticks: [...names.keys()], tickFormat: (at: number) => names.get(at) ?? "" };
}

const chartOptions = <Values>({ x, y }: Chart<Values>): PlotOptions => ({
  height: 320,
  marginTop: 30,
  marginRight: 24,
  marginBottom: 52,
  marginLeft: 64,
  x: scale(x),
  y: scale(y),
});

const drawingOptions = <Values>({ view }: Drawing<Values>): PlotOptions => ({
  margin: 14,
  axis: null,
  aspectRatio: 1,
  x: { domain: view.x },
  y: { domain: view.y },
});

/** A panel as a plot. */
export const picture = <Values>(panel: Panel<Values>, values: Values, ariaLabel: string) =>
  plot({
    width: 480,
    ariaLabel,
    style: { fontSize: "14px", overflow: "visible" },
    ...(isChart(panel) ? chartOptions(panel) : drawingOptions(panel)),
    marks: panel.draw(values).map(plotMarks),
  });

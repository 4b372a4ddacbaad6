import { isChart } from "./layout.js";
import type { Mark } from "./marks.js";
import { tablesOfChart } from "./numbers-chart.js";
import { tablesOfDrawing } from "./numbers-drawing.js";
import type { Chart, Drawing, Panel } from "./spec.js";

/** What a panel shows, as a table for those who cannot see it or want the figures. */
export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The tables that say what the marks of a panel show. */
export const tablesOf = <Values>(panel: Panel<Values>, marks: readonly Mark[]): Table[] =>
  isChart(panel)
    ? tablesOfChart(panel as unknown as Chart<never>, marks)
    : tablesOfDrawing(panel as unknown as Drawing<never>, marks);

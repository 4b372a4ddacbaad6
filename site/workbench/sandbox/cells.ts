/** The twin of site/cells/index.ts for edited cells: the same calls leave data for the page to show. */
import { isChart } from "../../cells/layout.js";
import type { Mark } from "../../cells/marks.js";
import type {
  ExerciseSpec,
  FigureSpec,
  Inputs,
  PredictSpec,
  ValuesOf,
  WorkedSpec,
} from "../../cells/spec.js";

export * from "../../cells/alike.js";

interface Drawn {
  readonly panels: readonly (readonly Mark[])[];
  readonly says: string;
}

/** What the cells left so far, and by which cell. */
export const left: { cell: number; output: unknown }[] = [];
/** How each figure is drawn, by its index in `left`. */
export const drawers = new Map<number, (values: Readonly<Record<string, number>>) => Drawn>();

let present = 0;
export const at = (cell: number): void => {
  present = cell;
};

const leave = (kind: string, spec: object): number =>
  left.push({ cell: present, output: { ...spec, kind } }) - 1;

export function figure<const I extends Inputs>(spec: FigureSpec<I>): void {
  const { id, title, inputs, panels, says } = spec;
  const still = panels.map((panel) =>
    isChart(panel) ? { x: panel.x, y: panel.y } : { view: panel.view, label: panel.label },
  );
  const index = leave("figure", { id, title, inputs, panels: still });
  drawers.set(index, (given) => {
    const values = given as ValuesOf<I>;
    return { panels: panels.map(({ draw }) => draw(values)), says: says(values) };
  });
}

export const worked = (spec: WorkedSpec): void => void leave("worked", spec);
export const predict = (spec: PredictSpec): void => void leave("predict", spec);
export const exercise = (spec: ExerciseSpec): void => void leave("exercise", spec);

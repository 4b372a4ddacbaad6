import { contours } from "d3";

/** The rectangle that a map is drawn in, px. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** One contour line, or one area: an SVG path, and where its label stands best. */
export interface Contour {
  readonly level: number;
  readonly path: string;
  readonly label?: { readonly x: number; readonly y: number };
}

/** Values on a square grid, from the lower left corner, row by row. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly values: ArrayLike<number>;
}

/** Which corners the labels of a set of lines run between. */
type LabelsAlong = "rising" | "falling";

/**
 * The lines on which a quantity has given values.
 *
 * They close half a step outside the frame, where whoever draws them cuts them off.
 */
export function contourLines(
  { columns, rows, values }: Grid,
  levels: readonly number[],
  frame: Frame,
  labels: LabelsAlong = "rising",
): Contour[] {
  const contour = contours().size([columns, rows]);
  const list = Array.from(values);
  const x = (column: number) => frame.left + ((column - 0.5) / (columns - 1)) * frame.width;
  const y = (row: number) => frame.top + (1 - (row - 0.5) / (rows - 1)) * frame.height;
  return levels.map((level) => {
    const rings = contour
      .contour(list, level)
      .coordinates.flat()
      .map((ring) => ring.map(([column = 0, row = 0]) => ({ x: x(column), y: y(row) })));
    const path = rings
      .map((ring) => `M${ring.map((at) => `${at.x.toFixed(1)},${at.y.toFixed(1)}`).join("L")}Z`)
      .join("");
    const label = bestLabel(rings.flat(), frame, labels);
    return label === undefined ? { level, path } : { level, path, label };
  });
}

/** px from the edges of the frame: half a label and a gap, so that it does not run into the ticks. */
const inside = { x: 24, y: 14 };

/** The point of a line nearest to a diagonal of the frame, so that labels move little from frame to frame. */
function bestLabel(points: readonly { x: number; y: number }[], frame: Frame, along: LabelsAlong) {
  let best: { x: number; y: number } | undefined;
  let nearest = Infinity;
  for (const point of points) {
    const [x, y] = [point.x - frame.left, point.y - frame.top];
    if (Math.min(x, frame.width - x) < inside.x || Math.min(y, frame.height - y) < inside.y)
      continue;
    const [u, v] = [x / frame.width, y / frame.height];
    const off = Math.abs(along === "rising" ? u + v - 1 : u - v);
    if (off < nearest) [nearest, best] = [off, point];
  }
  return best;
}

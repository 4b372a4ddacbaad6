import type { FittedTyre, Measured, TyreReading } from "@rollbook/lib";
import { format } from "@rollbook/page";
import { tyreWords as words } from "../../../say/your-car/tyre.js";
import { Fold } from "../../../ui/fold.js";
import { Table } from "../../../ui/table.js";
import { Pairs } from "./pairs.js";

interface Fit {
  readonly readings: readonly TyreReading[];
  readonly fit: FittedTyre;
}

/** The three numbers that were found, and what each reading is off from them. */
export function FitTold({ readings, fit }: Fit) {
  const { peak, fallWithLoad, stiffness, load, scatter } = fit;
  const under = format("force", load, 0);
  const both = ({ value, spread }: Measured, write: (x: number) => string) =>
    words.plusMinus(write(value), write(spread));
  return (
    <>
      <h3>{words.fitted(readings.length)}</h3>
      <Pairs
        rows={[
          [words.peak(under), both(peak, (x) => format("ratio", x, 3))],
          [words.fall, both(fallWithLoad, (x) => format("perLoad", x, 4))],
          [words.stiffness(under), both(stiffness, (x) => format("cornerStiffness", x, 0))],
        ]}
      />
      <p class="note">{words.spreads(format("force", scatter, 0))}</p>
      <Residuals readings={readings} fit={fit} />
      <p class="note">{words.unlike}</p>
      <Fold id="tyre-residuals" title={words.table}>
        <Table
          label={words.table}
          columns={[words.load, words.slip, words.force, words.off]}
          rows={readings.map(({ load, slipAngle, sideForce }, i) => [
            format("force", load, 0),
            format("angle", slipAngle, 1),
            format("force", sideForce, 0),
            format("force", fit.residuals[i] ?? 0, 0),
          ])}
        />
      </Fold>
    </>
  );
}

const WIDE = 320;
const HIGH = 180;
const EDGE = { left: 8, right: 8, top: 22, bottom: 34 };

/** A point for each reading: slip angle across, residual up, another shape for another load. */
function Residuals({ readings, fit: { residuals } }: Fit) {
  const angles = readings.map(({ slipAngle }) => slipAngle);
  const [from, to] = [Math.min(0, ...angles), Math.max(...angles, 0)];
  const most = Math.max(...residuals.map(Math.abs), 1e-9);
  const x = (angle: number) =>
    EDGE.left + ((angle - from) / (to - from || 1)) * (WIDE - EDGE.left - EDGE.right);
  const y = (off: number) =>
    EDGE.top + ((most - off) / (2 * most)) * (HIGH - EDGE.top - EDGE.bottom);
  const loads = [...new Set(readings.map(({ load }) => load))].sort((a, b) => a - b);
  return (
    <figure class="residuals">
      <figcaption>{words.residuals}</figcaption>
      <svg
        viewBox={`0 0 ${WIDE} ${HIGH}`}
        role="img"
        aria-label={words.residualsOf(format("force", most, 0))}
      >
        <line x1={EDGE.left} x2={WIDE - EDGE.right} y1={y(0)} y2={y(0)} class="zero" />
        <text x={EDGE.left} y={EDGE.top - 8}>{`+${format("force", most, 0)}`}</text>
        <text x={EDGE.left} y={HIGH - EDGE.bottom + 16}>
          {format("force", -most, 0)}
        </text>
        <text x={WIDE - EDGE.right} y={HIGH - EDGE.bottom + 16} text-anchor="end">
          {`${words.slip} ${format("angle", from, 1)} … ${format("angle", to, 1)}`}
        </text>
        {readings.map(({ load, slipAngle }, i) => (
          <path
            key={i}
            {...markOf(loads.indexOf(load))}
            transform={`translate(${x(slipAngle)} ${y(residuals[i] ?? 0)})`}
          />
        ))}
      </svg>
      <Legend loads={loads} />
    </figure>
  );
}

/** Which load each mark stands for. */
function Legend({ loads }: { readonly loads: readonly number[] }) {
  return (
    <p class="note legend">
      {loads.slice(0, MOST_LOADS).map((load, i) => (
        <span key={load}>
          <svg viewBox="-6 -6 12 12" aria-hidden="true">
            <path {...markOf(i)} />
          </svg>{" "}
          {format("force", load, 0)}{" "}
        </span>
      ))}
    </p>
  );
}

/** The mark of a load, by its place among the loads. */
const markOf = (place: number) => {
  const which = place % shapes.length;
  return { class: `load-${which}`, d: shapes[which] ?? "" };
};

const MOST_LOADS = 8;

/** A ring, a square, a lozenge, a triangle: told apart without colour. */
const shapes = [
  "M-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0z",
  "M-3 -3h6v6h-6z",
  "M0 -4.5L4.5 0L0 4.5L-4.5 0z",
  "M0 -4L4 3.5H-4z",
] as const;

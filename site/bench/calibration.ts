import { quantile, type Row } from "./row.js";

/** A fixed piece of work: additions, products and a table, none of the project's own code. */
function fixedLoop(): number {
  const table = new Float64Array(1024);
  let sum = 0.5;
  for (let i = 0; i < 20_000_000; i += 1) {
    sum = (sum * 1.000_001 + (table[i & 1023] ?? 0)) % 1000;
    table[(i * 7) & 1023] = sum * 0.5;
  }
  return sum;
}

function once(): number {
  const started = performance.now();
  if (!Number.isFinite(fixedLoop())) throw new Error("the fixed loop went astray");
  return performance.now() - started;
}

/** How quick this machine is, so that tables of two machines, or of a busy one, can be laid side by side. */
export const calibration = (when: string): Row[] => [
  {
    what: `calibration: a fixed loop in Node, ${when}`,
    value: quantile(Array.from({ length: 5 }, once), 0.5),
    unit: "ms",
  },
];

/** One measure beside the most that is allowed for it. */
export interface Row {
  readonly what: string;
  readonly value: number;
  /** Nothing for what only tells how quick the machine is. */
  readonly most?: number;
  readonly unit: string;
}

/** A number with three telling digits, whole from 100 on. */
export const round = (value: number): string =>
  value >= 100 ? value.toFixed(0) : value.toPrecision(3);

/** Rows as a Markdown table; the last column is what counts on a machine of another speed. */
export function table(rows: readonly Row[]): string {
  const lines = rows.map(({ what, value, most, unit }) => {
    const allowed = most === undefined ? "– | –" : `${most} ${unit} | ${(value / most).toFixed(2)}`;
    return `| ${what} | ${round(value)} ${unit} | ${allowed} |`;
  });
  return ["| measure | now | at most | share |", "|---|---|---|---|", ...lines].join("\n");
}

/** The value below which a share of the sample lies. */
export function quantile(sample: readonly number[], share: number): number {
  const sorted = [...sample].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

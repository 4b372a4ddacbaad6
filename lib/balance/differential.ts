/** How the drive of an axle is shared between its two wheels. */
export type AxleDifferential =
  | { readonly kind: "open" }
  | {
      readonly kind: "limited-slip";
      /** share of the push through it by which the wheels may differ under power, 0–1 */
      readonly power: number;
      /** the same on the overrun */
      readonly overrun: number;
    }
  | { readonly kind: "locked" };

/** What is assumed of an axle whose differential is not known. */
const OPEN: AxleDifferential = { kind: "open" };

/** Share of a driving push by which the two wheels may differ: 0 open, 1 locked. */
export function lockUnderPower(differential: AxleDifferential = OPEN): number {
  if (differential.kind === "open") return 0;
  return differential.kind === "locked" ? 1 : differential.power;
}

/** The same of the push that an engine holds back with. */
export function lockOnOverrun(differential: AxleDifferential = OPEN): number {
  if (differential.kind === "open") return 0;
  return differential.kind === "locked" ? 1 : differential.overrun;
}

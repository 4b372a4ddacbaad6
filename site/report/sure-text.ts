import type { PhaseName } from "../../lib/balance/phases.js";
import type { DoubtShare } from "../../lib/certainty/doubt-shares.js";
import type { BandedPhase } from "../../lib/certainty/phase-bands.js";
import type { HowSure as Verdict } from "../../lib/certainty/sign-holds.js";
import { inList } from "../say/in-list.js";
import { numberInWords } from "../say/number-names.js";

/** What bands and verdicts are, and from how many cars. */
export function bandsNote(samples: number, seed: number): string {
  return `Bands: of ${samples} cars that differ from this one as far as the numbers of its file may be off, nine in ten lie inside (seed ${seed}). Sure, likely, cannot say: whether the figure keeps its sign in them, in 95 % or more, in 75 % or more, or not so often.`;
}

/** The numbers whose doubt widens a band most, with their share in tenths; nothing where none stands out. */
export function widestNote(widest: readonly DoubtShare[]): string | undefined {
  const most = widest.slice(0, 3).map(({ path, share }) => {
    return `${numberInWords(path)} (${10 * Math.round(10 * share)} %)`;
  });
  return most.length === 0 ? undefined : `about ${inList(most)}`;
}

/** How sure the way is in which a change moves the margin: "sure; cannot say braking in". */
export function verdictInWords(
  phases: Readonly<Record<PhaseName, BandedPhase>>,
  told: readonly PhaseName[],
): string {
  const verdicts = told.map((phase) => phases[phase].understeerMargin.sign.verdict);
  const count = (verdict: Verdict) => verdicts.filter((one) => one === verdict).length;
  const order = (["sure", "likely", "cannot say"] as const).filter((one) => count(one) > 0);
  const usual = [...order].sort((a, b) => count(b) - count(a))[0] ?? "";
  const others = order
    .filter((one) => one !== usual)
    .map((one) => `${one} ${inList(told.filter((_, i) => verdicts[i] === one))}`);
  return [usual, ...others].join("; ");
}

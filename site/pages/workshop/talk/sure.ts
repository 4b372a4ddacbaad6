import type { Signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { type BandsOf, type BandsSoFar, bandsFrom } from "../../../bands/bands.js";

/** One at a time: what is looked at now ends what was being worked out for the last. */
const bands = bandsFrom("workshop-worker.js");

/** How sure changes are: worked out for as long as they are looked at, and kept in `sure`. */
export function useSureness(of: BandsOf, sure: Signal<BandsSoFar | undefined>): void {
  useEffect(() => {
    const { count = 0, of: all = 1 } = sure.peek() ?? {};
    if (of.changes.length === 0 || count >= all) return;
    bands.begin(of, (told) => {
      sure.value = told;
    });
    return () => bands.drop();
  }, [of, sure]);
}

import type { Signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { BandsOf, BandsSoFar } from "../../../bands/bands.js";
import { stop, workOut } from "../../../bands/worked.js";

/** How sure changes are: worked out for as long as they are looked at, and kept in `sure`. */
export function useSureness(of: BandsOf, sure: Signal<BandsSoFar | undefined>): void {
  useEffect(() => {
    const { count = 0, of: all = 1 } = sure.peek() ?? {};
    if (of.changes.length === 0 || count >= all) return;
    workOut(of, (told) => {
      sure.value = told;
    });
    return stop;
  }, [of, sure]);
}

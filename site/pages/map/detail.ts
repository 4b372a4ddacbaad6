/** How many places each way a map has, from finest to coarsest. */
export const details = [64, 48, 32, 24, 16] as const;
export type Detail = (typeof details)[number];

const allowed = 16; // ms for a frame
const ease = 0.7; // of it, before a finer map is tried

/**
 * How fine the next frame is drawn while something moves, by how long the last ones took.
 *
 * Coarser after two slow frames, finer when the next finer one would take well under a frame.
 */
export function pace() {
  let [at, slow] = [0, 0];
  return {
    detail: (): Detail => details[at] ?? 16,
    took(milliseconds: number): void {
      slow = milliseconds > allowed ? slow + 1 : 0;
      if (slow >= 2 && at < details.length - 1) {
        at += 1;
        slow = 0;
      } else if (at > 0) {
        const finer = (details[at - 1] ?? 64) / (details[at] ?? 64);
        if (milliseconds * finer ** 2 < allowed * ease) at -= 1;
      }
    },
  };
}

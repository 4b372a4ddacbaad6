/** One look at the device's clock, which somebody may set, and at the one that only counts on. */
export interface Look {
  /** ms since 1970 */
  readonly told: number;
  /** ms since the page was opened */
  readonly counted: number;
  /** Whether the page was out of sight since the look before: then the device may have slept. */
  readonly away: boolean;
}

const NOTICED = 5000; // ms; smaller corrections are a clock that is kept right

/** How far the device's clock was set between two looks, ms; a device that slept was not set forward. */
export function jumpBetween(before: Look, now: Look): number {
  const jump = now.told - before.told - (now.counted - before.counted);
  return Math.abs(jump) < NOTICED || (jump > 0 && now.away) ? 0 : jump;
}

/** Days from one review to the next; longer each time it is right – after Latimier 2021. */
const intervals = [1, 3, 7, 21] as const;

/** One time that something was asked. */
export interface TimeAsked {
  /** Counted from 1 January 1970. */
  readonly day: number;
  readonly isRight: boolean;
}

/** Where something that is asked again and again stands. */
export interface Recall {
  /** How many reviews it has passed. */
  readonly passed: number;
  /** The day on which it is due; left out once it has passed them all. */
  readonly due?: number;
}

/**
 * Where something stands after it was asked once more: a right answer on its day or later takes it
 * on, a wrong one starts it over, a right one before its day changes nothing.
 */
export function recallAfter(before: Recall | undefined, { day, isRight }: TimeAsked): Recall {
  if (before === undefined || !isRight) return { passed: 0, due: day + intervals[0] };
  if (before.due === undefined || day < before.due) return before;
  const passed = before.passed + 1;
  const wait = intervals[passed];
  return wait === undefined ? { passed } : { passed, due: day + wait };
}

/** The day that it is here, counted from 1 January 1970. */
export function today(now = new Date()): number {
  return Math.floor((now.getTime() / 60_000 - now.getTimezoneOffset()) / 1440);
}

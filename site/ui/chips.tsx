import type { ComponentChildren } from "preact";

/** One choice of a row of chips: its value, what it shows, and how it is read out. */
interface Chip<Value extends string | number> {
  readonly value: Value;
  readonly text: string;
  readonly spoken?: string;
  /** Whether it cannot be chosen yet. */
  readonly shut?: boolean;
}

/** Choices that are shown as they are called. */
export const plainChips = <Value extends string>(values: readonly Value[]): Chip<Value>[] =>
  values.map((value) => ({ value, text: value }));

interface Asked<Value extends string | number> {
  readonly id: string;
  readonly question: string;
  readonly choices: readonly Chip<Value>[];
  readonly chosen: Value | undefined;
  readonly choose: (value: Value) => void;
  /** A class beside `chips`, such as "scale" for short ones in a row. */
  readonly kind?: string;
  /** What stands under the choices. */
  readonly children?: ComponentChildren;
}

/** A question with answers that a thumb can hit; one of them at most is chosen. */
export function Chips<Value extends string | number>({
  id,
  question,
  choices,
  chosen,
  choose,
  kind = "",
  children,
}: Asked<Value>) {
  return (
    <fieldset class={`chips ${kind}`} id={id}>
      <legend>{question}</legend>
      <div>
        {choices.map(({ value, text, spoken, shut }, i) => (
          <label class="chip" key={value}>
            <input
              type="radio"
              name={id}
              id={`${id}-${i}`}
              checked={value === chosen}
              aria-label={spoken}
              disabled={shut}
              onChange={() => choose(value)}
            />
            <span>{text}</span>
          </label>
        ))}
      </div>
      {children}
    </fieldset>
  );
}

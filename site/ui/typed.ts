/** What stands in a field as it was typed, the value that there is meanwhile, and the one before it was begun. */
export interface Typed<Value> {
  readonly text: string;
  readonly of: Value;
  readonly before: Value;
}

/** Where that is kept. */
export interface TypedIn<Value> {
  now(): Typed<Value> | undefined;
  keep(typed: Typed<Value> | undefined): void;
}

/** What was typed, where the value is still the one that it led to. */
export function typedFor<Value>(typedIn: TypedIn<Value>, value: Value): string | undefined {
  const typed = typedIn.now();
  return typed?.of === value ? typed.text : undefined;
}

/**
 * Takes in a text with each letter: the value is what it says, or what it was before where it cannot
 * be used, so that no half of it stays behind.
 *
 * @param read - the value of the text; nothing where it cannot be used
 */
export function takeTyped<Value>(
  text: string,
  read: Value | undefined,
  value: Value,
  typedIn: TypedIn<Value>,
  report: (value: Value) => void,
): void {
  const last = typedIn.now();
  const before = last?.of === value ? last.before : value;
  const of = read ?? before;
  typedIn.keep({ text, of, before });
  if (of !== value) report(of);
}

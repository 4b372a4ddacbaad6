import { useComputed } from "@preact/signals";
import { documentOf } from "@rollbook/page";
import type { Typed, TypedIn } from "../../../ui/typed.js";

type Value = string | number;
type All = Readonly<Record<string, Typed<Value>>>;

const isValue = (kept: unknown): kept is Value =>
  typeof kept === "string" || typeof kept === "number";

const isTyped = (kept: unknown): kept is Typed<Value> => {
  const { text, of, before } = (kept ?? {}) as Partial<Typed<Value>>;
  return typeof text === "string" && isValue(of) && typeof before === typeof of;
};

/** Fields of the plan in which something stands that is no value yet, by their ids. */
const kept = documentOf<All>({
  key: "workshop/half-typed",
  empty: {},
  read: (all) => Object.fromEntries(Object.entries(all ?? {}).filter(([, one]) => isTyped(one))),
});

/** What is half typed in a field, kept on the device with each letter. */
export function useHalfTyped<Own extends Value>(id: string): TypedIn<Own> {
  const own = useComputed(() => kept.now.value[id] as Typed<Own> | undefined);
  return {
    now: () => own.value,
    keep: (typed) => {
      const { [id]: before, ...others } = kept.now.value;
      if (typed !== undefined) void kept.setTyped({ ...others, [id]: typed });
      else if (before !== undefined) void kept.setTyped(others);
    },
  };
}

/** Forgets it, for another day is open. */
export function forgetHalfTyped(): void {
  if (Object.keys(kept.now.value).length > 0) void kept.set({});
}

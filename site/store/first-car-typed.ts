import { documentOf } from "@rollbook/page";
import { isTyped, type Typed } from "./car-draft.js";

type TypedByField = Readonly<Record<string, Typed>>;

function asTyped(kept: unknown): TypedByField | undefined {
  if (typeof kept !== "object" || kept === null || Array.isArray(kept)) return undefined;
  return Object.fromEntries(Object.entries(kept).filter(([, typed]) => isTyped(typed)));
}

/** What is half typed of a first car. */
export const firstCarTyped = documentOf<TypedByField>({
  key: "first-car",
  empty: {},
  read: asTyped,
});

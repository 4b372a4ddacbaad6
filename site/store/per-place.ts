import { type Document, documentOf, type Shape } from "./document.js";
import { movedFrom } from "./moved.js";

export const pageName = (): string => document.documentElement.dataset.page ?? "";

/** What is kept under the name of a place in a page: a document for each place. */
export function perPlace<Value>(kind: string, shape: Omit<Shape<Value>, "key">) {
  const asked = new Map<string, Document<Value>>();
  return (id: string, page = pageName()): Document<Value> => {
    const key = `${kind}:${page}:${id}`;
    const before = movedFrom(id, page);
    const former = before !== undefined && { formerKey: `${kind}:${before}:${id}` };
    const known = asked.get(key) ?? documentOf({ key, ...former, ...shape });
    asked.set(key, known);
    return known;
  };
}

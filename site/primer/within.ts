/** Browser side: lets a chapter's cells find what the kernel left under the chapter's own prefix. */
interface Spec {
  readonly id?: unknown;
  readonly after?: unknown;
}

type Cells = Readonly<Record<string, unknown>>;

const shared = (globalThis as unknown as { rollbook: { cells: Cells; within?: unknown } }).rollbook;
const whole = shared.cells;

function prefixed(spec: unknown, prefix: string): unknown {
  const { id, after } = (spec ?? {}) as Spec;
  if (typeof id !== "string") return spec;
  const gate = typeof after === "string" ? { after: prefix + after } : {};
  return { ...(spec as object), id: prefix + id, ...gate };
}

/** Calls of cells from now on belong to the chapter with this prefix. */
shared.within = (prefix: string): void => {
  const entries = Object.entries(whole).map(([name, call]) => [
    name,
    typeof call === "function"
      ? (spec: unknown, ...rest: unknown[]) => call(prefixed(spec, prefix), ...rest)
      : call,
  ]);
  shared.cells = Object.fromEntries(entries);
};

/** What the last build made, by what it is, and from what; only a process that builds again and again keeps any. */
let made: Map<string, { readonly from: string; readonly made: unknown }> | undefined;

/** From now on this process keeps what it makes; it must end when its own program changes. */
export function keepWhatIsMade(): void {
  made ??= new Map();
}

/** What the last build made of the same, or what is made now. */
export function kept<Made>(what: string, from: string, make: () => Made): Made {
  const last = made?.get(what);
  if (last?.from === from) return last.made as Made;
  const now = make();
  made?.set(what, { from, made: now });
  if (now instanceof Promise) now.catch(() => made?.delete(what));
  return now;
}

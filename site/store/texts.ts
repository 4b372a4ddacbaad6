/**
 * What the course keeps on this device: JSON under names of its own.
 *
 * Each write leaves the value before it in place under a second name, so that a value that cannot be
 * read, for whatever reason, costs the last change at most.
 */
const nameOf = (key: string): string => `rollbook:${key}`;
const beforeOf = (key: string): string => `rollbook:${key}:before`;

/** Values of this visit that the device refused to keep. */
const held = new Map<string, string>();

function get(name: string): string | null {
  const mine = held.get(name);
  if (mine !== undefined) return mine;
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

/** What a kept text says; nothing where it cannot be read. */
export function parsed<Value>(text: string | null, accept: (value: unknown) => Value | undefined) {
  if (text === null) return undefined;
  try {
    return accept(JSON.parse(text));
  } catch {
    return undefined;
  }
}

/** The text under a key, whether or not it can be read. */
export const textOf = (key: string): string | null => get(nameOf(key));

/** The kept value, or the one before it where that is all that can be read. */
export function recall<Value>(
  key: string,
  accept: (value: unknown) => Value | undefined,
): Value | undefined {
  return parsed(textOf(key), accept) ?? parsed(get(beforeOf(key)), accept);
}

/** Keeps a value; false where the device refused and it is held for this visit only. */
export const keep = (key: string, value: unknown): boolean => keepText(key, JSON.stringify(value));

/** The same of a value that is text already. */
export function keepText(key: string, text: string): boolean {
  held.set(nameOf(key), text);
  try {
    const present = localStorage.getItem(nameOf(key));
    localStorage.setItem(nameOf(key), text);
    held.delete(nameOf(key));
    if (present !== null && present !== text) localStorage.setItem(beforeOf(key), present);
    return true;
  } catch {
    return false;
  }
}

/** Lets a value go, and the one before it. */
export function drop(key: string): void {
  for (const name of [nameOf(key), beforeOf(key)]) {
    held.delete(name);
    try {
      localStorage.removeItem(name);
    } catch {
      // A browser that keeps nothing has nothing to remove.
    }
  }
}

/** The text of every value whose key begins so, by the rest of its key; whether or not it can be read. */
export function keptBelow(prefix: string): Map<string, string> {
  const start = nameOf(prefix);
  const names = [...namesOnDevice(), ...held.keys()].filter((name) => name.startsWith(start));
  const own = names.filter((name) => !name.endsWith(":before"));
  return new Map(own.map((name) => [name.slice(start.length), get(name) ?? ""]));
}

function namesOnDevice(): string[] {
  try {
    return Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? "");
  } catch {
    return [];
  }
}

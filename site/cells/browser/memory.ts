/** What the reader filed, on this device only; a blocked store costs the memory, not the page. */
const held = new Map<string, string>();
const keyOf = (name: string) => `rollbook:${document.documentElement.dataset.chapter}:${name}`;

export function recall(name: string): string | undefined {
  const key = keyOf(name);
  try {
    return localStorage.getItem(key) ?? held.get(key);
  } catch {
    return held.get(key);
  }
}

export function remember(name: string, value: string): void {
  held.set(keyOf(name), value);
  try {
    localStorage.setItem(keyOf(name), value);
  } catch {
    // Held for this visit.
  }
}

export function forget(name: string): void {
  held.delete(keyOf(name));
  try {
    localStorage.removeItem(keyOf(name));
  } catch {
    // Nothing was stored.
  }
}

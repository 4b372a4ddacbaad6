/** A value as JSON text with the fields of every part in the order of the alphabet. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part) => (isPart(part) ? sorted(part) : part));
}

function isPart(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function sorted(part: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const names = Object.keys(part).sort();
  return Object.fromEntries(names.map((name) => [name, part[name]]));
}

/** Names are the same when they differ in capitals or space only. */
export const sameName = (a: string, b: string): boolean => nameKey(a) === nameKey(b);

/** A name as it is compared. */
export const nameKey = (name: string): string =>
  name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();

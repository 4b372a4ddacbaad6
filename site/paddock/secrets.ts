import { createHash, randomBytes, timingSafeEqual } from "node:crypto";

/** Letters that nobody takes for others when they are read out. */
const letters = "abcdefghjkmnpqrstuvwxyz23456789";

/** So many random letters; 31 divides 248, so that none comes more often. */
export function randomLetters(count: number): string {
  const found: string[] = [];
  while (found.length < count)
    for (const byte of randomBytes(count))
      if (byte < 248 && found.length < count) found.push(letters[byte % 31] ?? "");
  return found.join("");
}

export const randomToken = (): string => randomBytes(24).toString("base64url");

export const hashOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/** Whether two texts are the same, in a time that tells nothing of where they differ. */
export const isSameSecret = (one: string, other: string): boolean =>
  timingSafeEqual(Buffer.from(hashOf(one)), Buffer.from(hashOf(other)));

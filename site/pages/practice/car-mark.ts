import { type Car, canonical } from "@rollbook/lib";

/** Eight letters or digits that tell one car from another without saying anything of it: FNV-1a, 32 bits. */
export function markOf(car: Car): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(canonical(car)))
    hash = Math.imul(hash ^ byte, 0x01000193) >>> 0; // – Fowler, Noll, Vo 1991; RFC 9923
  return hash.toString(16).padStart(8, "0");
}

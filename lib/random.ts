/**
 * Numbers from 0 up to 1 that look random and are the same for the same seed, on every device.
 *
 * Multiply with carry of 16 bits, two generators – Marsaglia 2003, J. Mod. Appl. Stat. Methods 2(1).
 *
 * @param seed - any whole number
 */
export function randomFrom(seed: number): () => number {
  let z = ((seed >>> 0) ^ 0x9068ffff) >>> 0 || 1;
  let w = (Math.imul(seed | 0, 69069) + 1234567) >>> 0 || 1;
  return () => {
    z = (36969 * (z & 0xffff) + (z >>> 16)) >>> 0;
    w = (18000 * (w & 0xffff) + (w >>> 16)) >>> 0;
    return (((z << 16) + w) >>> 0) / 2 ** 32;
  };
}

/** One of several, by a number from 0 up to 1. */
export function pick<T>(items: readonly T[], random: () => number): T | undefined {
  return items[Math.floor(random() * items.length)];
}

/** A seed that a text stands for: the same text gives the same on every device. */
export function seedFrom(text: string): number {
  let hash = 0x811c9dc5; // FNV-1a, 32 bits – RFC 9923, from memory
  for (let i = 0; i < text.length; i++)
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash;
}

/** A number of the standard normal distribution from two that are from 0 up to 1 – Box and Muller 1958. */
export function normalFrom(random: () => number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}

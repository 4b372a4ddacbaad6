/** Numbers between two ends, evenly spread and always the same for a seed. – mulberry32 */
export function randomNumbers(seed: number): (min: number, max: number) => number {
  let state = seed >>> 0;
  return (min, max) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return min + ((max - min) * ((t ^ (t >>> 14)) >>> 0)) / 2 ** 32;
  };
}

/** The step of 1, 2 or 5 times a power of ten that cuts a span into at most so many parts. */
export function roundStep(span: number, parts: number): number {
  const rough = Math.max(span, 1e-9) / parts;
  const power = 10 ** Math.floor(Math.log10(rough));
  const lead = [1, 2, 5, 10].find((one) => one * power >= rough * (1 - 1e-9)) ?? 10;
  return Number((lead * power).toPrecision(6));
}

const most = 25;

/** All whole multiples of a step between two values; a greater step where there would be too many. */
export function levelsBetween(from: number, to: number, step: number): number[] {
  const wide = (to - from) / step > most ? roundStep(to - from, most) : step;
  const [first, last] = [Math.ceil(from / wide), Math.floor(to / wide)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) =>
    Number(((first + i) * wide).toPrecision(9)),
  );
}

/** Least and greatest of many numbers. */
export function rangeOf(numbers: ArrayLike<number>): { least: number; most: number } {
  let [least, greatest] = [Infinity, -Infinity];
  for (let i = 0; i < numbers.length; i++) {
    const number = numbers[i] ?? 0;
    if (number < least) least = number;
    if (number > greatest) greatest = number;
  }
  return { least, most: greatest };
}

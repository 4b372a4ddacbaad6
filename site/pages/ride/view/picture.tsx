import type { RideCorner } from "@rollbook/lib";

/** A corner as one line, from below: in, round, out; with the dot of its hardest moment. */
export interface Drawn {
  readonly path: string;
  readonly dot: { readonly x: number; readonly y: number; readonly size: number };
}

const SPEED = 1.1; // m of way in for each m/s: longer than wide, as a corner is
const STILL = 10; // m/s, where no speed is known
const ROUND = 30; // m of radius, where none is known
const STEPS = 24;

/** The line of a corner in metres, x to the right, y down: it begins upwards at 0, 0. */
export function drawn({ entrySpeed, radius, turned, way, hardestAt, peak }: RideCorner): Drawn {
  const side = way === "left" ? -1 : 1;
  const across = radius ?? ROUND;
  const at = (part: number) => {
    const angle = part * turned;
    return { x: side * across * (1 - Math.cos(angle)), y: -across * Math.sin(angle) };
  };
  const round = Array.from({ length: STEPS + 1 }, (_, i) => at(i / STEPS));
  const last = at(1);
  const out = {
    x: last.x + side * Math.sin(turned) * 8,
    y: last.y - Math.cos(turned) * 8,
  };
  const start = { x: 0, y: (entrySpeed ?? STILL) * SPEED };
  const path = [start, ...round, out]
    .map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`)
    .join("");
  return { path, dot: { ...at(hardestAt), size: 0.45 * peak } };
}

/** Where lines lie, with room for strokes around. */
function frameOf(lines: readonly Drawn[]): string {
  const points = lines.flatMap(({ path }) =>
    [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const),
  );
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs) - 6, Math.min(...ys) - 6];
  const size = Math.max(Math.max(...xs) + 6 - left, Math.max(...ys) + 6 - top);
  return [left, top, size, size].map((one) => one.toFixed(1)).join(" ");
}

/** One corner of one ride, or of two on top of each other. */
export function CornerPicture({
  corner,
  other,
  label,
}: {
  readonly corner: RideCorner;
  readonly other?: RideCorner | undefined;
  readonly label: string;
}) {
  const own = drawn(corner);
  const before = other && drawn(other);
  return (
    <svg viewBox={frameOf(before ? [before, own] : [own])} role="img" aria-label={label}>
      {before && <path d={before.path} class="other" />}
      {before && <circle cx={before.dot.x} cy={before.dot.y} r={before.dot.size} class="other" />}
      <path d={own.path} class="own" />
      <circle cx={own.dot.x} cy={own.dot.y} r={own.dot.size} class="own" />
    </svg>
  );
}

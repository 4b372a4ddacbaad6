import { type Axle, type TyreState, tyreOf, tyreSquash } from "@rollbook/lib";
import { area, arrow, label, line, type Mark, type Point, partOf, type Tone } from "../marks.js";
import { format } from "../reader.js";

/** One tyre from the side, as the road presses it flat, and its patch. */
export interface PressedTyre {
  /** m, with no load on it */
  readonly radius: number;
  /** m by which its wheel stands lower than that */
  readonly squash: number;
  /** N */
  readonly load: number;
  /** m², and m of half the patch along the tyre and across it */
  readonly patch: {
    readonly area: number;
    readonly halfLength: number;
    readonly halfWidth: number;
  };
}

/** A tyre of an axle under a load, N, at a pressure, Pa. */
export function tyrePressed(
  axle: Axle,
  state: Required<Pick<TyreState, "load" | "pressure">>,
): PressedTyre {
  const tyre = tyreOf(axle);
  return {
    radius: tyre.coefficients.UNLOADED_RADIUS,
    squash: tyreSquash(tyre, state),
    load: state.load,
    patch: tyre.contactPatch(state),
  };
}

/** What the drawing needs of a panel, m. */
export const pressedView = { x: [-0.34, 0.66], y: [-0.3, 0.36] } as const;

const PATCH_AT: Point = [0.49, 0.12];
const LONGEST = 0.22; // m of the arrow for the most load

/** How the tyre stands: a circle about a wheel that has sunk, pressed flat where it meets the road. */
function outline({ radius, squash, patch: { halfLength } }: PressedTyre): Point[] {
  const hub = radius - squash;
  const round = Array.from({ length: 73 }, (_, i): Point => {
    const angle = -Math.PI / 2 + (i * Math.PI) / 36;
    return [radius * Math.cos(angle), hub + radius * Math.sin(angle)];
  });
  const clear = round.filter(([x, z]) => z > 0.004 && (z > hub || Math.abs(x) > halfLength));
  const points: Point[] = [[halfLength, 0], ...clear, [-halfLength, 0]];
  return [...points, [halfLength, 0]];
}

function rim({ radius, squash }: PressedTyre): Point[] {
  return Array.from({ length: 49 }, (_, i): Point => {
    const angle = (i * Math.PI) / 24;
    return [0.6 * radius * Math.cos(angle), radius - squash + 0.6 * radius * Math.sin(angle)];
  });
}

/** Where its wheel turns, as a short line level with the road. */
const axleOf = ({ radius, squash }: PressedTyre, tone: Tone): Mark =>
  line(
    [
      [-0.05, radius - squash],
      [0.05, radius - squash],
    ],
    tone,
  );

function patchOf({ patch: { halfLength, halfWidth } }: PressedTyre): Point[] {
  const [x, y] = PATCH_AT;
  const corners = [
    [-1, -1],
    [-1, 1],
    [1, 1],
    [1, -1],
    [-1, -1],
  ] as const;
  return corners.map(([across, along]) => [x + across * halfWidth, y + along * halfLength]);
}

/** The lower part of the tyre from the side and its patch from above, to scale; pale what it was before. `most` is the load of the longest arrow, N. */
export function pressedTyre(now: PressedTyre, before: PressedTyre, most: number): Mark[] {
  const length = (LONGEST * now.load) / most;
  const road: Point[] = [
    [-0.34, 0],
    [0.34, 0],
  ];
  return [
    line(road, "ink", { weight: "fine" }),
    ...partOf("tyres", [
      area(outline(now), "tyres"),
      line(outline(now), "tyres", { weight: "fine" }),
      line(rim(now), "tyres", { weight: "fine" }),
      ...[outline(before), rim(before)].map((points) => line(points, "muted", { weight: "fine" })),
      ...[before, now].map((one) => axleOf(one, one === now ? "tyres" : "muted")),
      area(patchOf(now), "tyres"),
      line(patchOf(now), "tyres", { weight: "fine" }),
      line(patchOf(before), "muted", { weight: "fine" }),
      label([PATCH_AT[0], PATCH_AT[1] + 0.15], "its patch", "tyres"),
      label(PATCH_AT, format("area", now.patch.area, 0), "ink"),
    ]),
    ...partOf("loads", [arrow([0, -length], [0, 0], "ink", format("force", now.load, 0), "below")]),
  ];
}

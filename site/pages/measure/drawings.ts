import { escapeHtml } from "../../cells/escape.js";
import type { DrawnId } from "./model/spec.js";

/** Line drawings of how a thing is measured, in the colour of the text; the size of a drawing is 320 × 150. */
const path = (d: string, kind = ""): string => `<path d="${d}"${kind && ` class="${kind}"`}/>`;
const line = (x1: number, y1: number, x2: number, y2: number, kind = "") =>
  path(`M${x1} ${y1}L${x2} ${y2}`, kind);
const wheel = (x: number, y: number, r = 20) =>
  `<circle cx="${x}" cy="${y}" r="${r}"/><circle cx="${x}" cy="${y}" r="1.5" class="dot"/>`;
const text = (x: number, y: number, said: string, anchor = "middle") =>
  `<text x="${x}" y="${y}" text-anchor="${anchor}">${escapeHtml(said)}</text>`;

/** The ground, hatched below. */
function ground(from: number, to: number, y = 130): string {
  const strokes = Array.from({ length: Math.floor((to - from) / 9) }, (_, i) => {
    const x = from + 9 * (i + 1);
    return `M${x} ${y}l-6 6`;
  });
  return line(from, y, to, y) + path(strokes.join(""), "thin");
}

/** A length between two places, with a stroke at each end and what it is called. */
function length(x1: number, y1: number, x2: number, y2: number, said: string): string {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const size = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [(-4 * dy) / size, (4 * dx) / size];
  const ends = [
    [x1, y1],
    [x2, y2],
  ].map(([x = 0, y = 0]) => `M${x - nx} ${y - ny}l${2 * nx} ${2 * ny}`);
  const beside = Math.abs(dx) > Math.abs(dy);
  const [x, y] = [(x1 + x2) / 2, (y1 + y2) / 2];
  const label = beside ? text(x, y - 5, said) : text(x + 7, y + 4, said, "start");
  return line(x1, y1, x2, y2, "thin") + path(ends.join(""), "thin") + label;
}

/** A push downwards that ends at a place. */
const push = (x: number, y: number, said: string, from = 30) =>
  line(x, y - from, x, y) +
  path(`M${x - 4} ${y - 8}L${x} ${y}L${x + 4} ${y - 8}`) +
  text(x, y - from - 4, said);

/** A car from its left side, front to the left, wheels at 80 and 240. */
const side = (turned = "") =>
  `<g${turned && ` transform="${turned}"`}>${path("M40 104V84q2-6 40-10l32-24h62q30 8 44 24l58 6v24h-12m-48 0H108m-56 0H40")}${wheel(80, 110)}${wheel(240, 110)}</g>`;

/** A car from behind, wheels at 110 and 210. */
const behind = (turned = "") =>
  `${["98", "198"].map((x) => `<rect x="${x}" y="96" width="24" height="34" rx="5"/>`).join("")}<g${turned && ` transform="${turned}"`}>${path("M92 92V70q6-8 20-10l14-24h68l14 24q14 2 20 10v22z")}</g>`;

const scale = (x: number, y = 130) =>
  `<rect x="${x - 24}" y="${y}" width="48" height="7" class="full"/>`;

const drawn: Readonly<Record<DrawnId, readonly [alt: string, inner: () => string]>> = {
  "four-scales": [
    "A car on its wheels, a scale under each",
    () =>
      side() + scale(80) + scale(240) + ground(14, 306, 138) + length(80, 20, 240, 20, "wheelbase"),
  ],
  "raised-axle": [
    "A car with its front axle raised, the rear wheels on scales; the rise is measured at the wheel’s centre",
    () =>
      side("rotate(14 240 110)") +
      scale(240) +
      ground(14, 306, 138) +
      path("M72 92l-10 46h34l-10-46z", "thin") +
      line(18, 110, 130, 110, "dashed") +
      length(38, 110, 38, 71, "rise"),
  ],
  "ride-rate": [
    "A car with a mass right over its rear axle; the body is measured above the wheel’s centre",
    () =>
      side() +
      ground(14, 306) +
      push(240, 76, "known mass") +
      length(278, 130, 278, 80, "fall") +
      line(262, 80, 290, 80, "thin"),
  ],
  "sill-weight": [
    "A car from behind, leaning under a mass on its right sill; one side falls, the other rises",
    () =>
      behind("rotate(4 160 96)") +
      ground(20, 300) +
      push(250, 92, "mass") +
      path("M228 96h30", "thin") +
      line(160, 14, 160, 138, "dashed") +
      length(160, 20, 250, 20, "arm") +
      length(44, 130, 44, 86, "rose") +
      line(40, 86, 90, 86, "thin") +
      length(284, 130, 284, 102, "fell"),
  ],
  "motion-ratio": [
    "An arm with hub and spring: the hub rises by one length while the spring becomes shorter by another",
    () =>
      line(60, 96, 220, 104) +
      `<circle cx="60" cy="96" r="4"/><circle cx="220" cy="104" r="5"/>` +
      path("M126 98l-8-6 16-5-16-7 16-5-16-7 16-5-16-7 8-5V38") +
      line(104, 38, 152, 38) +
      length(168, 38, 168, 99, "spring") +
      wheel(240, 104, 26) +
      ground(20, 300) +
      length(284, 130, 284, 104, "hub"),
  ],
  linkage: [
    "A wheel on two arms from the front: each joint by its height and its distance from the middle plane",
    () =>
      line(40, 10, 40, 138, "dashed") +
      text(46, 18, "middle", "start") +
      `<rect x="232" y="70" width="26" height="60" rx="7"/>` +
      line(110, 58, 214, 66) +
      line(96, 112, 220, 108) +
      line(214, 66, 222, 108) +
      line(218, 92, 245, 100) +
      [
        [110, 58],
        [214, 66],
        [96, 112],
        [220, 108],
      ]
        .map(([x, y]) => `<circle cx="${x}" cy="${y}" r="4" class="full"/>`)
        .join("") +
      ground(20, 300) +
      length(40, 40, 214, 40, "from the middle") +
      length(164, 130, 164, 66, "height") +
      line(164, 66, 214, 66, "thin"),
  ],
  "tyre-rate": [
    "A wheel on a scale under a load; its centre is measured above the scale",
    () =>
      `<ellipse cx="160" cy="84" rx="47" ry="46"/><circle cx="160" cy="84" r="22"/><circle cx="160" cy="84" r="1.5" class="dot"/>` +
      push(160, 62, "load", 34) +
      scale(160) +
      ground(50, 270, 138) +
      line(160, 84, 250, 84, "thin") +
      length(236, 130, 236, 84, "centre"),
  ],
  "tyre-print": [
    "The print of a tyre on paper, its length and its width",
    () =>
      path("M70 24h180v110H70z") +
      `<rect x="112" y="50" width="96" height="58" rx="12"/>` +
      path("M112 64h96M112 79h96M112 94h96", "thin") +
      length(112, 42, 208, 42, "length") +
      length(220, 108, 220, 50, "width"),
  ],
  circle: [
    "A car on a circle of cones, its radius measured to the middle of the car",
    () =>
      `<circle cx="150" cy="76" r="62" class="dashed"/><circle cx="150" cy="76" r="2" class="dot"/>` +
      `<g transform="rotate(-90 212 76)"><rect x="196" y="69" width="32" height="14" rx="4" class="full"/></g>` +
      length(150, 76, 212, 76, "radius") +
      line(150, 6, 150, 24) +
      text(158, 12, "mark", "start") +
      path("M248 60q10 16 0 32M244 84l4 8 7-5"),
  ],
  ride: [
    "A car from behind that leans in a turn, a phone fixed to its body",
    () =>
      ground(40, 280, 132) +
      `<g transform="rotate(6 160 96)"><rect x="100" y="52" width="120" height="56" rx="10" class="full"/><rect x="150" y="64" width="20" height="34" rx="3"/></g>` +
      `<rect x="92" y="98" width="18" height="34" rx="4"/><rect x="210" y="98" width="18" height="34" rx="4"/>` +
      line(160, 96, 160, 20, "dashed") +
      line(160, 96, 168, 20, "thin") +
      text(176, 28, "roll", "start"),
  ],
  alignment: [
    "A wheel from the front, its lean against the upright; and a wheel from above between hub and string, its distance from the string in front and behind",
    () =>
      ground(16, 130) +
      `<rect x="60" y="36" width="26" height="92" rx="8" transform="rotate(7 73 128)"/>` +
      line(73, 16, 73, 130, "dashed") +
      text(108, 26, "camber", "start") +
      path("M73 30q8-2 13 2", "thin") +
      line(180, 118, 310, 118, "dashed") +
      text(245, 138, "string") +
      `<rect x="205" y="62" width="80" height="24" rx="7" transform="rotate(6 245 74)"/>` +
      length(208, 118, 208, 82, "") +
      text(202, 106, "in front", "end") +
      length(283, 118, 283, 90, "") +
      text(278, 110, "behind", "end"),
  ],
  "bar-and-links": [
    "A bar from above: how long it is between its bushes, its arms, and its diameter",
    () =>
      path("M62 122L78 58H218L234 122") +
      path("M66 122L81 62H215L230 122") +
      `<rect x="94" y="50" width="16" height="20" rx="3" class="full"/><rect x="186" y="50" width="16" height="20" rx="3" class="full"/>` +
      `<circle cx="64" cy="124" r="4" class="full"/><circle cx="232" cy="124" r="4" class="full"/>` +
      length(102, 36, 194, 36, "what twists") +
      line(218, 60, 262, 60, "thin") +
      line(236, 124, 262, 124, "thin") +
      length(256, 60, 256, 124, "arm") +
      `<circle cx="148" cy="106" r="16" class="full"/>` +
      length(132, 84, 164, 84, "across"),
  ],
  wheels: [
    "A wheel with its tyre on a scale, and its brake and upright on another",
    () =>
      `<circle cx="100" cy="84" r="46"/><circle cx="100" cy="84" r="26"/><circle cx="100" cy="84" r="1.5" class="dot"/>` +
      scale(100) +
      `<circle cx="216" cy="100" r="30"/><circle cx="216" cy="100" r="10"/><path d="M236 78q14 8 14 24l-10 2q-2-12-12-18z" class="full"/>` +
      scale(216) +
      path("M216 90L270 72M216 110L270 118", "thin") +
      line(243, 60, 243, 128, "dashed") +
      text(250, 52, "half of the arms") +
      ground(30, 306, 138),
  ],
  travels: [
    "A wheel on its arm, body on a stand: how far it rises to its stop and falls until it hangs",
    () =>
      `<rect x="34" y="48" width="60" height="44" rx="6" class="full"/>` +
      path("M56 92l-10 38h36l-10-38z", "thin") +
      line(94, 76, 196, 80) +
      `<circle cx="94" cy="76" r="4"/>` +
      wheel(204, 80, 28) +
      `<circle cx="204" cy="56" r="28" class="dashed"/><circle cx="202" cy="102" r="28" class="dashed"/>` +
      line(206, 56, 262, 56, "thin") +
      line(206, 80, 262, 80, "thin") +
      line(204, 102, 262, 102, "thin") +
      length(256, 80, 256, 56, "rises") +
      length(256, 102, 256, 80, "falls") +
      ground(20, 140),
  ],
  "people-and-fuel": [
    "A car from its side with somebody at the wheel: from the front wheel’s centre back to the hips; the tank",
    () =>
      side() +
      ground(14, 306) +
      `<circle cx="152" cy="60" r="7" class="full"/>` +
      path("M154 68l6 24h-26l-8 10") +
      `<circle cx="160" cy="92" r="3" class="dot"/>` +
      line(80, 24, 80, 110, "dashed") +
      line(160, 24, 160, 92, "dashed") +
      length(80, 28, 160, 28, "hips") +
      `<rect x="192" y="82" width="30" height="14" rx="3" class="full"/>` +
      text(207, 93, "fuel"),
  ],
  "brake-share": [
    "A brake disc: from its centre to the middle of the pad, and a piston by its diameter",
    () =>
      `<circle cx="104" cy="78" r="56"/><circle cx="104" cy="78" r="5"/><circle cx="104" cy="78" r="1.5" class="dot"/>` +
      path("M132 34q22 18 24 44q-2 26-24 44l-14-16q16-12 16-28t-16-28z", "full") +
      line(104, 78, 144, 78, "thin") +
      length(104, 78, 144, 78, "radius") +
      `<circle cx="242" cy="84" r="24" class="full"/>` +
      line(218, 50, 218, 84, "thin") +
      line(266, 50, 266, 84, "thin") +
      length(218, 54, 266, 54, "piston"),
  ],
};

/** The drawing of a measurement. */
export function drawingOf(id: DrawnId): string {
  const [alt, inner] = drawn[id];
  return `<svg class="drawing" viewBox="0 0 320 152" role="img" aria-label="${escapeHtml(alt)}">${inner()}</svg>`;
}

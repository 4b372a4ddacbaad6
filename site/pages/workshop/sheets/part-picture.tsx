import { axleInTurn, axleSeenThrough, label, seenClose } from "@rollbook/cells";
import { axleLoadsOf, type Car, type Change, type EndChange, isEndChange } from "@rollbook/lib";
import { type Drawing, livePicture } from "@rollbook/page";
import { PARTS } from "../parts/changed-parts.js";
import { words } from "../words.js";

const SIDES = { left: -1, right: 1 } as const;

/** An axle from behind with nothing in it but what is changed, at the side where it is. */
export function partDrawing(car: Car, end: EndChange["end"], changes: readonly EndChange[]) {
  const axle = axleInTurn(car, end, axleLoadsOf(car, 0));
  const changed = changes.flatMap(({ lever, side }) =>
    axleSeenThrough(axle, { only: [PARTS[lever]], side: side && SIDES[side] }),
  );
  return {
    view: { x: seenClose.x, y: [-0.1, 1.36] },
    label: words.sheets.axleDrawn(end),
    draw: () => [
      ...axleSeenThrough(axle, { only: ["body", "tyres"] }),
      ...changed,
      label([0, 1.26], words.sheets.axle(end), end),
    ],
  } satisfies Drawing<undefined>;
}

/** Which part of a car hands go to, and where: a small picture for each axle of which something is changed. */
export function PartPictures({
  car,
  changes,
}: {
  readonly car: Car;
  readonly changes: readonly Change[];
}) {
  const atEnds = changes.filter(isEndChange);
  const ends = [...new Set(atEnds.map(({ end }) => end))];
  const drawn = (end: EndChange["end"]) => (place: HTMLElement | null) => {
    const here = atEnds.filter((change) => change.end === end);
    const picture = livePicture(partDrawing(car, end, here), words.sheets.axle(end), () => {});
    picture.paint(undefined);
    place?.replaceChildren(picture.svg);
  };
  return (
    <div class="part-pictures">
      {ends.map((end) => (
        <div key={end} ref={drawn(end)} />
      ))}
    </div>
  );
}

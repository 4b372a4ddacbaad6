import { axleInTurn, axleSeenThrough, format, label, seenClose } from "@rollbook/cells";
import {
  applyChange,
  axleLoadsOf,
  type Car,
  type Change,
  canApply,
  type Distribution,
  isEndChange,
} from "@rollbook/lib";
import { type Drawing, livePicture } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import type { Part } from "../../../cells/marks.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { words } from "../words.js";
import { PARTS } from "./changed-parts.js";

type End = "front" | "rear";

const TURN = 7; // m/s², a brisk corner on road tyres
const newtons = (force: number): string => format("force", force, 0);

/** A car before a change and after it, in one settled left turn. */
interface Compared {
  readonly cars: { readonly before: Car; readonly after: Car };
  readonly loads: { readonly before: Distribution; readonly after: Distribution };
  readonly changes: readonly Change[];
}

/** The car with the changes made one after the other; nothing where it does not take one of them. */
const changedCar = (car: Car, changes: readonly Change[]): Car | undefined =>
  changes.reduce<Car | undefined>(
    (now, change) => (now && canApply(now, change) ? applyChange(now, change) : undefined),
    car,
  );

function comparedIn(car: Car, changes: readonly Change[]): Compared | undefined {
  const after = changedCar(car, changes);
  if (after === undefined) return undefined;
  const loads = { before: axleLoadsOf(car, TURN), after: axleLoadsOf(after, TURN) };
  return { cars: { before: car, after }, loads, changes };
}

/** An axle from behind with the parts that are changed on it, and the loads under its tyres; pale its body as it was. */
function axleDrawing({ cars, loads, changes }: Compared, end: End): Drawing<undefined> {
  const changed = changes.filter(isEndChange).filter((change) => change.end === end);
  const parts = changed.map(({ lever }) => PARTS[lever]);
  const only: Part[] = ["body", "tyres", ...parts, "loads"];
  const before = axleInTurn(cars.before, end, loads.before);
  const now = axleInTurn(cars.after, end, loads.after);
  return {
    view: { x: seenClose.x, y: [-0.8, 1.36] },
    label: words.sheets.axleDrawn(end),
    draw: () => [
      ...axleSeenThrough(now, { before, only }),
      ...([-1, 1] as const).map((side) =>
        label(
          [(side * now.track) / 2, -0.7],
          said.was(newtons(side < 0 ? before.load.left : before.load.right)),
          "muted",
        ),
      ),
      label([0, 1.26], words.sheets.axle(end), end),
    ],
  };
}

/** Which part of a car a change takes hold of, where it is, and what it does to the load under each tyre. */
export function ChangeInTurn({
  car,
  changes,
}: {
  /** Before the changes. */
  readonly car: Car;
  readonly changes: readonly Change[];
}) {
  const compared = useMemo(() => comparedIn(car, changes), [car, changes]);
  if (compared === undefined || changes.length === 0) return null;
  const drawn = (end: End) => (place: HTMLElement | null) => {
    const picture = livePicture(axleDrawing(compared, end), words.sheets.axle(end), () => {});
    picture.paint(undefined);
    place?.replaceChildren(picture.svg);
  };
  const outer = (end: End) => ({
    before: newtons(compared.loads.before[end].load.right),
    now: newtons(compared.loads.after[end].load.right),
  });
  return (
    <figure class="change-in-turn">
      <div>
        <div ref={drawn("front")} />
        <div ref={drawn("rear")} />
      </div>
      <figcaption>
        {said.inTurn(format("acceleration", TURN, 0), outer("front"), outer("rear"))}
      </figcaption>
    </figure>
  );
}

import { signal } from "@preact/signals";
import { Button } from "../../../ui/button.js";
import { openWall, Wall } from "../../../ui/wall.js";
import { words } from "../words.js";
import type { Kind } from "./chosen.js";
import type { OfDay } from "./paper.js";
import { SheetOf } from "./sheet-of.js";

const { sheets: said } = words;

/** Which sheet is on the wall, counted on and back without end; nothing before it is opened. */
const at = signal<number | undefined>(undefined);

/** Shows the first sheet large. */
export function openSheetWall(): void {
  at.value = 0;
  openWall();
}

/** The sheets one by one in large type. */
export function SheetWall({ kinds, ...of }: OfDay & { readonly kinds: readonly Kind[] }) {
  const turn = (by: number) => () => {
    at.value = (at.value ?? 0) + by;
  };
  const { length } = kinds;
  const kind = at.value === undefined ? undefined : kinds[((at.value % length) + length) % length];
  return (
    <Wall label={said.wall} opener="open-sheet-wall">
      {kind !== undefined && (
        <div>
          <p class="tools">
            <Button id="wall-before" work={turn(-1)}>
              {said.sheetBefore}
            </Button>
            <Button id="wall-next" work={turn(1)}>
              {said.nextSheet}
            </Button>
          </p>
          <SheetOf key={kind} kind={kind} {...of} />
        </div>
      )}
    </Wall>
  );
}

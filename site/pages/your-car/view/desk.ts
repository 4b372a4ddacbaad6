import type { Draft } from "../model/draft.js";
import type { Path } from "../model/path.js";
import type { Box } from "./box.js";

/** What the parts of the form work on together. */
export interface Desk {
  readonly draft: () => Draft;
  /** Takes what was typed at a place. */
  readonly type: (path: Path, text: string) => void;
  /** Changes which parts the car has; the form is made anew and the focus goes to the element named. */
  readonly change: (draft: Draft, focus: string) => void;
  /** Every box on the form. */
  readonly boxes: Map<Path, Box>;
}

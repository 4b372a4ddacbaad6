import { useWorkAtRest, type WorkedOut } from "../../../ui/work-at-rest.js";
import type { Draft } from "./draft.js";
import { inputOf, type Worked, worked } from "./worked.js";

/** The plan worked out while somebody looks at it. */
export const useWorked = (day: Draft, open: boolean): WorkedOut<Worked> =>
  useWorkAtRest(inputOf(day), open, () => worked(day));

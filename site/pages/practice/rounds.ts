import { asRounds, type PracticeRound } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { tidyLink } from "./puzzle-link.js";

/** The rounds that were played to their end on this device, the last one last. */
export const rounds = documentOf<readonly PracticeRound[]>({
  key: "practice-rounds",
  empty: [],
  read: (value) => asRounds(value, tidyLink),
});

import { say as tell } from "../../../ui/notice.js";

/** Says a sentence; with an undo it offers to take it back. */
export const say = (sentence: string, undo?: { label: string; work: () => void }): void =>
  tell(sentence, undo?.work);

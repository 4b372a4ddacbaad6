import { answered } from "../../../store/log.js";
import { say } from "../../../ui/notice.js";

/** Says a sentence once the device has kept what was written; where it refuses, the page says that. */
export const sayKept = (sentence: string): void =>
  void answered().then((kept) => {
    if (kept) say(sentence);
  });

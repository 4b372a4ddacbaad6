import { answered, write } from "../../../store/log.js";
import { say } from "../../../ui/notice.js";
import { words } from "../words.js";

/** Takes an entry out of what counts, and says so once that is kept, with a way back. */
export function withdraw(of: string, reason: string, sentence: string): void {
  const { id } = write({ kind: "withdrawal", of, reason });
  const back = () => void write({ kind: "withdrawal", of: id, reason: words.happen.reason });
  void answered().then((kept) => {
    if (kept) say(sentence, back);
  });
}

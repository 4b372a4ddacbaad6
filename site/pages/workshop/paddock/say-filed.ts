import { effect } from "@preact/signals";
import { answered } from "../../../store/log.js";
import { say } from "../../../ui/notice.js";
import { words } from "../words.js";
import { isPhone, standing } from "./place.js";

/** Says of a report where it is, once that is known: at the desk, or here. */
export function sayFiled(id: string): void {
  void answered().then((kept) => {
    if (!isPhone()) {
      if (kept) say(words.report.filed);
      return;
    }
    let told = "";
    const stop = effect(() => {
      const { waiting, refused, reachable, out, trouble } = standing.value;
      const here = waiting.includes(id);
      const kept = refused.includes(id) ? words.paddock.state.refused(1) : words.paddock.filed;
      const sentence = here ? words.paddock.waits : kept;
      if (here && reachable !== false && !out && trouble === undefined) return; // on its way
      if (told !== sentence) say(sentence);
      told = sentence;
      if (!here) queueMicrotask(() => stop());
    });
  });
}

/** Whether an entry is at the desk or waits here, in a word; nothing where there is no desk. */
export function whereIs(id: string): string | undefined {
  if (!isPhone()) return undefined;
  const { waiting, refused } = standing.value;
  return waiting.includes(id) || refused.includes(id)
    ? words.paddock.waitsHere
    : words.paddock.atDesk;
}

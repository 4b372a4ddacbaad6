import { documentOf, element } from "@rollbook/page";
import { puzzleFrom } from "../puzzle/link.js";
import { cornerOf } from "../puzzle/puzzle.js";
import { asHistory, points, type Round, totalOf, withRound } from "../record/history.js";
import { words } from "../words.js";
import { button, notice } from "./parts.js";

const kept = documentOf<readonly Round[]>({ key: "practice-rounds", empty: [], read: asHistory });
const rounds = (): readonly Round[] => kept.now.value;

/** The rounds kept on this device, the last one first. */
export interface History {
  readonly fold: HTMLElement;
  add(round: Round): void;
}

export function historyFold(): History {
  const list = element("div", {});
  const fold = element("details", { id: "rounds" }, element("summary", {}, words.history), list);
  const set = (changed: readonly Round[]) => {
    void kept.set(changed).then((held) => {
      if (!held) notice.textContent = words.notKept;
    });
    show();
  };
  const forget = () => {
    const old = rounds();
    set([]);
    const undo = button("undo-forget", words.undo, () => {
      notice.replaceChildren();
      set(old);
    });
    notice.replaceChildren(words.forgotten, " ", undo);
  };
  const show = () => {
    const all = rounds();
    if (all.length === 0) return list.replaceChildren(element("p", {}, words.noHistory));
    const items = [...all].reverse().map(itemOf);
    list.replaceChildren(element("ul", {}, ...items), button("forget", words.forget, forget));
  };
  show();
  return { fold, add: (round) => set(withRound(rounds(), round)) };
}

function itemOf(round: Round): HTMLElement {
  const puzzle = puzzleFrom(round.link, 0)?.puzzle;
  const corner = puzzle === undefined ? "" : cornerOf(puzzle.place).name;
  const text = words.round(corner, puzzle?.level ?? 1, words.total(points(totalOf(round))));
  const day = new Date(round.at).toLocaleDateString();
  const link = element("a", { href: round.link }, text);
  return element("li", {}, `${day} · `, link);
}

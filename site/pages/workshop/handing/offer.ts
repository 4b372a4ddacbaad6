import type { EntryKind, Log } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { fresh, takeIn } from "../../../store/log.js";
import { readFile } from "../log/take-in.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { unpack } from "./packed.js";

const { handing: said } = words;

/** What a link brings along, after "?take=". */
export const broughtIn = (hash: string): string | undefined => /\?take=([\w-]+)$/.exec(hash)?.[1];

/** Asks whether to take in what a link brings; nothing is taken in by itself. */
export async function offer(brought: string, taken: () => void): Promise<HTMLElement[]> {
  const text = await unpack(brought);
  const read = text === undefined ? undefined : readFile(text, fresh);
  if (read === undefined || read.faults !== undefined)
    return [element("p", { class: "beware" }, said.unreadable)];
  const place = element("div", { class: "offer", role: "region", "aria-label": said.title });
  const take = () => {
    const added = takeIn(read.log);
    place.remove();
    say(words.log.tookIn(said.title, added, read.log.entries.length - added));
    taken();
  };
  place.append(
    element("p", {}, said.brings(inWords(read.log))),
    element(
      "p",
      { class: "tools" },
      button("take-offer", said.take, take),
      button("leave-offer", said.leave, () => place.remove()),
    ),
  );
  return [place];
}

/** How many entries of each kind. */
function inWords({ entries }: Log): string {
  const counts = new Map<EntryKind, number>();
  for (const { kind } of entries) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts].map(([kind, count]) => said.count(count, words.log.kinds[kind])).join(", ");
}

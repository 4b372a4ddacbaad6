import { signal } from "@preact/signals";
import type { Log } from "@rollbook/lib";
import { unpack } from "../../../hand-over/packed.js";
import { fresh, takeIn } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { kindName } from "../log/kind-name.js";
import { readFile } from "../log/take-in.js";
import { words } from "../words.js";

const { handing: said } = words;

/** What a link has brought and nobody has answered yet. */
const brought = signal<Log | "unreadable" | undefined>(undefined);

/** Reads what the address brings along, after "?take=", and lets the address forget it. */
export async function readAddress(): Promise<void> {
  const packed = /\?take=([\w-]+)$/.exec(location.hash)?.[1];
  if (packed === undefined) return;
  history.replaceState(null, "", location.hash.replace(/\?.*$/s, ""));
  const text = await unpack(packed);
  const read = text === undefined ? undefined : readFile(text, fresh);
  brought.value = read === undefined || read.faults !== undefined ? "unreadable" : read.log;
}

/** Asks whether to take in what a link brought; nothing is taken in by itself. */
export function Offer() {
  const log = brought.value;
  if (log === undefined) return null;
  if (log === "unreadable") return <p class="beware">{said.unreadable}</p>;
  const leave = () => {
    brought.value = undefined;
  };
  const take = () => {
    const added = takeIn(log);
    leave();
    say(words.log.tookIn(said.title, added, log.entries.length - added));
  };
  return (
    <div class="offer" role="region" aria-label={said.title}>
      <p>{said.brings(inWords(log))}</p>
      <p class="tools">
        <Button id="take-offer" work={take}>
          {said.take}
        </Button>
        <Button id="leave-offer" work={leave}>
          {said.leave}
        </Button>
      </p>
    </div>
  );
}

/** How many entries of each kind. */
function inWords({ entries }: Log): string {
  const counts = new Map<string, number>();
  for (const { kind } of entries) {
    const name = kindName(kind);
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => said.count(count, name)).join(", ");
}

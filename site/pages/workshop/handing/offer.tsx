import { signal } from "@preact/signals";
import type { Log } from "@rollbook/lib";
import { addressCopied } from "@rollbook/page";
import { lettersIn } from "../../../hand-over/log-text.js";
import { unpack } from "../../../hand-over/packed.js";
import { answered, fresh, takeIn } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { kindName } from "../log/kind-name.js";
import { readFile } from "../log/take-in.js";
import { words } from "../words.js";
import { whichDay } from "./which-day.js";

const { handing: said } = words;

interface Brought {
  /** The whole address. */
  readonly link: string;
  readonly text: string;
  readonly log: Log;
}

/** What a link has brought and nobody has answered yet. */
const brought = signal<Brought | "unreadable" | undefined>(undefined);

/** Reads what the address brings along, after "?take=", and lets the address forget it. */
export async function readAddress(): Promise<void> {
  const link = location.href;
  const packed = lettersIn(link);
  if (packed === undefined) return;
  history.replaceState(null, "", location.hash.replace(/\?.*$/s, ""));
  const text = await unpack(packed);
  const { log } = text === undefined ? {} : readFile(text, fresh);
  brought.value = text === undefined || log === undefined ? "unreadable" : { link, text, log };
}

/** Asks whether to take in what a link brought; nothing is taken in by itself. */
export function Offer() {
  const now = brought.value;
  if (now === undefined) return null;
  if (now === "unreadable") return <p class="beware">{said.unreadable}</p>;
  const { link, text, log } = now;
  const { sentence: day, here } = whichDay(text, log);
  const leave = () => {
    brought.value = undefined;
  };
  const take = async () => {
    const added = takeIn(log);
    leave();
    if (await answered())
      return say(words.log.tookIn(said.title, added, log.entries.length - added));
    brought.value = now; // so that the link can still be copied
    say(words.log.tookInUnkept(said.title));
  };
  const copy = async () => say((await addressCopied(link)) ? said.copied : said.inAddress);
  return (
    <div class="offer" role="region" aria-label={said.title}>
      <p>{said.brings(inWords(log))}</p>
      <p class={here ? "" : "beware"}>{day ?? said.noDayNamed}</p>
      <p class="tools">
        <Button id="take-offer" work={() => void take()}>
          {said.take}
        </Button>
        <Button id="leave-offer" work={leave}>
          {said.leave}
        </Button>
        {!here && (
          <Button id="copy-offer" work={() => void copy()}>
            {said.copyLink}
          </Button>
        )}
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

import type { Log } from "@rollbook/lib";
import { log as said } from "../../../say/workshop/log.js";
import { fresh, takeIn } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { LARGEST_FILE, readFile } from "./take-in.js";

const MOST_SHOWN = 12;

/** What came of taking a file in: a sentence, and where it was refused what is wrong and what is sound. */
export interface TakenIn {
  readonly name: string;
  readonly sentence: string;
  readonly faults?: readonly string[];
  readonly sound?: Log;
}

/** Takes in what is sound as a whole; else tells the faults. */
export function takeText(name: string, text: string): TakenIn {
  const taken = readFile(text, fresh);
  if (taken.faults === undefined) return tookIn(name, taken.log);
  const { faults, sound } = taken;
  const sentence = said.refusedFile(name, faults.length);
  say(sentence);
  return { name, sentence, faults, sound };
}

export async function takeFile(file: File): Promise<TakenIn> {
  const { name } = file;
  if (file.size > LARGEST_FILE) return { name, sentence: said.tooLarge(name), faults: [] };
  try {
    return takeText(name, await file.text());
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { name, sentence: said.unreadFile(name), faults: [] };
  }
}

function tookIn(name: string, log: Log): TakenIn {
  const added = takeIn(log);
  const sentence = said.tookIn(name, added, log.entries.length - added);
  say(sentence);
  return { name, sentence };
}

/** What came of one file; what is sound of a refused one can be taken in all the same. */
export function Result({
  result: { name, sentence, faults, sound },
  replace,
}: {
  readonly result: TakenIn;
  readonly replace: (result: TakenIn) => void;
}) {
  if (faults === undefined) return <p>{sentence}</p>;
  if (sound === undefined) return <p class="beware">{sentence}</p>;
  const rest = faults.length - MOST_SHOWN;
  const count = sound.entries.length;
  return (
    <div class="beware">
      <p>{sentence}</p>
      <ul class="plain">
        {faults.slice(0, MOST_SHOWN).map((fault, i) => (
          <li key={i}>{fault}</li>
        ))}
        {rest > 0 && <li>{said.moreFaults(rest)}</li>}
      </ul>
      {count > 0 && (
        <Button id="take-sound" work={() => replace(tookIn(name, sound))}>
          {said.soundOnes(count)}
        </Button>
      )}
    </div>
  );
}

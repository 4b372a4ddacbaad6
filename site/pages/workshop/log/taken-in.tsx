import type { Faulty, Log } from "@rollbook/lib";
import { lettersOfLinks } from "../../../hand-over/log-text.js";
import { unpack } from "../../../hand-over/packed.js";
import { log as said } from "../../../say/workshop/log.js";
import { fresh, takeIn, theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { eventKnown } from "../day/known-day.js";
import { whichDay } from "../handing/which-day.js";
import { words } from "../words.js";
import { LARGEST_FILE, readFile } from "./take-in.js";

const MOST_SHOWN = 12;

/** What came of taking a file in: a sentence, and where it was refused what is wrong and what is sound. */
export interface TakenIn {
  readonly name: string;
  readonly sentence: string;
  readonly refused?: Faulty | "as a whole";
}

/** Takes in what is sound as a whole; else tells the faults. */
function takeText(name: string, text: string): TakenIn {
  const taken = readFile(text, fresh, { log: theLog(), event: eventKnown() });
  if (taken.faults === undefined) return tookIn(name, taken.log, text);
  const sentence = said.refusedFile(name, taken.faultCount);
  say(sentence);
  return { name, sentence, refused: taken };
}

export async function takeFile(file: File): Promise<TakenIn> {
  const { name } = file;
  if (file.size > LARGEST_FILE)
    return { name, sentence: said.tooLarge(name), refused: "as a whole" };
  try {
    return takeText(name, await file.text());
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { name, sentence: said.unreadFile(name), refused: "as a whole" };
  }
}

/** Takes in a pasted log or table, or what pasted links bring. */
export async function takePasted(text: string): Promise<TakenIn[]> {
  const links = lettersOfLinks(text);
  if (links === undefined) return [takeText(said.pasted, text)];
  const texts = await Promise.all(links.map(unpack));
  return texts.map((brought, i) => {
    const name = said.pastedLink(i + 1, texts.length);
    if (brought !== undefined) return takeText(name, brought);
    return { name, sentence: words.handing.unreadable, refused: "as a whole" };
  });
}

function tookIn(name: string, log: Log, text = ""): TakenIn {
  const added = takeIn(log);
  const told = said.tookIn(name, added, log.entries.length - added);
  const { sentence: day = "", here } = whichDay(text, log);
  const sentence = here ? told : `${told} ${day}`;
  say(sentence);
  return { name, sentence };
}

/** What came of one file; what is sound of a refused one can be taken in all the same. */
export function Result({
  result: { name, sentence, refused },
  replace,
}: {
  readonly result: TakenIn;
  readonly replace: (result: TakenIn) => void;
}) {
  if (refused === undefined) return <p>{sentence}</p>;
  if (refused === "as a whole") return <p class="beware">{sentence}</p>;
  const { faults, faultCount, sound } = refused;
  const shown = faults.slice(0, MOST_SHOWN);
  const rest = faultCount - shown.length;
  const count = sound.entries.length;
  return (
    <div class="beware">
      <p>{sentence}</p>
      <ul class="plain">
        {shown.map((fault, i) => (
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

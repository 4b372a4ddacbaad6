import type { Faulty, Log } from "@rollbook/lib";
import { lettersOfLinks } from "../../../hand-over/log-text.js";
import { unpack } from "../../../hand-over/packed.js";
import { log as said } from "../../../say/workshop/log.js";
import { answered, fresh, takeIn, theLog } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { goOn } from "../day/go-on.js";
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
  /** Whether it is only on the page, since the device did not keep it. */
  readonly unkept?: true;
}

/** Takes in what is sound as a whole; else tells the faults. */
async function takeText(name: string, text: string): Promise<TakenIn> {
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
    return await takeText(name, await file.text());
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { name, sentence: said.unreadFile(name), refused: "as a whole" };
  }
}

/** Takes in a pasted log or table, or what pasted links bring. */
export async function takePasted(text: string): Promise<TakenIn[]> {
  const links = lettersOfLinks(text);
  if (links === undefined) return [await takeText(said.pasted, text)];
  const texts = await Promise.all(links.map(unpack));
  const taken: TakenIn[] = [];
  for (const [i, brought] of texts.entries()) {
    const name = said.pastedLink(i + 1, texts.length);
    if (brought !== undefined) taken.push(await takeText(name, brought));
    else taken.push({ name, sentence: words.handing.unreadable, refused: "as a whole" });
  }
  return taken;
}

/** Takes a log in, and says so once the device has kept it; else that it is only here. */
async function tookIn(name: string, log: Log, text = ""): Promise<TakenIn> {
  const added = takeIn(log);
  if (!(await answered())) return notKept(name);
  const told = said.tookIn(name, added, log.entries.length - added);
  const { sentence: day = "", here } = whichDay(text, log);
  const open = goOn(text);
  const more = open === undefined ? (here ? "" : day) : said.goesOn(open.name);
  const sentence = more === "" ? told : `${told} ${more}`;
  say(sentence, open?.back);
  return { name, sentence };
}

function notKept(name: string): TakenIn {
  const sentence = said.tookInUnkept(name);
  say(sentence);
  return { name, sentence, unkept: true };
}

/** What came of one file; what is sound of a refused one can be taken in all the same. */
export function Result({
  result: { name, sentence, refused, unkept },
  replace,
}: {
  readonly result: TakenIn;
  readonly replace: (result: TakenIn) => void;
}) {
  if (refused === undefined) return <p class={unkept ? "beware" : ""}>{sentence}</p>;
  if (refused === "as a whole") return <p class="beware">{sentence}</p>;
  const { faults, faultCount, sound } = refused;
  const shown = faults.slice(0, MOST_SHOWN);
  const rest = faultCount - shown.length;
  const count = sound.entries.length;
  const takeSound = async () => replace(await tookIn(name, sound));
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
        <Button id="take-sound" work={() => void takeSound()}>
          {said.soundOnes(count)}
        </Button>
      )}
    </div>
  );
}

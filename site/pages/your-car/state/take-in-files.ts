import { signal } from "@preact/signals";
import { LONGEST_CAR_FILE } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { carWords as words } from "../../../say/your-car/cars.js";
import { classWords } from "../../../say/your-car/classes.js";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../model/draft.js";
import { readFile } from "../model/read-file.js";
import { keepClass } from "./classes.js";
import { keepCar, namesInUse, newId } from "./kept.js";

/** What came of one file. */
export interface FileResult {
  readonly sentence: string;
  /** What is worth telling of a car that came in, or all that is wrong with a file that cannot be taken as it is. */
  readonly lines: readonly string[];
  readonly cameIn: boolean;
  /** A draft to mend the file in, where there is one. */
  readonly mend?: Draft;
}

/** What came of the files that were opened last, where one line does not say it. */
export const results = signal<readonly FileResult[]>([]);

export const close = (result: FileResult): void => {
  results.value = results.value.filter((one) => one !== result);
};

/** Takes car files in, one after the other; says of each what came of it. */
export async function takeInFiles(files: readonly File[]): Promise<void> {
  results.value = [];
  const all: FileResult[] = [];
  for (const file of files) all.push(await takeInFile(file));
  const [only] = all;
  const isOneLine = all.length === 1 && only?.mend === undefined && (only?.lines.length ?? 0) < 4;
  if (isOneLine && only?.cameIn) say([only.sentence, ...only.lines].join(" "));
  else {
    say(
      all.length === 1 ? "" : words.cameInOf(all.filter(({ cameIn }) => cameIn).length, all.length),
    );
    results.value = all;
  }
}

async function takeInFile(file: File): Promise<FileResult> {
  const nothing = (sentence: string) => ({ sentence, lines: [], cameIn: false });
  if (file.size > LARGEST_FILE) return nothing(words.tooLarge(file.name));
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return nothing(words.unreadable(file.name));
  const read = readFile(text, namesInUse(), newId(), reader.units);
  if ("carClass" in read) {
    const { name } = read.carClass;
    const held = await keepClass(read.carClass);
    const sentence = held ? classWords.cameIn(name, file.name) : classWords.notKept;
    return { sentence, lines: read.notes, cameIn: held };
  }
  if ("car" in read) {
    const held = await keepCar(read.car);
    const sentence = held ? words.cameIn(read.car.name, file.name) : words.notKept;
    return { sentence, lines: read.notes, cameIn: held };
  }
  const { faults, mend } = read;
  return { ...nothing(words.faulty(file.name)), lines: faults, ...(mend && { mend }) };
}

const LARGEST_FILE = 4 * LONGEST_CAR_FILE; // bytes: a letter takes four at most

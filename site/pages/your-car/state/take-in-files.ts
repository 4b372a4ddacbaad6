import { signal } from "@preact/signals";
import { reader } from "@rollbook/page";
import { carWords as words } from "../../../say/your-car/cars.js";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../model/draft.js";
import { takeIn } from "../model/take-in.js";
import { keepCar, namesInUse, newId } from "./kept.js";

/** A file that could not be taken as it is: all that is wrong, and a draft to mend it in where there is one. */
export interface Problem {
  readonly file: string;
  readonly faults: readonly string[];
  readonly mend?: Draft;
}

export const problems = signal<readonly Problem[]>([]);

export const close = (problem: Problem): void => {
  problems.value = problems.value.filter((one) => one !== problem);
};

/** Takes car files in, one after the other; says of each what came of it. */
export async function takeInFiles(files: readonly File[]): Promise<void> {
  problems.value = [];
  const said: string[] = [];
  for (const file of files) said.push(...(await takeInFile(file)));
  say(said.join(" "));
}

async function takeInFile(file: File): Promise<string[]> {
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return [words.unreadable(file.name)];
  const read = takeIn(text, namesInUse(), newId(), reader.units);
  if ("car" in read) {
    const held = await keepCar(read.car);
    return [held ? words.cameIn(read.car.name, file.name) : words.notKept, ...read.notes];
  }
  problems.value = [...problems.value, { file: file.name, ...read }];
  return [];
}

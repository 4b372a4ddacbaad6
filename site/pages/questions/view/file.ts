import { element, saveFile } from "@rollbook/page";
import { fromFile, merged, toFile } from "../record/answers-file.js";
import { gainsOf, groupGainsOf } from "../record/gain.js";
import type { Given } from "../record/given.js";
import { words } from "../words.js";
import { answers, forgetAnswers, keepAnswers } from "./answers.js";
import { topicOf } from "./ask.js";
import { button, type Part, part } from "./part.js";

const save = (): void => saveFile(words.fileName, toFile(answers()));

async function textOf(file: File): Promise<string> {
  try {
    return await file.text();
  } catch {
    return "";
  }
}

function fileInput(label: string, multiple: boolean, take: (files: File[]) => void): HTMLElement {
  const input = element("input", { type: "file", accept: ".json,application/json", multiple });
  input.addEventListener("change", () => take([...(input.files ?? [])]));
  return element("label", { class: "choose" }, `${label} `, input);
}

async function add([file]: File[]): Promise<string> {
  if (!file) return "";
  const read = fromFile(await textOf(file));
  if ("fault" in read) return read.fault;
  const before = answers();
  const all = merged(before, read.answers);
  const kept = (await keepAnswers(all)) ? "" : ` ${words.notKept}`;
  const left = read.left > 0 ? words.leftOut(read.left) : "";
  return words.added(all.length - before.length) + left + kept;
}

/** Several members counted together; files that hold no answers are named with their fault. */
async function countGroup(files: File[]): Promise<HTMLElement[]> {
  const members: Given[][] = [];
  const faults: string[] = [];
  for (const file of files) {
    const read = fromFile(await textOf(file));
    if ("fault" in read) faults.push(`${file.name}: ${read.fault}`);
    else members.push(read.answers);
  }
  const took = members.filter((one) => gainsOf(one).some(({ outcome }) => outcome)).length;
  const rows = groupGainsOf(members).map(({ asked, both, rightBefore, rightAfter }) =>
    both === 0
      ? words.groupNobody(topicOf(asked))
      : words.groupRow(topicOf(asked), rightBefore, rightAfter, both),
  );
  return [
    element("p", {}, words.groupOf(members.length, took)),
    ...faults.map((fault) => element("p", { class: "fault" }, fault)),
    element("ol", {}, ...rows.map((row) => element("li", {}, row))),
  ];
}

function show(place: HTMLElement): void {
  const kept = element("p");
  const told = element("p", { role: "status" });
  const settle = (text = "") => {
    kept.textContent = words.kept(answers().length);
    told.textContent = text;
  };
  const group = element("div", { role: "status" });
  settle();
  place.replaceChildren(
    kept,
    element("p", { class: "doing" }, button(words.save, save)),
    fileInput(words.read, false, async (files) => settle(await add(files))),
    element(
      "p",
      { class: "doing" },
      button(words.forget, () => {
        if (!confirm(words.sureToForget)) return;
        forgetAnswers();
        settle(words.forgotten);
      }),
    ),
    told,
    element("h3", {}, words.group),
    element("p", {}, words.groupIntro),
    fileInput(words.groupFiles, true, async (files) =>
      group.replaceChildren(...(await countGroup(files))),
    ),
    group,
  );
}

/** Answers as a file: save, add, forget; and a group counted from its files. */
export const filePart: Part = part("file", "", show);

import { useSignal } from "@preact/signals";
import {
  answersFromFile,
  answersToFile,
  type Given,
  gainsOf,
  groupGainsOf,
  mergedAnswers,
} from "@rollbook/lib";
import { saveFile } from "@rollbook/page";
import { words } from "../../../say/questions/words.js";
import { answers, keepAnswers } from "../../../store/answers.js";
import { pathFromFile, pathToFile } from "../../../store/path-file.js";
import { Button } from "../../../ui/button.js";
import { FileInput } from "../../../ui/file-input.js";
import { addPath, pathDone } from "../path-done.js";
import { topicOf } from "./ask.js";

const save = (): void => saveFile(words.fileName, answersToFile(answers.now.value));

async function textOf(file: File): Promise<string> {
  try {
    return await file.text();
  } catch {
    return "";
  }
}

/** Adds the answers of a file to those on the device; says what came of it. */
async function add([file]: readonly File[]): Promise<string> {
  if (!file) return "";
  const read = answersFromFile(await textOf(file));
  if ("fault" in read) return words.fileFault(read.fault);
  const before = answers.now.value;
  const all = mergedAnswers(before, read.answers);
  const kept = (await keepAnswers(all)) ? "" : ` ${words.notKept}`;
  const left = read.left > 0 ? words.leftOut(read.left) : "";
  return words.added(all.length - before.length) + left + kept;
}

/** Files of several members: their answers, and a sentence for each that holds none. */
interface Group {
  readonly members: readonly (readonly Given[])[];
  readonly faults: readonly string[];
}

async function groupFrom(files: readonly File[]): Promise<Group> {
  const members: Given[][] = [];
  const faults: string[] = [];
  for (const file of files) {
    const read = answersFromFile(await textOf(file));
    if ("fault" in read) faults.push(`${file.name}: ${words.fileFault(read.fault)}`);
    else members.push(read.answers);
  }
  return { members, faults };
}

function GroupCounts({ members, faults }: Group) {
  const took = members.filter((one) => gainsOf(one).some(({ outcome }) => outcome)).length;
  const rows = groupGainsOf(members).map(({ asked, both, rightBefore, rightAfter }) =>
    both === 0
      ? words.groupNobody(topicOf(asked))
      : words.groupRow(topicOf(asked), rightBefore, rightAfter, both),
  );
  return (
    <>
      <p>{words.groupOf(members.length, took)}</p>
      {faults.map((fault) => (
        <p class="fault" key={fault}>
          {fault}
        </p>
      ))}
      <ol>
        {rows.map((row) => (
          <li key={row}>{row}</li>
        ))}
      </ol>
    </>
  );
}

function Chooser({
  id,
  label,
  multiple = false,
  take,
}: {
  readonly id: string;
  readonly label: string;
  readonly multiple?: boolean;
  readonly take: (files: readonly File[]) => Promise<void>;
}) {
  return (
    <label class="choose" for={id}>
      {label} <FileInput id={id} accept=".json,application/json" multiple={multiple} take={take} />
    </label>
  );
}

const savePath = (): void => saveFile(words.pathFileName, pathToFile(pathDone()));

async function takePath([file]: readonly File[]): Promise<string> {
  if (!file) return "";
  const read = pathFromFile(await textOf(file));
  if ("fault" in read) return words.pathFault[read.fault];
  const { count, isKept } = await addPath(read.places);
  return words.pathAdded(count) + (isKept ? "" : ` ${words.notKept}`);
}

/** What was done in the chapters as a file, to go on with on another device. */
function PathFile() {
  const told = useSignal("");
  return (
    <>
      <h3>{words.path}</h3>
      <p>{words.pathKept(pathDone().length)}</p>
      <p class="doing">
        <Button work={savePath}>{words.pathSave}</Button>
      </p>
      <Chooser
        id="path-file"
        label={words.pathRead}
        take={async (files) => {
          told.value = await takePath(files);
        }}
      />
      <p role="status">{told.value}</p>
    </>
  );
}

/** Answers as a file: save, add, forget; the path as a file; and a group counted from its files. */
export function FilePart() {
  const told = useSignal("");
  const group = useSignal<Group | undefined>(undefined);
  const forget = () => {
    if (!confirm(words.sureToForget)) return;
    answers.clear();
    told.value = words.forgotten;
  };
  const read = async (files: readonly File[]) => {
    told.value = await add(files);
  };
  const count = async (files: readonly File[]) => {
    group.value = await groupFrom(files);
  };
  return (
    <>
      <p>{words.kept(answers.now.value.length)}</p>
      <p class="doing">
        <Button work={save}>{words.save}</Button>
      </p>
      <Chooser id="answers-file" label={words.read} take={read} />
      <p class="doing">
        <Button work={forget}>{words.forget}</Button>
      </p>
      <p role="status">{told.value}</p>
      <PathFile />
      <h3>{words.group}</h3>
      <p>{words.groupIntro}</p>
      <Chooser id="group-files" label={words.groupFiles} multiple take={count} />
      <div role="status">{group.value && <GroupCounts {...group.value} />}</div>
    </>
  );
}

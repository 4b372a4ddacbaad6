import { type Car, demoCar, formatCar } from "@rollbook/lib";
import { element, forFileName, ownCars, placeOf, reader, saveFile } from "@rollbook/page";
import type { Draft } from "./model/draft.js";
import { takeIn } from "./model/take-in.js";
import { copyOf, draftFor, namesInUse, newId, saveDraft } from "./view/cabinet.js";
import { cars } from "./view/cars.js";
import { editor } from "./view/editor.js";
import * as kept from "./view/kept.js";
import { notice } from "./view/notice.js";
import { problem } from "./view/problem.js";
import { words } from "./words.js";

function start(place: HTMLElement): void {
  const { tell, whole: told } = notice();
  const [list, problems] = [element("div"), element("div")];
  const bench = editor([...place.childNodes], { kept: whenKept, save, discard });
  const mind = (held: boolean) => held || tell(words.notKept);
  const keepIn = (kept: Promise<boolean>) => void kept.then(mind);
  const focus = (id: string) => document.getElementById(id)?.focus();

  let listed = 0;

  function showList(): void {
    listed = kept.drafts().length;
    const focused = document.activeElement?.id;
    list.replaceChildren(cars(wishes));
    if (focused) focus(focused);
  }

  function whenKept(held: boolean, path: string): void {
    mind(held);
    if (path === "name" || kept.drafts().length !== listed) showList();
  }

  function open(draft: Draft | undefined): void {
    void kept.keepOpenId(draft?.id ?? "");
    bench.open(draft);
    showList();
  }

  function begin(draft: Draft | undefined): void {
    if (!draft) return;
    keepIn(kept.keepDraft(draft));
    open(draft);
    focus("at-name");
  }

  function save(show: boolean): void {
    const draft = bench.draft();
    const saved = draft && bench.faults().length === 0 ? saveDraft(draft, show) : undefined;
    if (!saved) {
      tell(words.cannotSave);
      focus("faults");
      return;
    }
    const { car, notes, held } = saved;
    open(draftFor(car.name));
    const done = show ? words.keptAndShown(car.name) : words.kept(car.name);
    void held.then((kept) => tell([kept ? done : words.notKept, ...notes].join(" ")));
  }

  function discard(): void {
    const before = bench.draft();
    if (!before) return;
    keepIn(kept.dropDraft(before.id));
    open(before.of === undefined ? undefined : draftFor(before.of));
    tell(words.discarded, () => begin(before));
  }

  function remove(car: Car): void {
    const { current } = ownCars.now.value;
    const draft = kept.drafts().find(({ of }) => of === car.name);
    keepIn(kept.dropCar(car.name));
    if (draft) keepIn(kept.dropDraft(draft.id));
    if (bench.draft()?.of === car.name) open(undefined);
    else showList();
    tell(words.removed(car.name), () => {
      keepIn(kept.keepCar(car));
      if (draft) keepIn(kept.keepDraft(draft));
      if (current === car.name) keepIn(kept.showCar(car.name));
      showList();
    });
  }

  async function takeInFile(file: File): Promise<string[]> {
    const text = await file.text().catch(() => undefined);
    if (text === undefined) return [words.unreadable(file.name)];
    const read = takeIn(text, namesInUse(), newId(), reader.units);
    if ("car" in read) {
      if (!(await kept.keepCar(read.car))) return [words.notKept];
      return [words.cameIn(read.car.name, file.name), ...read.notes];
    }
    const { faults, mend } = read;
    problems.append(problem(file.name, faults, mend && (() => begin(mend))));
    return [];
  }

  async function takeInFiles(files: readonly File[]): Promise<void> {
    problems.replaceChildren();
    const said: string[] = [];
    for (const file of files) said.push(...(await takeInFile(file)));
    tell(said.join(" "));
    showList();
  }

  const wishes = {
    show(name: string) {
      keepIn(kept.showCar(name));
      tell(words.nowShows(name));
    },
    start: () => begin(copyOf(demoCar.name)),
    takeIn: (files: readonly File[]) => void takeInFiles(files),
    edit(id: string) {
      open(draftFor(id));
      focus("at-name");
    },
    asFile: (car: Car) => saveFile(`${forFileName(car.name, "car")}.car.json`, formatCar(car)),
    copy: (car: Car) => begin(copyOf(car.name)),
    remove,
    openId: () => bench.draft()?.id ?? "",
  };

  place.replaceChildren(list, told, problems, bench.whole);
  open(draftFor(kept.openId()));
}

const place = placeOf("your-car");
if (place) start(place);

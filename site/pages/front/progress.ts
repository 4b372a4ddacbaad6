import { effect } from "@preact/signals-core";
import { dueOn, type Given } from "@rollbook/lib";
import { chapterWork, documentOf, doneOf, dueWork, element, today } from "@rollbook/page";
import { words } from "../../say/front.js";

/** What was answered on the page of questions; looked at only, that page alone writes it. */
const answers = documentOf<readonly Given[]>({
  key: "answers",
  empty: [],
  read: (kept) => (Array.isArray(kept) ? kept.filter((one) => one !== null) : undefined),
});

const questionsDue = (): number => dueOn(today(), answers.now.value).length;

const work = chapterWork();
const places = work.map(({ place }) => {
  const done = element("p", { class: "done" });
  place.append(done);
  return done;
});

/** What is done of each chapter, where to go on, and what is due today. */
export function showProgress(): void {
  effect(() => {
    const done = work.map(doneOf);
    const next = done.findIndex(
      ({ filed, solved }, i) =>
        filed < (work[i]?.predictions.length ?? 0) || solved < (work[i]?.exercises.length ?? 0),
    );
    const hasBegun = done.some(({ filed, solved }) => filed + solved > 0);
    work.forEach(({ place, predictions, looks, exercises }, i) => {
      const { filed = 0, seen = 0, solved = 0 } = done[i] ?? {};
      const said = words.done(
        [filed, predictions.length],
        [seen, looks.length],
        [solved, exercises.length],
      );
      const goOn = hasBegun && i === next ? [words.goOn] : [];
      const told = places[i];
      if (told) told.textContent = [said, ...goOn].filter((part) => part !== "").join(" · ");
      place.toggleAttribute("data-next", goOn.length > 0);
    });
  });
  effect(() => {
    const place = document.getElementById("due");
    const { predictions, exercises } = dueWork(work, today());
    const questions = questionsDue();
    if (!place) return;
    place.hidden = predictions.length + exercises.length + questions === 0;
    const link = element("a", { href: "questions.html#review" }, words.review);
    place.replaceChildren(words.due(predictions.length, exercises.length, questions), link);
  });
}

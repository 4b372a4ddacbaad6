import { useSignal } from "@preact/signals";
import { type Given, isRight, misconceptions } from "@rollbook/lib";
import { useLayoutEffect, useRef } from "preact/hooks";
import { words } from "../../../say/questions/words.js";
import { answers, keepAnswers } from "../../../store/answers.js";
import { Button } from "../../../ui/button.js";
import { ChapterLink } from "../../../ui/chapter-link.js";
import { type Check, checkOf } from "../state.js";
import { Card } from "./card.js";
import { GainList } from "./gain-list.js";

/** One of the two checks: the next question that it has not asked yet, or what came of it. */
export function CheckPart({ check }: { readonly check: Check }) {
  const led = useSignal(false); // the reader answered here, and is led on
  const { given, next, number } = checkOf(check, answers.now.value);
  const again = () => {
    if (!confirm(words.sureToStart)) return;
    led.value = true;
    void keepAnswers(answers.now.value.filter(({ occasion }) => occasion !== check));
  };
  const answered = () => {
    led.value = true;
  };
  if (next === undefined)
    return (
      <>
        <Result check={check} given={given} focus={led.value} />
        <Button work={again}>{words.startAgain}</Button>
      </>
    );
  return (
    <>
      <p class="progress">{words.progress(number, misconceptions.length)}</p>
      <Card
        key={next.idea}
        which={next}
        occasion={check}
        explain={false}
        focus={led.value}
        answered={answered}
      />
    </>
  );
}

interface Done {
  readonly check: Check;
  readonly given: readonly Given[];
  readonly focus: boolean;
}

function Result({ check, given, focus }: Done) {
  const place = useRef<HTMLParagraphElement>(null);
  useLayoutEffect(() => {
    if (focus) place.current?.focus();
  }, []);
  const right = given.filter(isRight).length;
  const said = check === "before" ? words.beforeDone : words.afterDone;
  return (
    <>
      <p class="result" ref={place} tabIndex={-1}>
        {said(right, given.length)}
      </p>
      {check === "before" ? (
        <WhereToRead given={given} />
      ) : (
        <GainList answers={answers.now.value} />
      )}
    </>
  );
}

/** Only where to read: which answers were wrong is for the chapters to tell. */
function WhereToRead({ given }: Pick<Done, "given">) {
  const wrong = given.filter((one) => !isRight(one)).map(({ asked }) => asked);
  const chapters = misconceptions
    .filter(({ idea }) => wrong.includes(idea))
    .map(({ chapter }) => chapter);
  if (chapters.length === 0) return null;
  return (
    <>
      <p>{words.chaptersFor}</p>
      <ul>
        {[...new Set(chapters)].sort().map((chapter) => (
          <li key={chapter}>
            <ChapterLink to={`${chapter}.html`}>{words.chapter(chapter.slice(0, 2))}</ChapterLink>:{" "}
            {words.countOf(chapters.filter((one) => one === chapter).length)}
          </li>
        ))}
      </ul>
    </>
  );
}

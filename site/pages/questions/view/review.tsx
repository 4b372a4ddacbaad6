import { useSignal } from "@preact/signals";
import { type Given, type IdeaName, type Review, reviewsOf, today } from "@rollbook/lib";
import { useLayoutEffect, useRef } from "preact/hooks";
import { words } from "../../../say/questions/words.js";
import { answers } from "../../../store/answers.js";
import { Button } from "../../../ui/button.js";
import { type Due, dueNow } from "../state.js";
import { Card } from "./card.js";

/** When a question comes back, in a sentence. */
function comesBack(asked: IdeaName, given: readonly Given[]): string {
  const due = reviewsOf(given).find((review) => review.asked === asked)?.due;
  return due === undefined ? words.allPassed : words.comesBack(Math.max(1, due - today()));
}

/** The questions whose day has come. One that was answered stays until the reader goes on. */
export function ReviewPart() {
  const answered = useSignal<Due | undefined>(undefined);
  const round = useSignal(0);
  const given = answers.now.value;
  const shown = answered.value ?? dueNow(given, today());
  if (shown === undefined) return <NothingDue given={given} focus={round.value > 0} />;
  const { which, count } = shown;
  const next = () => {
    answered.value = undefined;
    round.value += 1;
  };
  return (
    <>
      <p class="progress">{words.due(count)}</p>
      <Card
        key={`${round.value} ${which.idea} ${which.form}`}
        which={which}
        occasion="review"
        focus={round.value > 0}
        answered={() => {
          answered.value = shown;
        }}
      >
        <p>{comesBack(which.idea, given)}</p>
        <Button work={next}>{words.next}</Button>
      </Card>
    </>
  );
}

function NothingDue({
  given,
  focus,
}: {
  readonly given: readonly Given[];
  readonly focus: boolean;
}) {
  const place = useRef<HTMLParagraphElement>(null);
  useLayoutEffect(() => {
    if (focus) place.current?.focus();
  }, []);
  const reviews = reviewsOf(given);
  return (
    <>
      <p class="result" ref={place} tabIndex={-1}>
        {reviews.length === 0 ? words.nothingYet : words.nothingDue}
      </p>
      <ul>
        {outlook(reviews).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

/** What is due on later days, a line a day. */
function outlook(reviews: readonly Review[]): string[] {
  const waits = reviews.flatMap(({ due }) =>
    due !== undefined && due > today() ? [due - today()] : [],
  );
  const lines = [...new Set(waits)].map((wait) =>
    words.later(waits.filter((one) => one === wait).length, wait),
  );
  const through = reviews.filter(({ due }) => due === undefined).length;
  return through > 0 ? [...lines, words.passed(through)] : lines;
}

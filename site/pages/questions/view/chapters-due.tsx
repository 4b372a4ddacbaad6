import { useSignal } from "@preact/signals";
import { today } from "@rollbook/lib";
import { answeredTo, type DuePlace, dueWork, predictionOf, seenAfter } from "@rollbook/page";
import { words } from "../../../say/questions/words.js";
import { Button } from "../../../ui/button.js";
import { ChapterLink } from "../../../ui/chapter-link.js";
import { work } from "../work.js";

const addressOf = ({ chapter, id }: DuePlace): string => `${chapter}.html#${id}`;

/** A prediction to recall: what was asked, and once the reader has tried, what was said and seen. */
function Recall({ place }: { readonly place: DuePlace }) {
  const isShown = useSignal(false);
  const seen = seenAfter(place.id, place.chapter);
  const { inWords } = predictionOf(place.id, place.chapter).now.value ?? {};
  const file = (isRight: boolean) => {
    const { times, ...rest } = seen.now.value;
    void seen.set({ ...rest, times: [...times, { day: today(), isRight }] });
  };
  return (
    <section class="question">
      <p class="ask">{inWords?.ask}</p>
      {!isShown.value && (
        <Button
          work={() => {
            isShown.value = true;
          }}
        >
          {words.showIt}
        </Button>
      )}
      {isShown.value && (
        <div role="status">
          <p>{words.predicted(inWords?.said ?? "")}</p>
          <p>{words.saw(seen.now.value.saw)}</p>
          <p>
            {words.modelSaid(inWords?.model ?? "")}{" "}
            <ChapterLink to={addressOf(place)}>{words.atPlace}</ChapterLink>
          </p>
          <p class="doing">
            <Button work={() => file(true)}>{words.remembered}</Button>{" "}
            <Button work={() => file(false)}>{words.forgot}</Button>
          </p>
        </div>
      )}
    </section>
  );
}

/** What of the chapters is due today: predictions to recall, and exercises, which are solved in their place. */
export function ChaptersDue() {
  const { predictions, exercises } = dueWork(work, today());
  if (predictions.length + exercises.length === 0) return null;
  return (
    <>
      <h3>{words.fromChapters}</h3>
      {predictions.length > 0 && <p>{words.recallIntro}</p>}
      {predictions.map((place) => (
        <Recall key={addressOf(place)} place={place} />
      ))}
      {exercises.length > 0 && <p>{words.toSolve}</p>}
      <ul>
        {exercises.map((place) => (
          <li key={addressOf(place)}>
            <ChapterLink to={addressOf(place)}>
              {answeredTo(place.id, place.chapter).now.value.ask}
            </ChapterLink>
          </li>
        ))}
      </ul>
    </>
  );
}

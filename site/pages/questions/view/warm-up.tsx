import { checkFor, formFor, today, warmUpFor } from "@rollbook/lib";
import { useMemo } from "preact/hooks";
import { words } from "../../../say/questions/words.js";
import { answers } from "../../../store/answers.js";
import { Card } from "./card.js";

const kinds = {
  earlier: { pick: warmUpFor, intro: words.warmUpIntro, done: words.warmUpDone },
  own: { pick: checkFor, intro: words.checkIntro, done: words.checkDone },
} as const;

/** Two questions under a fold that the chapter offers: from earlier chapters, or of its own. */
export function WarmUp({
  chapter,
  asks,
}: {
  readonly chapter: string;
  readonly asks: keyof typeof kinds;
}) {
  const { pick, intro, done } = kinds[asks];
  const picked = useMemo(() => {
    const given = answers.now.peek();
    return pick(chapter, given, today()).map((idea) => ({ idea, form: formFor(idea, given) }));
  }, []);
  return (
    <>
      <p>
        {picked.length > 0 ? intro : done} <a href="questions.html">{words.allQuestions}</a>.
      </p>
      {picked.map((which) => (
        <Card key={which.idea} which={which} occasion="warm-up" />
      ))}
    </>
  );
}

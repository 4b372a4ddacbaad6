import { formFor, today, warmUpFor } from "@rollbook/lib";
import { useMemo } from "preact/hooks";
import { words } from "../../../say/questions/words.js";
import { answers } from "../../../store/answers.js";
import { Card } from "./card.js";

/** Two questions from earlier chapters, under the fold that the chapter offers. */
export function WarmUp({ chapter }: { readonly chapter: string }) {
  const picked = useMemo(() => {
    const given = answers.now.peek();
    return warmUpFor(chapter, given, today()).map((idea) => ({ idea, form: formFor(idea, given) }));
  }, []);
  return (
    <>
      <p>
        {picked.length > 0 ? words.warmUpIntro : words.warmUpDone}{" "}
        <a href="questions.html">{words.allQuestions}</a>.
      </p>
      {picked.map((which) => (
        <Card key={which.idea} which={which} occasion="warm-up" />
      ))}
    </>
  );
}

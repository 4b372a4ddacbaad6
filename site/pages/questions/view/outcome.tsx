import type { IdeaName } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { useLayoutEffect, useRef } from "preact/hooks";
import { type Asked, refutation } from "../../../say/questions/asked.js";
import { words } from "../../../say/questions/words.js";
import { ChapterLink } from "../../../ui/chapter-link.js";
import { letterOf } from "./ask.js";

/** A link to where an idea can be seen to fail, with what to look at. */
function ShownBy({ idea }: { readonly idea: IdeaName | undefined }) {
  if (idea === undefined) return null;
  const { href, shownBy } = refutation(idea);
  return (
    <span class="shown-by">
      <ChapterLink to={href}>{words.seeIt}</ChapterLink>: {spell(shownBy.look)}
    </span>
  );
}

/** One answer with its verdict, its reason and where to see it, and how many cards it got. */
export function Explained({
  asked,
  index,
  cards = [],
}: {
  readonly asked: Asked;
  readonly index: number;
  readonly cards?: readonly number[];
}) {
  const choice = asked.choices[index];
  if (choice === undefined) return null;
  return (
    <li value={index + 1}>
      <b>{spell(choice.text)}</b>
      <br />
      {index === asked.answer ? words.right : words.notSo} {spell(choice.because)}{" "}
      <ShownBy idea={choice.idea} />
      {cards.length > 0 && <p class="about">{words.votes(cards.map(String))}</p>}
    </li>
  );
}

/** An answer that was given, by its place, and how sure. */
export interface Chosen {
  readonly index: number;
  readonly confidence: number;
}

/** What comes of an answer: its own reason first, then the right one, the others folded. */
export function Outcome({ asked, chosen }: { readonly asked: Asked; readonly chosen: Chosen }) {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => place.current?.focus(), []);
  const { index, confidence } = chosen;
  const right = index === asked.answer;
  const certain = !right && confidence === words.confidences.length - 1;
  const others = asked.choices.map((_, i) => i).filter((i) => i !== index && i !== asked.answer);
  return (
    <div class="outcome" ref={place} tabIndex={-1} data-right={String(right)}>
      <p class="ask">{spell(asked.ask)}</p>
      <p>
        {words.youSaid(letterOf(index), words.confidences[confidence] ?? "")}{" "}
        <b>{right ? words.right : words.notSo}</b>
        {certain && ` ${words.certainAndWrong}`}
      </p>
      <ol type="A">
        <Explained asked={asked} index={index} />
      </ol>
      {!right && (
        <>
          <p>
            {words.model} {letterOf(asked.answer)}.
          </p>
          <ol type="A">
            <Explained asked={asked} index={asked.answer} />
          </ol>
        </>
      )}
      <details>
        <summary>{words.others}</summary>
        <ol type="A">
          {others.map((i) => (
            <Explained key={i} asked={asked} index={i} />
          ))}
        </ol>
      </details>
    </div>
  );
}

import { type Signal, useSignal } from "@preact/signals";
import { type PollCount, type PollLetter, pollAdvice, Refusal } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { pollAdviceInWords } from "../../../say/poll.js";
import type { Asked } from "../../../say/questions/asked.js";
import { words } from "../../../say/questions/words.js";
import { Button } from "../../../ui/button.js";
import { countOf, noCards, otherOf, type Typed, type Which } from "../state.js";
import { aboutOf, ask, letterOf } from "./ask.js";
import { Explained } from "./outcome.js";
import { TopicChoice } from "./topic-choice.js";

const letters: readonly PollLetter[] = ["a", "b", "c", "d"];
const letterAt = (index: number): PollLetter => letters[index] ?? "a";

type Counts = readonly [first?: PollCount, second?: PollCount];

/** Counts of cards to type in, and what to do after them. */
function VoteForm({
  answer,
  vote,
  take,
}: {
  readonly answer: PollLetter;
  readonly vote: 1 | 2;
  readonly take: (count: PollCount) => void;
}) {
  const typed = useSignal<Typed>(noCards);
  const told = useSignal("");
  const submit = (event: Event) => {
    event.preventDefault();
    const count = countOf(typed.value);
    try {
      told.value = `${words.advice}: ${pollAdviceInWords(pollAdvice(count, answer), vote)}`;
      take(count);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      told.value = words.badCount;
    }
  };
  return (
    <form class="vote" noValidate onSubmit={submit}>
      <fieldset>
        <legend>{words.vote(vote)}</legend>
        {letters.map((letter, i) => (
          <CardCount key={letter} typed={typed} letter={letter} index={i} />
        ))}
        <button type="submit">{words.count}</button>
      </fieldset>
      <p role="status">{told.value}</p>
    </form>
  );
}

function CardCount({
  typed,
  letter,
  index,
}: {
  readonly typed: Signal<Typed>;
  readonly letter: PollLetter;
  readonly index: number;
}) {
  const type = (text: string) => {
    typed.value = typed.value.map((other, i) => (i === index ? text : other)) as never as Typed;
  };
  return (
    <span class="boxed">
      {letterOf(index)}
      <input
        type="number"
        name={letter}
        min={0}
        max={999}
        step={1}
        inputMode="numeric"
        aria-label={words.cards(letter.toUpperCase())}
        value={typed.value[index]}
        onInput={({ currentTarget }) => type(currentTarget.value)}
      />
    </span>
  );
}

/** Why each answer is right or not, with how many held it. */
function Answer({ asked, votes }: { readonly asked: Asked; readonly votes: readonly PollCount[] }) {
  const place = useRef<HTMLElement>(null);
  useLayoutEffect(() => place.current?.focus(), [votes]);
  const shares = votes.map((count) =>
    words.rightOf(count[letterAt(asked.answer)], count.a + count.b + count.c + count.d),
  );
  return (
    <section class="answer" ref={place} tabIndex={-1}>
      <p>
        {words.model} {letterOf(asked.answer)}. {shares.join(", ")}
      </p>
      <ol type="A">
        {asked.choices.map(({ text }, i) => (
          <Explained
            key={text}
            asked={asked}
            index={i}
            cards={votes.map((count) => count[letterAt(i)])}
          />
        ))}
      </ol>
    </section>
  );
}

/** The question in large type: what a projector shows and what is printed. */
function Projected({ asked, focus }: { readonly asked: Asked; readonly focus: boolean }) {
  const place = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    if (focus) place.current?.focus();
  }, []);
  const fill = () => void place.current?.requestFullscreen?.().catch(() => {});
  return (
    <>
      <section class="projected" ref={place} tabIndex={-1}>
        <p class="ask">{spell(asked.ask)}</p>
        <ol type="A">
          {asked.choices.map(({ text }) => (
            <li key={text}>{spell(text)}</li>
          ))}
        </ol>
        <p class="about">{aboutOf(asked)}</p>
      </section>
      <p class="doing">
        <Button work={fill}>{words.fill}</Button>
        <Button work={() => print()}>{words.print}</Button>
      </p>
    </>
  );
}

/** A question put to a class: two votes, and the answer once it is shown. */
function Vote({
  which,
  focus,
  turn,
}: {
  readonly which: Which;
  readonly focus: boolean;
  readonly turn: () => void;
}) {
  const asked = useMemo(() => ask(which), []);
  const counts = useSignal<Counts>([]);
  const shown = useSignal<readonly PollCount[] | undefined>(undefined);
  const answer = letterAt(asked.answer);
  const reveal = () => {
    shown.value = counts.value.filter((count) => count !== undefined);
  };
  const take = (first: PollCount | undefined, second: PollCount | undefined) => {
    counts.value = [first, second] as Counts;
  };
  return (
    <>
      <Projected asked={asked} focus={focus} />
      <VoteForm answer={answer} vote={1} take={(count) => take(count, counts.value[1])} />
      <VoteForm answer={answer} vote={2} take={(count) => take(counts.value[0], count)} />
      <p class="doing">
        <Button work={reveal}>{words.showAnswer}</Button>
        <Button work={turn}>{which.form === "first" ? words.askTwin : words.askFirst}</Button>
      </p>
      <div>{shown.value && <Answer asked={asked} votes={shown.value} />}</div>
    </>
  );
}

/** One question at a time for a room: large type, two votes, advice. */
export function ClassPart({
  which,
  show,
}: {
  readonly which: Which;
  readonly show: (which: Which) => void;
}) {
  const led = useSignal(false); // the reader went on to the twin
  const turn = () => {
    led.value = true;
    show(otherOf(which));
  };
  const choose = (idea: Which["idea"]) => {
    led.value = false;
    show({ idea, form: "first" });
  };
  return (
    <>
      <TopicChoice chosen={which.idea} choose={choose} />
      <Vote key={`${which.idea} ${which.form}`} which={which} focus={led.value} turn={turn} />
    </>
  );
}

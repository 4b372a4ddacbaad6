import { signal } from "@preact/signals";
import { nowStandingFor, type PollCount, type PollEntry, pollAdvice, Refusal } from "@rollbook/lib";
import { format, spell } from "@rollbook/page";
import { pollAdviceInWords } from "../../../say/poll.js";
import { theLog, write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { ChoiceField, LinesField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { isDesk } from "../paddock/place.js";
import { words } from "../words.js";
import { AskedToAll } from "./asked-to-all.js";
import { PhoneVote } from "./phone-vote.js";
import { isShownAbove } from "./question-at-hand.js";
import { type Put, runQuestions } from "./run-question.js";
import {
  changeVote,
  chosenQuestion,
  letterAt,
  letters,
  put,
  readyQuestions,
  type Vote,
  vote,
} from "./vote-state.js";

const { run: said } = words;

type Round = keyof Vote["cards"];
const rounds: readonly Round[] = ["first", "second"];

/** What was said of each count, until another question is chosen. */
const told = signal<Readonly<Record<Round, string>>>({ first: "", second: "" });

const readyChoices = readyQuestions.map(
  ({ key, form, belief }) => [key, form === "first" ? belief : said.twin(belief)] as const,
);

/** A vote with cards: a question, two counts, and what to do after each. */
export function VoteWithCards() {
  const asked = chosenQuestion();
  const ofThisRun = runQuestions().map(({ key, label }) => [key, label] as const);
  const choose = (ready: string) => {
    told.value = { first: "", second: "" };
    changeVote({ ready });
  };
  return (
    <Fold id="poll-fold" title={said.poll}>
      <ChoiceField
        id="poll-question"
        label={said.question}
        choices={[["", said.ownQuestion], ...ofThisRun, ...readyChoices]}
        value={asked === undefined ? "" : vote.now.value.ready}
        choose={choose}
      />
      <div id="poll">
        {asked === undefined ? <OwnQuestion /> : <OfTheBank asked={asked} />}
        {isDesk() && !isShownAbove() && <PhoneVote />}
        {rounds.map((round) => (
          <Count key={round} round={round} />
        ))}
      </div>
    </Fold>
  );
}

function OwnQuestion() {
  const { text, right } = vote.now.value;
  return (
    <>
      <LinesField
        id="poll-text"
        label={said.ownText}
        rows={2}
        maxLength={2000}
        value={text}
        type={(typed) => changeVote({ text: typed })}
      />
      <Chips
        id="poll-right"
        question={said.right}
        choices={letters.map((value, i) => ({ value, text: said.letters[i] ?? "" }))}
        chosen={right}
        choose={(letter) => changeVote({ right: letter })}
      />
    </>
  );
}

function OfTheBank({ asked }: { readonly asked: Put }) {
  return (
    <>
      <AskedToAll asked={asked} />
      <Fold id="poll-key" title={said.showRight} key={asked.ask}>
        <p>{said.rightIs(letterAt(asked.answer).toUpperCase())}</p>
        <ol type="A">
          {asked.choices.map(({ because }) => (
            <li key={because}>{spell(because)}</li>
          ))}
        </ol>
      </Fold>
    </>
  );
}

/** One count of cards; it is filed and answered with what to do. */
function Count({ round }: { readonly round: Round }) {
  const { cards } = vote.now.value;
  const number = round === "first" ? 1 : 2;
  const type = (letter: string, text: string) =>
    changeVote({ cards: { ...cards, [round]: { ...cards[round], [letter]: text } } });
  const count = () => {
    told.value = { ...told.value, [round]: counted(round, number) };
  };
  return (
    <fieldset class="vote">
      <legend>{said.vote(number)}</legend>
      <div class="tools">
        {letters.map((letter, i) => (
          <span class="boxed" key={letter}>
            {said.letters[i]}
            <input
              type="number"
              id={`poll-${number}-${letter}`}
              min={0}
              max={10_000}
              inputMode="numeric"
              value={cards[round][letter]}
              aria-label={said.cards(letter.toUpperCase())}
              onInput={({ currentTarget }) => type(letter, currentTarget.value)}
            />
          </span>
        ))}
        <Button id={`poll-count-${number}`} work={count}>
          {said.count}
        </Button>
      </div>
      <p role="status" class="told">
        {told.value[round]}
      </p>
    </fieldset>
  );
}

/** An entry with a count of this question, as it stands in the log. */
function filedCount(round: Round, question: string): PollEntry | undefined {
  const id = vote.now.value.filed[round];
  const entry = id === undefined ? undefined : nowStandingFor(theLog(), "poll", id);
  return entry?.question === question ? entry : undefined;
}

const numberOf = (text: string): number => (text.trim() === "" ? Number.NaN : Number(text));

function countIn(round: Round): PollCount {
  const { a, b, c, d } = vote.now.value.cards[round];
  return { a: numberOf(a), b: numberOf(b), c: numberOf(c), d: numberOf(d) };
}

/** Files a count, in place of an earlier one of the same vote, and says what to do. */
function counted(round: Round, number: 1 | 2): string {
  const { question, right } = put();
  if (question === "") return said.noQuestion;
  if (right === undefined) return said.noRight;
  const count = countIn(round);
  try {
    const found = pollAdvice(count, right);
    const before = filedCount(round, question);
    const replaces = before === undefined ? {} : { replaces: before.id };
    const { id } = write({ kind: "poll", question, right, vote: number, count, ...replaces });
    changeVote({ filed: { ...vote.now.value.filed, [round]: id } });
    const now = format("share", found.rightShare, 0);
    const advice = said.advice(now, pollAdviceInWords(found, number));
    const first = filedCount("first", question);
    if (number === 1 || first === undefined) return advice;
    const earlier = format("share", pollAdvice(first.count, right).rightShare, 0);
    return `${advice} ${said.moved(earlier, now)}`;
  } catch (error) {
    if (error instanceof Refusal) return said.badCount;
    throw error;
  }
}

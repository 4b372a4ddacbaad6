import {
  countOfVotes,
  gainByPerson,
  lastQuestion,
  type PollCount,
  type PollLetter,
  pollAdvice,
  type QuestionEntry,
  standing,
  votesOn,
} from "@rollbook/lib";
import { format, spell } from "@rollbook/page";
import { pollAdviceInWords } from "../../../say/poll.js";
import { theLog, write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { filedDay } from "../day/reporter.js";
import { words } from "../words.js";
import { chosenQuestion, letters, put } from "./vote-state.js";

const { ballot: said } = words;

/** Asks the phones, twice; how they voted stays private until it is revealed. */
export function PhoneVote() {
  const asked = lastQuestion(theLog());
  const open = asked?.state === "open";
  const next = asked !== undefined && asked.vote === 1 && asked.ask === put().question ? 2 : 1;
  return (
    <fieldset class="vote" id="phone-vote">
      <legend>{said.title}</legend>
      <p class="quiet">{said.help}</p>
      {asked && <Standing asked={asked} />}
      <p class="tools">
        {open && asked ? (
          <Button id="reveal" large work={() => reveal(asked)}>
            {said.reveal}
          </Button>
        ) : (
          <Button id="ask-phones" work={() => ask(next)}>
            {said.ask(next)}
          </Button>
        )}
      </p>
    </fieldset>
  );
}

/** How many have voted; once it is revealed, for what. */
export function Standing({ asked }: { readonly asked: QuestionEntry }) {
  const votes = votesOn(theLog(), asked);
  if (asked.state === "open")
    return <p class="voted">{said.voted(votes.length, filedDay()?.drivers.length ?? 0)}</p>;
  const count = countOfVotes(votes);
  return (
    <p class="voted">
      {said.revealed}{" "}
      {letters
        .slice(0, asked.choices.length)
        .map((letter) => said.count(letter.toUpperCase(), count[letter]))
        .join(", ")}
    </p>
  );
}

function ask(vote: 1 | 2): void {
  const { question } = put();
  if (question === "") say(said.nothingAsked);
  else putToPhones(question, vote);
}

function putToPhones(question: string, vote: 1 | 2): void {
  const asked = chosenQuestion();
  const choices = asked?.choices.map(({ text }) => spell(text)) ?? letters.map(upper);
  write({ kind: "question", ask: question, choices, vote, state: "open" });
  say(said.asked(vote));
}

const upper = (letter: PollLetter): string => letter.toUpperCase();

/** Closes the vote, files the count, and says what to do; of persons only where they voted twice. */
function reveal(asked: QuestionEntry): void {
  const { id, at: _, author: _author, ...kept } = asked;
  const closed = write({ ...kept, state: "closed", replaces: id });
  const count = countOfVotes(votesOn(theLog(), closed));
  const { question, right } = put();
  const known = right !== undefined && question === asked.ask;
  const some = letters.some((letter) => count[letter] > 0);
  say(known && some ? told(asked, count, right) : said.revealed);
}

function told({ ask: question, vote }: QuestionEntry, count: PollCount, right: PollLetter): string {
  write({ kind: "poll", question, right, vote, count });
  const found = pollAdvice(count, right);
  const share = format("share", found.rightShare, 0);
  const advice = words.run.advice(share, pollAdviceInWords(found, vote));
  return vote === 1 ? advice : `${advice} ${gained(question, right)}`;
}

function gained(question: string, right: PollLetter): string {
  const first = standing(theLog(), "question")
    .filter(({ ask, vote }) => ask === question && vote === 1)
    .at(-1);
  const second = lastQuestion(theLog());
  if (first === undefined || second === undefined) return "";
  return said.gain(gainByPerson(votesOn(theLog(), first), votesOn(theLog(), second), right));
}

import {
  type PollCount,
  type PollEntry,
  type PollLetter,
  pollAdvice,
  pollGain,
  Refusal,
} from "@rollbook/lib";
import { element, format } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { button } from "../parts/fields.js";
import { words } from "../words.js";
import { letters } from "./questions.js";

const { run: said } = words;

/** What was put to the vote. */
export interface Put {
  readonly question: string;
  /** Left out as long as nobody said which it is. */
  readonly right?: PollLetter | undefined;
}

/** Two counts of cards; each is filed and answered with what to do. */
export function votes(put: () => Put): HTMLElement[] {
  const filed: (PollEntry | undefined)[] = [];
  return ([1, 2] as const).map((vote) => voteForm(vote, put, filed));
}

function voteForm(vote: 1 | 2, put: () => Put, filed: (PollEntry | undefined)[]): HTMLElement {
  const boxes = letters.map((letter) => {
    const id = `poll-${vote}-${letter}`;
    const more = { min: 0, max: 10_000, inputmode: "numeric", value: 0 };
    return element("input", {
      type: "number",
      id,
      ...more,
      "aria-label": said.cards(letter.toUpperCase()),
    });
  });
  const told = element("p", { role: "status", class: "told" });
  const count = () => {
    const [a = 0, b = 0, c = 0, d = 0] = boxes.map(({ valueAsNumber }) => valueAsNumber);
    told.replaceChildren(counted({ a, b, c, d }, vote, put(), filed));
  };
  const labelled = boxes.map((box, i) =>
    element("span", { class: "boxed" }, said.letters[i] ?? "", box),
  );
  return element(
    "fieldset",
    { class: "vote" },
    element("legend", {}, said.vote(vote)),
    element(
      "div",
      { class: "tools" },
      ...labelled,
      button(`poll-count-${vote}`, said.count, count),
    ),
    told,
  );
}

/** Files a count, in place of an earlier one of the same vote, and says what to do. */
function counted(
  count: PollCount,
  vote: 1 | 2,
  { question, right }: Put,
  filed: (PollEntry | undefined)[],
): string {
  if (question === "") return said.noQuestion;
  if (right === undefined) return said.noRight;
  try {
    const { rightShare, sentence } = pollAdvice(count, right, vote);
    const before = filed[vote];
    const replaces = before?.question === question ? { replaces: before.id } : {};
    filed[vote] = write({ kind: "poll", question, right, vote, count, ...replaces });
    const first = filed[1];
    const advice = said.advice(format("share", rightShare, 0), sentence);
    return vote === 1 || first === undefined
      ? advice
      : `${advice} ${gained(first.count, count, right)}`;
  } catch (error) {
    if (error instanceof Refusal) return said.badCount;
    throw error;
  }
}

function gained(first: PollCount, second: PollCount, right: PollLetter): string {
  const gain = pollGain(first, second, right);
  return gain < 0 ? said.lost : said.gain(format("share", gain, 0));
}

import { expect, it } from "vitest";
import {
  countOfVotes,
  gainByPerson,
  type LogEntry,
  lastQuestion,
  mergeLogs,
  type PollLetter,
  votesOn,
} from "../../../../lib/index.js";

const at = (minute: number) => `2031-05-10T10:${String(minute).padStart(2, "0")}:00.000Z`;

const question = (id: string, minute: number, vote: 1 | 2, more = {}): LogEntry => ({
  ...{ kind: "question", id, at: at(minute), author: "desk", ask: "Which end?" },
  ...{ choices: ["front", "rear"], vote, state: "open", ...more },
});

let number = 0;
const vote = (of: string, minute: number, by: string, letter: PollLetter): LogEntry => ({
  ...{ kind: "vote", id: `phone-${++number}`, at: at(minute), author: by },
  ...{ question: of, letter, by },
});

const log = mergeLogs({
  entries: [
    question("desk-1", 0, 1),
    ...[
      vote("desk-1", 1, "Ada", "a"),
      vote("desk-1", 1, "Bela", "b"),
      vote("desk-1", 2, "Chidi", "b"),
    ],
    vote("desk-1", 3, "ada ", "b"), // changed her mind: a person has one vote
    question("desk-2", 5, 1, { state: "closed", replaces: "desk-1" }),
    question("desk-3", 10, 2),
    ...[
      vote("desk-3", 11, "Ada", "a"),
      vote("desk-3", 11, "Bela", "b"),
      vote("desk-3", 11, "Dana", "a"),
    ],
  ],
});

it("a person has one vote, the last, also where the question was closed since", () => {
  const first = log.entries.find(({ id }) => id === "desk-2");
  if (first?.kind !== "question") throw new Error("it is there");
  expect(countOfVotes(votesOn(log, first))).toEqual({ a: 0, b: 3, c: 0, d: 0 });
});

it("what was gained is told of persons who voted twice alone", () => {
  const [first, second] = [log.entries.find(({ id }) => id === "desk-2"), lastQuestion(log)];
  if (first?.kind !== "question" || second === undefined) throw new Error("both are there");
  const votes = [votesOn(log, first), votesOn(log, second)] as const;
  // by hand: Ada b → a, Bela b → b; Chidi and Dana voted once
  expect(gainByPerson(...votes, "a")).toEqual({ wrong: 2, gained: 1, lost: 0 });
  expect(gainByPerson(...votes, "b")).toEqual({ wrong: 0, gained: 0, lost: 1 });
});

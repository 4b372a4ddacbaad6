import { lastQuestion, sameName, votesOn } from "@rollbook/lib";
import { theLog, write } from "../../../store/log.js";
import { Chips } from "../../../ui/chips.js";
import { reporting } from "../report/state.js";
import { letters } from "../run/vote-state.js";
import { words } from "../words.js";
import { isPhone } from "./place.js";

const { ballot: said } = words;

/** The question that the desk asks, on a driver's phone: one vote a person, private until it is revealed. */
export function Ballot() {
  const asked = isPhone() ? lastQuestion(theLog()) : undefined;
  const { driver } = reporting.now.value;
  if (asked === undefined || driver === "") return null;
  const mine = votesOn(theLog(), asked).find(({ by }) => sameName(by, driver));
  const vote = (index: number) => {
    const letter = letters[index];
    if (letter !== undefined)
      write({ kind: "vote", question: asked.id, letter, by: driver, author: driver });
  };
  if (asked.state === "closed") return <p class="quiet">{said.closed}</p>;
  return (
    <div class="ballot" id="ballot">
      <p>{asked.vote === 1 ? said.alone : said.again}</p>
      <p class="ask">{asked.ask}</p>
      <Chips
        key={asked.id}
        id="ballot-letter"
        question={said.mine}
        choices={asked.choices.map((text, i) => ({
          value: i,
          text: `${(letters[i] ?? "").toUpperCase()}: ${text}`,
        }))}
        chosen={mine && letters.indexOf(mine.letter)}
        choose={vote}
      >
        {mine && <p class="quiet">{said.in}</p>}
      </Chips>
    </div>
  );
}

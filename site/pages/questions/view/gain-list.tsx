import { countsOf, type Gain, type Given, gainsOf, isRight } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { ideas } from "../../../say/questions/ideas.js";
import { words } from "../../../say/questions/words.js";
import { topicOf } from "./ask.js";

const was = (given: Given): string =>
  words.was(isRight(given), words.confidences[given.confidence] ?? "");

function GainRow({ asked, before, after, outcome, twinMet }: Gain) {
  const both = [
    ...(before ? [`${words.beforeWas}: ${was(before)}.`] : []),
    ...(after ? [`${words.afterWas}: ${was(after)}${twinMet ? ` (${words.met})` : ""}.`] : []),
  ];
  const held = after?.idea ? ` ${words.heldOn(spell(ideas[after.idea].belief))}` : "";
  return (
    <li data-outcome={outcome}>
      <b>
        {topicOf(asked)}
        {outcome && `: ${words.outcomes[outcome]}`}
      </b>
      <br />
      {both.join(" ")}
      {held}{" "}
      <a
        href={`#one?question=${asked}&form=twin`}
        aria-label={`${words.lookAgain}: ${topicOf(asked)}`}
      >
        {words.lookAgain}
      </a>
    </li>
  );
}

/** What became of each misconception between the checks, in counts. */
export function GainList({ answers }: { readonly answers: readonly Given[] }) {
  const gains = gainsOf(answers);
  const { both, rightBefore, rightAfter, certainAndWrong } = countsOf(gains);
  const summary =
    both === 0
      ? [words.noBefore]
      : [
          words.compared(both, rightBefore, rightAfter),
          words.certain(certainAndWrong.before, certainAndWrong.after),
          words.fewSay,
        ];
  return (
    <>
      {summary.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <ol class="gains">
        {gains.map((gain) => (
          <GainRow key={gain.asked} {...gain} />
        ))}
      </ol>
    </>
  );
}

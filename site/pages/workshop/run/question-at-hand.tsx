import { lastQuestion, stages } from "@rollbook/lib";
import { useEffect } from "preact/hooks";
import { theLog } from "../../../store/log.js";
import { Chips } from "../../../ui/chips.js";
import { isDesk } from "../paddock/place.js";
import { words } from "../words.js";
import { AskedToAll } from "./asked-to-all.js";
import { PhoneVote } from "./phone-vote.js";
import { isOfRun, runQuestions } from "./run-question.js";
import { type AtHand, atHand, clockAt } from "./state.js";
import { changeVote, chosenQuestion, vote } from "./vote-state.js";

const { ballot: said } = words;

const isAt = (at: AtHand, stage: (typeof stages)[number]): boolean =>
  clockAt(at).stage === stages.indexOf(stage);

/** Whether the question of the run stands beside its clock: before it is driven, and when it is talked over. */
export function isShownAbove(): boolean {
  const at = atHand.value;
  const asks = isOfRun(vote.now.value.ready) && chosenQuestion() !== undefined;
  return asks && at !== undefined && (isAt(at, "predict") || isAt(at, "debrief"));
}

/** Made from what this run changes, once its stage has come, unless the phones still vote on another. */
export function QuestionAtHand({ at }: { readonly at: AtHand }) {
  const { run } = at.row;
  const all = runQuestions();
  const [first] = all;
  const voting = lastQuestion(theLog())?.state === "open";
  const due = isAt(at, "predict") && vote.now.value.madeFor !== run && !voting;
  useEffect(() => {
    if (due && first !== undefined) changeVote({ ready: first.key, madeFor: run });
  }, [due, first?.key]);
  const asked = chosenQuestion();
  if (!isShownAbove() || asked === undefined) return null;
  return (
    <section id="question-at-hand">
      <h3>{said.atHand}</h3>
      {all.length > 1 && (
        <Chips
          id="question-of-car"
          question={said.which}
          choices={all.map(({ key, label }) => ({ value: key, text: label }))}
          chosen={vote.now.value.ready}
          choose={(ready) => changeVote({ ready })}
        />
      )}
      <AskedToAll asked={asked} />
      {isDesk() ? <PhoneVote /> : <p class="quiet">{said.withCards}</p>}
    </section>
  );
}

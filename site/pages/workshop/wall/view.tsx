import { useSignal } from "@preact/signals";
import { lastQuestion, type QuestionEntry, type Round } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { useEffect } from "preact/hooks";
import { theLog } from "../../../store/log.js";
import { roundsOn } from "../day/worked.js";
import { ask } from "../paddock/ask.js";
import { HowToJoin, type Place } from "../paddock/desk.js";
import { isDesk } from "../paddock/place.js";
import { ForTheWall } from "../run/at-hand.js";
import { Standing } from "../run/phone-vote.js";
import { type AtHand, atHand, readingOf } from "../run/state.js";
import { words } from "../words.js";

const { run: said } = words;

/**
 * What a room sees, in a window of its own: clock, who drives, who is next, how to join, the question.
 * Notes, warnings, predictions and the names of wrong ideas stay on the desk.
 */
export function WallView({ open }: { readonly open: boolean }) {
  const at = atHand.value;
  const asked = lastQuestion(theLog());
  if (!open) return null;
  return (
    <div class="room">
      <h2 tabIndex={-1}>{words.title}</h2>
      {at ? <ForTheWall at={at} /> : <p>{said.noRuns}</p>}
      {at && <Next at={at} />}
      {asked && <Question asked={asked} />}
      {isDesk() && <Joining />}
    </div>
  );
}

/** Who is out next, and in which car. */
function Next({ at }: { readonly at: AtHand }) {
  const { round } = readingOf(at);
  const next: Round | undefined = roundsOn(at.day, at.row.run)[round?.round ?? 0];
  if (next === undefined) return null;
  const names = next.stints.map(({ car, driver }) => words.plan.inCar(car, driver)).join("; ");
  return <p class="wall-next">{said.nextOut(names)}</p>;
}

function Question({ asked }: { readonly asked: QuestionEntry }) {
  return (
    <div class="wall-question">
      <p class="ask">{spell(asked.ask)}</p>
      <ol type="A" class="answers-a-d">
        {asked.choices.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <Standing asked={asked} />
    </div>
  );
}

function Joining() {
  const place = useSignal<Place | undefined>(undefined);
  useEffect(() => {
    void ask("place").then((answer) => {
      if (answer?.status === 200) place.value = answer.fields as unknown as Place;
    });
  }, []);
  return place.value === undefined ? null : <HowToJoin place={place.value} />;
}

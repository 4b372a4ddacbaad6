import { words } from "../../../say/measure/ride.js";
import { Button } from "../../../ui/button.js";
import { begin, end, recording } from "../record/record.js";
import { ask, asked, heard } from "../record/sensors.js";

const said = {
  "not-asked": words.notAsked,
  asking: words.asking,
  none: words.none,
  insecure: words.insecure,
  refused: words.refused,
  silent: words.silent,
} as const;

/** What the sensors say, before the phone is mounted; and the two buttons of a ride. */
export function Recorder() {
  const now = recording.value;
  if (now !== undefined)
    return (
      <>
        <h2>{words.sensorsHead}</h2>
        <p role="status" class="running">
          {words.recording(now.seconds)}
        </p>
        <Button id="ride-stop" large work={() => void end()}>
          {words.stop}
        </Button>
      </>
    );
  const state = asked.value;
  const { rate, satellites } = heard.value;
  const sentence = state === "answering" ? words.answering(rate, satellites) : said[state];
  return (
    <>
      <h2>{words.sensorsHead}</h2>
      <p role="status">{sentence}</p>
      {state === "not-asked" && (
        <Button id="ride-try" work={() => void ask()}>
          {words.try}
        </Button>
      )}
      {state === "answering" && (
        <Button id="ride-start" large work={() => void begin()}>
          {words.start}
        </Button>
      )}
    </>
  );
}

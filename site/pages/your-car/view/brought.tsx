import { classWords as words } from "../../../say/your-car/classes.js";
import { Button } from "../../../ui/button.js";
import { nameOfSound } from "../model/read-file.js";
import { brought, leaveBrought, takeBrought } from "../state/brought.js";

const MOST_SHOWN = 12;

/** Asks whether to take in what a link brought; nothing is taken in by itself. */
export function Brought() {
  const now = brought.value;
  if (now === undefined) return null;
  if ("faults" in now) return <Problem faults={now.faults} />;
  if ("waiting" in now) {
    const count = now.waiting[0]?.count ?? 0;
    return (
      <div class="offer" role="status">
        <p>{words.waiting(now.waiting.length, count)}</p>
        <p class="doing">
          <Button work={leaveBrought}>{words.forget}</Button>
        </p>
      </div>
    );
  }
  const { sound, notes } = now;
  const what = "car" in sound ? words.what.car : words.what.class;
  return (
    <div class="offer" role="region" aria-label={words.take}>
      <p>{words.brings(what, nameOfSound(sound))}</p>
      <Lines lines={notes} />
      <p class="doing">
        <Button id="take-brought" work={() => void takeBrought(sound)}>
          {words.take}
        </Button>
        <Button id="leave-brought" work={leaveBrought}>
          {words.leave}
        </Button>
      </p>
    </div>
  );
}

function Problem({ faults }: { readonly faults: readonly string[] }) {
  return (
    <div class="problem" role="alert">
      <p>{faults.length === 0 ? words.unreadable : words.faulty}</p>
      <Lines lines={faults} />
      <p class="doing">
        <Button work={leaveBrought}>{words.close}</Button>
      </p>
    </div>
  );
}

const Lines = ({ lines }: { readonly lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <ul>
      {lines.slice(0, MOST_SHOWN).map((line, i) => (
        <li key={i}>{line}</li>
      ))}
    </ul>
  );

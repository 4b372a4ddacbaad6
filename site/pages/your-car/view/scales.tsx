import { signal, useComputed } from "@preact/signals";
import { sumOfWheels, type Wheels } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { format, unitOf } from "../../../say/units.js";
import { scaleWords as words } from "../../../say/your-car/scales.js";
import { Button } from "../../../ui/button.js";
import { shownRangeOf } from "../model/number.js";
import { shapeAt } from "../model/path.js";
import { fromScales, readingAt } from "../model/scales.js";
import { change, type } from "../state/doing.js";
import { openDraft } from "../state/open.js";
import { idOf } from "./go-to.js";

const wheels = (["front", "rear"] as const).flatMap((end) =>
  (["left", "right"] as const).map((side) => ({ end, side })),
);

/** What the scales said last, and of which draft. */
const answer = signal({ of: "", text: "" });

function Reading({
  end,
  side,
}: {
  readonly end: "front" | "rear";
  readonly side: "left" | "right";
}) {
  const path = readingAt(end, side);
  const unit = unitOf("mass", reader.units);
  const text = useComputed(() => openDraft.value?.typed[path]?.text ?? "").value;
  return (
    <label class="box">
      <span class="caption">{`${end} ${side}`}</span>
      <input
        id={idOf(path)}
        class="number"
        inputMode="decimal"
        autocomplete="off"
        aria-label={`${words.reading}, ${end} ${side}, ${unit}`}
        value={text}
        onInput={({ currentTarget }) => type(path, currentTarget.value)}
      />
      <span class="unit">{unit}</span>
    </label>
  );
}

function told({ front, rear }: Wheels<number>): string {
  const total = sumOfWheels({ front, rear });
  const share = (part: number) => format("share", part / total, 1, reader.units);
  return words.done(
    format("mass", total, 0, reader.units),
    share(front.left + front.right),
    share(front.left + rear.left),
    share(front.right + rear.left),
  );
}

function refusal(refused: "incomplete" | "off"): string {
  const shape = shapeAt("body.mass");
  if (refused === "incomplete" || shape?.type !== "number") return words.incomplete;
  return words.off(shownRangeOf(shape, reader.units));
}

function putIn(): void {
  const before = openDraft.value;
  if (!before) return;
  const { draft, readings, refused } = fromScales(before, reader.units);
  answer.value = { of: before.id, text: readings ? told(readings) : refusal(refused) };
  if (draft) change(() => draft);
}

/** Four scale readings, and a button that works the body out from them. */
export function Scales() {
  const said = useComputed(() =>
    answer.value.of === openDraft.value?.id ? answer.value.text : "",
  ).value;
  return (
    <fieldset class="part scales">
      <legend>{words.title}</legend>
      <div class="boxes">
        {wheels.map(({ end, side }) => (
          <Reading key={`${end} ${side}`} end={end} side={side} />
        ))}
      </div>
      <Button id="scales-use" work={putIn}>
        {words.use}
      </Button>
      <p class="said" role="status">
        {said}
      </p>
      <p class="note">{words.cross}</p>
    </fieldset>
  );
}

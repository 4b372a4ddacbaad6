import { useSignal } from "@preact/signals";
import { type Change, nextChoices } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { changeSize, leverName } from "../../../say/change.js";
import { practiceLabel } from "../../../say/practice/score.js";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import type { Round } from "../state.js";
import { Part } from "./part.js";

interface Asking {
  readonly round: Round;
  readonly file: (change: Change) => void;
}

/** What was changed: one of the changes that can be felt on this car. */
export function CausePart({ round, file }: Asking) {
  const { practice, causes = [] } = round;
  const cause = useSignal<Change | undefined>(undefined);
  const fault = useSignal("");
  const send = () => {
    if (cause.value === undefined) fault.value = words.causeFault;
    else file(cause.value);
  };
  return (
    <Part id="cause" heading={words.cause} done={round.cause !== undefined}>
      <fieldset class="causes">
        <legend>{words.causeAsk}</legend>
        <div>
          {causes.map((change, i) => (
            <label key={i}>
              <input
                type="radio"
                name="cause"
                id={`cause-${i}`}
                checked={change === cause.value}
                onChange={() => {
                  cause.value = change;
                }}
              />
              {practiceLabel(change, practice.car, reader)}
            </label>
          ))}
        </div>
      </fieldset>
      <p class="quiet">{words.causeHelp}</p>
      <p class="fault" role="alert">
        {fault.value}
      </p>
      <Button id="file-cause" large work={send}>
        {words.fileCause}
      </Button>
    </Part>
  );
}

/** Which lever, and by how much, by their places; empty where nothing is chosen. */
const nothing = { where: "", by: "" };

/** Levers of the car as it is now, and the changes of the one that is chosen. */
function useNext({ practice: { changed } }: Asking["round"]) {
  const choices = useMemo(() => nextChoices(changed), []);
  const chosen = useSignal(nothing);
  const { where } = chosen.value;
  const changes = where === "" ? [] : (choices[Number(where)]?.changes ?? []);
  const choose = (now: Partial<typeof nothing>) => {
    chosen.value = { ...chosen.value, ...now };
  };
  return { choices, changes, chosen: chosen.value, choose };
}

/** One change of the car as it is now. */
export function NextPart({ round, file }: Asking) {
  const { choices, changes, chosen, choose } = useNext(round);
  const fault = useSignal("");
  const { where, by } = chosen;
  const send = () => {
    const next = by === "" ? undefined : changes[Number(by)];
    fault.value = next === undefined ? words.nextFault : "";
    if (next !== undefined) file(next);
  };
  const places = choices.map(({ changes: [first] }) => (first ? leverName(first, reader) : ""));
  const steps = changes.map((change) => changeSize(change, reader));
  const { nextWhere, nextBy } = words;
  return (
    <Part id="next" heading={words.next} done={round.next !== undefined}>
      <p>{words.nextIntro}</p>
      <OneOf
        id="next-where"
        label={nextWhere}
        texts={places}
        value={where}
        choose={(value) => choose({ where: value, by: "" })}
      />
      <OneOf
        id="next-by"
        label={nextBy}
        texts={steps}
        value={by}
        choose={(value) => choose({ by: value })}
      />
      <p class="fault" role="alert">
        {fault.value}
      </p>
      <Button id="drive-again" large work={send}>
        {words.makeIt}
      </Button>
    </Part>
  );
}

/** Nothing is chosen until the learner chooses. */
function OneOf({
  id,
  label,
  texts,
  value,
  choose,
}: {
  readonly id: string;
  readonly label: string;
  readonly texts: readonly string[];
  readonly value: string;
  readonly choose: (value: string) => void;
}) {
  return (
    <ChoiceField
      id={id}
      label={label}
      choices={[["", words.chooseOne], ...texts.map((text, i) => [String(i), text] as const)]}
      value={value}
      choose={choose}
    />
  );
}

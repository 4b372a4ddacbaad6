import { useSignal } from "@preact/signals";
import { type Change, nextChoices } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { changeSize, leverName } from "../../../say/change.js";
import { inList } from "../../../say/in-list.js";
import { practiceLabel } from "../../../say/practice/score.js";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { type Round, workedIn } from "../state.js";
import { Part } from "./part.js";
import { Scored } from "./scored.js";

/** What was changed: one of the changes that can be felt on this car, or two of them. */
export function CausePart({
  round,
  file,
}: {
  readonly round: Round;
  readonly file: (causes: readonly Change[]) => void;
}) {
  const { practice, causes = [], named } = round;
  const worked = workedIn(round) > 1;
  const labelOf = (change: Change) => practiceLabel(change, practice.car, reader);
  const after =
    worked && named ? (
      <p class="shown-how">{words.workedCause(inList(named.map(labelOf)))}</p>
    ) : (
      <Scored name="cause" round={round} />
    );
  return (
    <Part id="cause" heading={words.cause} done={named !== undefined} after={after}>
      <Causes
        causes={causes}
        count={practice.hidden.length}
        worked={worked ? (named ?? []) : undefined}
        labelOf={labelOf}
        file={file}
      />
    </Part>
  );
}

interface Asked {
  readonly causes: readonly Change[];
  readonly count: number;
  readonly worked: readonly Change[] | undefined;
  readonly labelOf: (change: Change) => string;
  readonly file: (causes: readonly Change[]) => void;
}

/** As many are to be chosen as were changed; where it is worked they stand chosen. */
function Causes({ causes, count, worked, labelOf, file }: Asked) {
  const chosen = useSignal<readonly Change[]>([]);
  const fault = useSignal("");
  const one = count === 1;
  const choose = (change: Change) => {
    chosen.value = withOther(chosen.value, change, count);
  };
  const send = () => {
    if (chosen.value.length < count) fault.value = one ? words.causeFault : words.causesFault;
    else file(chosen.value);
  };
  return (
    <>
      <fieldset class="causes">
        <legend>{one ? words.causeAsk : words.causesAsk}</legend>
        <div>
          {causes.map((change, i) => (
            <Cause
              key={i}
              id={`cause-${i}`}
              type={one ? "radio" : "checkbox"}
              label={labelOf(change)}
              isChosen={(worked ?? chosen.value).includes(change)}
              choose={() => choose(change)}
            />
          ))}
        </div>
      </fieldset>
      <p class="quiet">{words.causeHelp}</p>
      <p class="fault" role="alert">
        {fault.value}
      </p>
      {worked === undefined && (
        <Button id="file-cause" large work={send}>
          {words.fileCause}
        </Button>
      )}
    </>
  );
}

/** What is chosen once a change was pressed: one more, or one less; past the count the first goes. */
function withOther(chosen: readonly Change[], change: Change, count: number): readonly Change[] {
  const others = chosen.filter((other) => other !== change);
  const taken = others.length === chosen.length;
  return count === 1 ? [change] : taken ? [...others, change].slice(-count) : others;
}

interface OneCause {
  readonly id: string;
  readonly type: "radio" | "checkbox";
  readonly label: string;
  readonly isChosen: boolean;
  readonly choose: () => void;
}

function Cause({ id, type, label, isChosen, choose }: OneCause) {
  return (
    <label>
      <input type={type} name="cause" id={id} checked={isChosen} onChange={choose} />
      {label}
    </label>
  );
}

/** Which lever, and by how much, by their places; empty where nothing is chosen. */
const nothing = { where: "", by: "" };

/** Levers of the car as it is now, and the changes of the one that is chosen. */
function useNext({ practice: { changed } }: Round) {
  const choices = useMemo(() => nextChoices(changed), []);
  const chosen = useSignal(nothing);
  const { where } = chosen.value;
  const changes = where === "" ? [] : (choices[Number(where)]?.changes ?? []);
  const choose = (now: Partial<typeof nothing>) => {
    chosen.value = { ...chosen.value, ...now };
  };
  return { choices, changes, chosen: chosen.value, choose };
}

interface Asking {
  readonly round: Round;
  readonly file: (change: Change) => void;
}

/** One change of the car as it is now. */
export function NextPart({ round, file }: Asking) {
  const { next } = round;
  const worked = workedIn(round) > 2 && next !== undefined;
  return (
    <Part
      id="next"
      heading={words.next}
      done={next !== undefined}
      after={
        worked ? (
          <p class="shown-how">
            {words.workedNext(`${leverName(next, reader)} ${changeSize(next, reader)}`)}
          </p>
        ) : (
          <Scored name="next" round={round} />
        )
      }
    >
      <p>{words.nextIntro}</p>
      {!worked && <OwnNext round={round} file={file} />}
    </Part>
  );
}

/** The next change that the learner chooses. */
function OwnNext({ round, file }: Asking) {
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
    <>
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
    </>
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

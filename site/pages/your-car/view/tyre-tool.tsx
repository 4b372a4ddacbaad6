import { LONGEST_TYRE, measuredRange, type OwnTyre, type TyreRange } from "@rollbook/lib";
import { format } from "@rollbook/page";
import { tyreWords as words } from "../../../say/your-car/tyre.js";
import { Button } from "../../../ui/button.js";
import { LinesField } from "../../../ui/field.js";
import { FileInput } from "../../../ui/file-input.js";
import { LateFold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import {
  fitForces,
  found,
  fromFile,
  pasted,
  putOn,
  takeCoefficients,
  tyreAsFile,
} from "../state/tyre.js";
import { FitTold } from "./tyre-fit.js";

const MOST_SHOWN = 12;

/** Takes in a tyre by its coefficients, or fits the club tyre to a table. */
export function TyreTool() {
  return (
    <LateFold id="tyre-tool" title={words.title}>
      <p class="opening">{words.help}</p>
      <LinesField
        id="tyre-pasted"
        label={words.paste}
        rows={6}
        maxLength={LONGEST_TYRE}
        value={pasted.now.value}
        type={(text) => void pasted.setTyped(text)}
      />
      <label class="choose" for="tyre-file">
        {`${words.file} `}
        <FileInput id="tyre-file" accept=".json,.txt,.csv,text/plain" take={fromFile} />
      </label>
      <p class="doing">
        <Button id="tyre-coefficients" work={takeCoefficients}>
          {words.asCoefficients}
        </Button>
        <Button id="tyre-forces" work={fitForces}>
          {words.asForces}
        </Button>
      </p>
      <div id="tyre-found" role="status">
        <Found />
      </div>
    </LateFold>
  );
}

function Found() {
  const now = found.value;
  if (now === undefined) return null;
  if ("faults" in now) {
    const rest = now.faults.length - MOST_SHOWN;
    const more = rest > 0 ? [words.more(rest)] : [];
    return (
      <div class="problem">
        <p>{words.faulty}</p>
        <List texts={[...now.faults.slice(0, MOST_SHOWN), ...more]} />
      </div>
    );
  }
  const { tyre, notes, fit } = now;
  return (
    <>
      {fit && <FitTold readings={fit.of} fit={fit.found} />}
      <p>{rangeTold(measuredRange(tyre.coefficients), fit !== undefined)}</p>
      {notes.length > 0 && <List texts={notes} />}
      <Put tyre={tyre} />
    </>
  );
}

function rangeTold({ load, pressure, inclination }: TyreRange, isFit: boolean): string {
  const told = (one: string, other: string) => words.from(one, other);
  if (isFit)
    return words.fittedAt(told(format("force", load.minimum, 0), format("force", load.maximum, 0)));
  return words.measured(
    told(format("force", load.minimum, 0), format("force", load.maximum, 0)),
    told(format("pressure", pressure.minimum, 0), format("pressure", pressure.maximum, 0)),
    told(format("angle", inclination.minimum, 1), format("angle", inclination.maximum, 1)),
  );
}

function Put({ tyre }: { readonly tyre: OwnTyre }) {
  return (
    <p class="doing">
      {(["both", "front", "rear"] as const).map((where) => (
        <Button key={where} id={`tyre-on-${where}`} work={() => putOn(where, tyre)}>
          {words.put[where]}
        </Button>
      ))}
      <Button work={() => tyreAsFile(tyre)}>{words.asFile}</Button>
    </p>
  );
}

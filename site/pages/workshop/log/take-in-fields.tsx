import { useSignal } from "@preact/signals";
import { log as said } from "../../../say/workshop/log.js";
import { Button } from "../../../ui/button.js";
import { Field, LinesField } from "../../../ui/field.js";
import { FileInput } from "../../../ui/file-input.js";
import { pasted } from "./drafts.js";
import { ReportTableHelp } from "./report-table-help.js";
import { LARGEST_FILE } from "./take-in.js";
import { Result, type TakenIn, takeFile, takePasted } from "./taken-in.js";

const accepted = ".json,.csv,application/json,text/csv";

/** Files to take in, or what was pasted, and what came of either. */
export function TakeIn() {
  const results = useSignal<readonly TakenIn[]>([]);
  const tell = (told: readonly TakenIn[]) => {
    results.value = told;
  };
  const replace = (at: number, result: TakenIn) =>
    tell(results.value.map((one, i) => (i === at ? result : one)));
  return (
    <>
      <Files tell={tell} />
      <Pasted tell={tell} />
      <div id="taken-in">
        {results.value.map((result, i) => (
          <Result key={i} result={result} replace={(other) => replace(i, other)} />
        ))}
      </div>
      <ReportTableHelp />
    </>
  );
}

interface Taking {
  readonly tell: (told: readonly TakenIn[]) => void;
}

function Files({ tell }: Taking) {
  const take = async (files: readonly File[]) => {
    const told: TakenIn[] = [];
    for (const file of files) told.push(await takeFile(file));
    tell(told);
  };
  return (
    <Field id="take-in" label={said.files}>
      <FileInput id="take-in" multiple accept={accepted} take={take} />
    </Field>
  );
}

/** What was pasted stays where it is until it is taken in. */
function Pasted({ tell }: Taking) {
  const take = async () => {
    const text = pasted.now.value;
    const results = await takePasted(text);
    tell(results);
    const all = results.every(({ refused, unkept }) => refused === undefined && !unkept);
    if (all && pasted.now.value === text) pasted.clear();
  };
  return (
    <>
      <LinesField
        id="pasted"
        label={said.paste}
        rows={3}
        maxLength={LARGEST_FILE}
        value={pasted.now.value}
        type={(text) => void pasted.set(text)}
      />
      <p class="tools">
        <Button id="take-pasted" work={() => void take()}>
          {said.takePasted}
        </Button>
      </p>
    </>
  );
}

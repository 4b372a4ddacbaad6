import { useComputed } from "@preact/signals";
import { numberAt, Refusal } from "@rollbook/lib";
import { format, reader, spell } from "@rollbook/page";
import { plusMinus } from "../../../say/measure/plus-minus.js";
import { remarkInWords } from "../../../say/measure/remarks.js";
import { fieldWords, foundWords, words } from "../../../say/measure/words.js";
import { numberInWords } from "../../../say/number-names.js";
import { refusalInWords } from "../../../say/refusal.js";
import { Button } from "../../../ui/button.js";
import { List } from "../../../ui/list.js";
import type { FormPlace } from "../model/input.js";
import type { Found, Result } from "../model/result.js";
import { resultAt } from "../state/results.js";
import { carAtHand, isOwn } from "../state/sheet.js";
import { isTypedElsewhere, write } from "../state/write.js";

const shownAlone = ({ quantity, decimals }: Found, value: number) =>
  format(quantity, value, decimals);

/** What stands beside it: in the file, or by the model. */
function besides(found: Found): string {
  const { path, predicted, mostly } = found;
  const inFile = path === undefined ? undefined : numberAt(carAtHand.value, path)?.value;
  const model = inFile ?? predicted;
  const told = [
    ...(model === undefined
      ? []
      : [(inFile === undefined ? words.byModel : words.inFile)(shownAlone(found, model))]),
    ...(mostly === undefined ? [] : [words.mostly(fieldWords[mostly] ?? numberInWords(mostly))]),
  ];
  return told.join("; ");
}

/** One number with how far it may be off, and a way into the car. */
export function FoundLine({ found }: { readonly found: Found }) {
  const { key, value, spread, quantity, decimals, path } = found;
  const name = foundWords[key] ?? key;
  const car = carAtHand.value.name;
  const before = path === undefined ? undefined : numberAt(carAtHand.value, path)?.value;
  const put = (path: string) => {
    const stood = before === undefined ? "" : shownAlone(found, before);
    void write({ path, value, spread }, spell(name), stood);
  };
  return (
    <li data-found={key}>
      <span class="name">{spell(name)}</span>{" "}
      <b class="value">{plusMinus({ value, spread }, quantity, decimals, reader)}</b>{" "}
      <small>{spell(besides(found))}</small>
      {path !== undefined && isOwn.value && (
        <span class="put">
          <Button aria-label={`${words.write(car)}: ${spell(name)}`} work={() => put(path)}>
            {words.write(car)}
          </Button>
          {isTypedElsewhere(path) && <small class="note">{words.typedThere}</small>}
        </span>
      )}
    </li>
  );
}

/** What is missing, told in the names of fields. */
function Missing({ keys, form }: { readonly keys: readonly string[]; readonly form: FormPlace }) {
  const ofLines = form.spec.columns.some(({ key }) => keys.includes(key));
  const names = keys.map((key) => fieldWords[key] ?? key);
  return <p class="note missing">{spell(ofLines ? words.missingLines : words.missing(names))}</p>;
}

function inWords(refused: Error): string {
  return refused instanceof Refusal ? refusalInWords(refused, reader) : refused.message;
}

/** What the readings of a form come to, as they stand. */
export function Results({ form }: { readonly form: FormPlace }) {
  const result = useComputed<Result>(() => resultAt(form)).value;
  if (result.refused !== undefined) return <p class="fault">{inWords(result.refused)}</p>;
  if (result.found === undefined) return <Missing keys={result.missing} form={form} />;
  const remarks = result.remarks.map(({ code, value }) => remarkInWords(code, value, reader));
  return (
    <>
      <ul class="found">
        {result.found.map((found) => (
          <FoundLine key={found.key} found={found} />
        ))}
      </ul>
      {remarks.length > 0 && <List texts={remarks} kind="remarks" />}
    </>
  );
}

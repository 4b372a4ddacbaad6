import { carWords as words } from "../../../say/your-car/cars.js";
import { Button } from "../../../ui/button.js";
import { begin } from "../state/doing.js";
import { close, type FileResult, results } from "../state/take-in-files.js";

const MOST_SHOWN = 12;

/** What came of one file: what is wrong with it, and the offer to mend it where that can be done. */
function Result({ result }: { readonly result: FileResult }) {
  const { sentence, lines, cameIn, mend } = result;
  const open = () => {
    close(result);
    begin(mend);
  };
  const rest = lines.length - MOST_SHOWN;
  return (
    <div class={cameIn ? "came-in" : "problem"} role={cameIn ? undefined : "alert"}>
      <p>{sentence}</p>
      {lines.length > 0 && (
        <ul>
          {lines.slice(0, MOST_SHOWN).map((line, i) => (
            <li key={i}>{line}</li>
          ))}
          {rest > 0 && <li>{words.moreLines(rest)}</li>}
        </ul>
      )}
      {mend && <p class="note">{words.mendNote}</p>}
      <div class="doing">
        {mend && <Button work={open}>{words.mend}</Button>}
        <Button work={() => close(result)}>{words.close}</Button>
      </div>
    </div>
  );
}

/** What came of the files that were opened last, each by itself. */
export function FileResults() {
  return (
    <div>
      {results.value.map((result, i) => (
        <Result key={i} result={result} />
      ))}
    </div>
  );
}

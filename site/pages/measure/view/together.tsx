import { useComputed } from "@preact/signals";
import { reader, spell } from "@rollbook/page";
import { measurementWords } from "../../../say/measure/measurements.js";
import { plusMinus } from "../../../say/measure/plus-minus.js";
import { words } from "../../../say/measure/words.js";
import { numberInWords } from "../../../say/number-names.js";
import { type Together, togetherOf } from "../model/together.js";
import { resultAt } from "../state/results.js";
import { FoundLine } from "./found.js";

/** How often chance does it, in words. */
function times(byChance: number): string {
  if (byChance > 0.5) return words.shares.often;
  if (byChance < 1e-3) return words.shares.never;
  return words.shares.oneIn(Math.round(1 / byChance));
}

function One({ one }: { readonly one: Together }) {
  const [first] = one.ways;
  if (first === undefined) return null;
  const { quantity, decimals } = first.found;
  const titleOf = (id: string) => measurementWords[id]?.title ?? id;
  const verdict = one.byChance < 0.05 ? words.differ : words.agree;
  const odd = one.odd === undefined ? undefined : one.ways[one.odd];
  return (
    <>
      <h3>{spell(numberInWords(one.path))}</h3>
      <ul>
        {one.ways.map(({ id, found }) => (
          <li key={id}>{`${titleOf(id)}: ${plusMinus(found, quantity, decimals, reader)}`}</li>
        ))}
      </ul>
      <p class="note">
        {verdict(times(one.byChance))} {odd && words.odd(titleOf(odd.id))}
      </p>
      <ul class="found">
        <FoundLine
          found={{ ...first.found, key: "together", value: one.value, spread: one.spread }}
        />
      </ul>
    </>
  );
}

/** Numbers to which more than one form leads. */
export function TogetherView() {
  const all = useComputed(() => togetherOf(resultAt)).value;
  if (all.length === 0) return null;
  return (
    <section aria-labelledby="together-title">
      <h2 id="together-title">{words.together}</h2>
      <p>{words.togetherLead}</p>
      {all.map((one) => (
        <One key={one.path} one={one} />
      ))}
    </section>
  );
}

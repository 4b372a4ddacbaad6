import { useComputed } from "@preact/signals";
import { words } from "../../../say/measure/words.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import type { Spec } from "../model/spec.js";
import { chooseEnd, clear, endOf, stampOf } from "../state/sheet.js";
import { Circle } from "./circle.js";
import { Results } from "./found.js";
import { Choices, Lines, Singles, Tools } from "./readings.js";

/** One measurement: what was read, and what it comes to. */
export function Form({ spec }: { readonly spec: Spec }) {
  const end = useComputed(() => endOf(spec)).value;
  const form = { spec, end };
  const stamp = stampOf(form);
  return (
    <div key={end}>
      {spec.ofAxle && (
        <Chips
          id={`${spec.id}-end`}
          question={words.axle}
          choices={[
            { value: "front", text: words.front },
            { value: "rear", text: words.rear },
          ]}
          chosen={end}
          choose={(chosen) => chooseEnd(spec, chosen)}
        />
      )}
      <Choices form={form} />
      <Singles form={form} />
      {spec.id === "circle" ? <Circle form={form} /> : <Lines form={form} />}
      <Tools form={form} />
      <div class="results" aria-live="polite">
        <Results form={form} />
      </div>
      {stamp && (
        <p class="note">
          {words.readOn(stamp.when, stamp.by)}{" "}
          <Button work={() => clear(form)}>{words.clear}</Button>
        </p>
      )}
    </div>
  );
}

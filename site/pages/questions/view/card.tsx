import { useSignal } from "@preact/signals";
import { type Given, type Occasion, today } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { Asked } from "../../../say/questions/asked.js";
import { words } from "../../../say/questions/words.js";
import { addAnswer } from "../../../store/answers.js";
import type { Which } from "../state.js";
import { aboutOf, ask, letterOf } from "./ask.js";
import { type Chosen, Outcome } from "./outcome.js";

/** Choices of which one has to be chosen. */
function Radios({
  name,
  legend,
  kind,
  texts,
  choose,
}: {
  readonly name: string;
  readonly legend: { readonly text: string; readonly kind?: string };
  readonly kind?: string;
  readonly texts: readonly string[];
  readonly choose: (index: number) => void;
}) {
  return (
    <fieldset class={kind}>
      <legend class={legend.kind}>{legend.text}</legend>
      {texts.map((text, i) => (
        <label key={text}>
          <input type="radio" name={name} value={i} required onChange={() => choose(i)} />
          <span>{text}</span>
        </label>
      ))}
    </fieldset>
  );
}

function AnswerForm({
  asked,
  group,
  take,
}: {
  readonly asked: Asked;
  readonly group: string;
  readonly take: (chosen: Chosen) => void;
}) {
  const chosen = useRef<Partial<Chosen>>({});
  const choose = (part: Partial<Chosen>) => {
    chosen.current = { ...chosen.current, ...part };
  };
  const submit = (event: Event) => {
    event.preventDefault();
    const { index, confidence } = chosen.current;
    if (index !== undefined && confidence !== undefined) take({ index, confidence });
  };
  const texts = asked.choices.map(({ text }, i) => `${letterOf(i)}. ${spell(text)}`);
  return (
    <form class="answering" onSubmit={submit}>
      <Radios
        name={`${group}-choice`}
        legend={{ text: spell(asked.ask), kind: "ask" }}
        texts={texts}
        choose={(index) => choose({ index })}
      />
      <Radios
        name={`${group}-sure`}
        legend={{ text: words.sure }}
        kind="inline"
        texts={words.confidences}
        choose={(confidence) => choose({ confidence })}
      />
      <button type="submit">{words.answer}</button>
    </form>
  );
}

function givenFor(
  { idea: asked, form, choices }: Asked,
  occasion: Occasion,
  chosen: Chosen,
): Given {
  const { index, confidence } = chosen;
  const idea = choices[index]?.idea;
  return { asked, form, occasion, day: today(), confidence, ...(idea && { idea }) };
}

interface CardOptions {
  readonly which: Which;
  readonly occasion: Occasion;
  /** Whether the answer is explained at once. */
  readonly explain?: boolean;
  /** Whether the reader is led to it. */
  readonly focus?: boolean;
  readonly answered?: () => void;
  /** What follows the explanation. */
  readonly children?: ComponentChildren;
}

/** A question to answer, and, where it is to be explained, what came of it. */
export function Card(options: CardOptions) {
  const { which, occasion, explain = true, focus = false, answered, children } = options;
  const place = useRef<HTMLElement>(null);
  const chosen = useSignal<Chosen | undefined>(undefined);
  const refused = useSignal(false);
  const asked = useMemo(() => ask(which), [which.idea, which.form]);
  useLayoutEffect(() => {
    if (focus) place.current?.querySelector("input")?.focus({ preventScroll: true });
  }, []);
  const take = (now: Chosen) => {
    if (explain) chosen.value = now;
    answered?.();
    void addAnswer(givenFor(asked, occasion, now)).then((held) => {
      refused.value = !held;
    });
  };
  return (
    <section class="question" ref={place}>
      {chosen.value === undefined ? (
        <AnswerForm asked={asked} group={`${occasion}-${which.idea}-${which.form}`} take={take} />
      ) : (
        <Outcome asked={asked} chosen={chosen.value} />
      )}
      <p class="about">{aboutOf(asked)}</p>
      {refused.value && <p role="status">{words.notKept}</p>}
      {chosen.value !== undefined && children}
    </section>
  );
}

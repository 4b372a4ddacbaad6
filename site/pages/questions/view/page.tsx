import { type Signal, useSignal } from "@preact/signals";
import { today } from "@rollbook/lib";
import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { words } from "../../../say/questions/words.js";
import { answers } from "../../../store/answers.js";
import { firstQuestion, type PartName, partNames, routeOf, type Which } from "../state.js";
import { ChaptersDue } from "./chapters-due.js";
import { CheckPart } from "./check.js";
import { ClassPart } from "./class.js";
import { FilePart } from "./file.js";
import { OnePart } from "./one.js";
import { ReviewPart } from "./review.js";

const intros: Readonly<Record<PartName, string>> = {
  before: words.beforeIntro,
  one: words.oneIntro,
  review: words.reviewIntro,
  after: words.afterIntro,
  class: words.classIntro,
  file: "",
};

/** A part of the page. It is there from the first time it is opened, and stays as it was left. */
function Part({
  name,
  open,
  children,
}: {
  readonly name: PartName;
  readonly open: boolean;
  readonly children: ComponentChildren;
}) {
  const seen = useRef(false);
  seen.current ||= open;
  return (
    <section id={name} hidden={!open}>
      <h2>{words.part[name]}</h2>
      <p class="intro">{intros[name]}</p>
      <div>{seen.current && children}</div>
    </section>
  );
}

const route = () => routeOf(location.hash, answers.now.peek(), today());

/** Which question stands in a part; a link that names one sets it. */
function useWhich(part: PartName): Signal<Which> {
  const first = route();
  return useSignal(first.part === part ? (first.which ?? firstQuestion) : firstQuestion);
}

/** Follows the address: which part is open, and which question stands in it where it names one. */
function useRoute(open: Signal<PartName>, shows: Partial<Record<PartName, Signal<Which>>>): void {
  useEffect(() => {
    const follow = () => {
      const { part, which } = route();
      open.value = part;
      const shown = shows[part];
      if (which !== undefined && shown !== undefined) shown.value = which;
    };
    addEventListener("hashchange", follow);
    return () => removeEventListener("hashchange", follow);
  }, []);
}

/** The page of questions: its head and its parts, of which the address opens one. */
export function Questions() {
  const open = useSignal(route().part);
  const one = useWhich("one");
  const inClass = useWhich("class");
  useRoute(open, { one, class: inClass });
  const parts: Readonly<Record<PartName, ComponentChildren>> = {
    before: <CheckPart check="before" />,
    one: <Standing which={one} of={OnePart} />,
    review: (
      <>
        <ReviewPart />
        <ChaptersDue />
      </>
    ),
    after: <CheckPart check="after" />,
    class: <Standing which={inClass} of={ClassPart} />,
    file: <FilePart />,
  };
  return (
    <>
      <h1>{words.title}</h1>
      <p>{words.lead}</p>
      <Parts open={open.value} />
      {partNames.map((name) => (
        <Part key={name} name={name} open={name === open.value}>
          {parts[name]}
        </Part>
      ))}
    </>
  );
}

/** A part with a question that the reader chooses. */
function Standing({
  which,
  of: View,
}: {
  readonly which: Signal<Which>;
  readonly of: typeof OnePart;
}) {
  const show = (other: Which) => {
    which.value = other;
  };
  return <View which={which.value} show={show} />;
}

function Parts({ open }: { readonly open: PartName }) {
  return (
    <nav class="parts" aria-label={words.parts}>
      {partNames.map((name) => (
        <a key={name} href={`#${name}`} aria-current={name === open ? "true" : undefined}>
          {words.part[name]}
        </a>
      ))}
    </nav>
  );
}

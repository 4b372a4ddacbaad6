import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";

/** A part of the page with a heading; the reader is led to it when it comes, and again with each step in it. */
export function Part({
  id,
  heading,
  done = false,
  step = 0,
  lead = true,
  after,
  children,
}: {
  readonly id: string;
  readonly heading: string;
  /** Whether what was answered stands as it is. */
  readonly done?: boolean;
  readonly step?: number;
  readonly lead?: boolean;
  /** What comes of the answer: stands below it and is not shut with it. */
  readonly after?: ComponentChildren;
  readonly children: ComponentChildren;
}) {
  const head = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (lead) head.current?.focus();
  }, [step]);
  return (
    <section id={id} aria-labelledby={`${id}-h`}>
      <h2 id={`${id}-h`} ref={head} tabIndex={-1}>
        {heading}
      </h2>
      <fieldset class="answered" disabled={done}>
        {children}
      </fieldset>
      {after}
    </section>
  );
}

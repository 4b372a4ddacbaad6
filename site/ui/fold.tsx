import type { ComponentChildren } from "preact";

/** What is read now and then: a line that unfolds. It stays open or shut as the reader left it. */
export function Fold({
  id,
  title,
  kind,
  children,
}: {
  readonly id: string;
  readonly title: ComponentChildren;
  /** A class. */
  readonly kind?: string;
  readonly children: ComponentChildren;
}) {
  return (
    <details id={id} class={kind}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}

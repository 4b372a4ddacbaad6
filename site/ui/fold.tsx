import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { useWhileOpen } from "./while-open.js";

interface Folded {
  readonly id: string;
  readonly title: ComponentChildren;
  /** A class. */
  readonly kind?: string;
  readonly openAtFirst?: boolean;
  readonly children: ComponentChildren;
}

/** What is read now and then: a line that unfolds. It stays open or shut as the reader left it. */
export function Fold({ id, title, kind, children, openAtFirst = false }: Folded) {
  const first = useRef(openAtFirst).current;
  return (
    <details id={id} class={kind} open={first}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}

/** The same, filled when it is opened, and not drawn anew while it is shut. */
export function LateFold({ id, title, kind, children, openAtFirst = false }: Folded) {
  const first = useRef(openAtFirst).current;
  const open = useSignal(first);
  const shown = useWhileOpen(open.value, () => <>{children}</>);
  return (
    <details
      id={id}
      class={kind}
      open={first}
      onToggle={({ currentTarget }) => {
        open.value = currentTarget.open;
      }}
    >
      <summary>{title}</summary>
      {shown}
    </details>
  );
}

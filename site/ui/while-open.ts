import type { VNode } from "preact";
import { useRef } from "preact/hooks";

/** What a part shows: drawn anew while it is open, and left as it is while it is not. */
export function useWhileOpen(open: boolean, draw: () => VNode): VNode | null {
  const last = useRef<VNode>(null);
  if (open) last.current = draw();
  return last.current;
}

/** Puts the keyboard on what a selector finds, once the view has followed what was just done. */
export function focusSoon(selector: string): void {
  setTimeout(() => document.querySelector<HTMLElement>(selector)?.focus({ preventScroll: true }));
}

/** The id of a place's input. */
export const idOf = (path: string): string => `at-${path.replace(/\./g, "-")}`;

/** Opens every fold around an element and puts the focus on it, once what was just done is drawn. */
export const goTo = (id: string): void => queueMicrotask(() => go(id));

function go(id: string): void {
  const target = document.getElementById(id);
  if (!target) return;
  for (
    let fold = target.closest("details");
    fold;
    fold = fold.parentElement?.closest("details") ?? null
  )
    fold.open = true;
  target.focus();
  target.scrollIntoView({ block: "center" });
}

/** The picture nearest to a word that shows the part it names: the next one, else the last before. */
function pictureFor(word: HTMLElement): HTMLElement | undefined {
  const { part = "" } = word.dataset;
  const all = [...document.querySelectorAll<HTMLElement>("article .figure")];
  const showing = all.filter((figure) => figure.querySelector(`[data-part="${part}"]`));
  const next = showing.find(
    (figure) => word.compareDocumentPosition(figure) & Node.DOCUMENT_POSITION_FOLLOWING,
  );
  return next ?? showing.at(-1);
}

const wordAt = (target: EventTarget | null): HTMLElement | undefined =>
  (target instanceof Element && target.closest<HTMLElement>(".part-word")) || undefined;

/**
 * Lets a word that names a part of the car light it in the nearest picture while it is pointed at,
 * tapped or focused. Of each part the first word is a stop for keys: one of each is enough.
 */
export function lightParts(): void {
  const article = document.querySelector("article");
  const words = [...(article?.querySelectorAll<HTMLElement>(".part-word") ?? [])];
  if (!article || words.length === 0) return;
  const stops = new Map([...words].reverse().map((word) => [word.dataset.part, word]));
  for (const word of stops.values()) word.tabIndex = 0;
  let lit: HTMLElement | undefined;
  const light = (word: HTMLElement | undefined) => {
    lit?.removeAttribute("data-lit");
    lit = word && pictureFor(word);
    if (lit) lit.dataset.lit = word?.dataset.part;
  };
  for (const kind of ["mouseover", "focusin", "click"] as const)
    article.addEventListener(kind, ({ target }) =>
      light(wordAt(target) ?? wordAt(document.activeElement)),
    );
  article.addEventListener("focusout", () => light(undefined));
}

import { spell } from "@rollbook/page";

/** Sentences as a list, in the reader's spelling. */
export function List({
  texts,
  kind = "plain",
  ordered = false,
}: {
  readonly texts: readonly string[];
  /** A class. */
  readonly kind?: string;
  readonly ordered?: boolean;
}) {
  const items = texts.map((text, i) => <li key={i}>{spell(text)}</li>);
  return ordered ? <ol class={kind}>{items}</ol> : <ul class={kind}>{items}</ul>;
}

import { spell } from "@rollbook/page";

/** Cautions, a paragraph each. */
export function Bewares({ sentences }: { readonly sentences: readonly string[] }) {
  return sentences.map((sentence) => (
    <p class="beware" key={sentence}>
      {spell(sentence)}
    </p>
  ));
}

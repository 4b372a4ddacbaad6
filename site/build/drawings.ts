/** HTML without its drawings, which are most of it and slow to parse; one may lie inside another. */
export function withoutDrawings(html: string): string {
  let depth = 0;
  return html
    .split(/(<svg|<\/svg>)/)
    .filter((piece) => {
      if (piece === "<svg") depth += 1;
      const kept = depth === 0;
      if (piece === "</svg>") depth -= 1;
      return kept;
    })
    .join("");
}

import { spell } from "@rollbook/page";

/** A list of definitions: what, and how much. */
export function Pairs({ rows }: { readonly rows: readonly (readonly [string, string])[] }) {
  return (
    <dl class="pairs">
      {rows.map(([name, value]) => [
        <dt key={name}>{spell(name)}</dt>,
        <dd key={`${name} `}>{spell(value)}</dd>,
      ])}
    </dl>
  );
}

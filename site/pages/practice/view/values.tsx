import { useSignal } from "@preact/signals";
import { type ChannelName, channelNames, channels } from "@rollbook/lib";
import { format } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { type Look, valuesAt } from "./charts.js";
import { RowTable } from "./row-table.js";
import { wheels } from "./wheels.js";

/** What every drive measures where the reader looks, worked out while it is unfolded. */
export function Values({
  look,
  names,
}: {
  readonly look: Look;
  readonly names: readonly ChannelName[];
}) {
  const open = useSignal(false);
  return (
    <details
      onToggle={({ currentTarget }) => {
        open.value = currentTarget.open;
      }}
    >
      <summary>{words.valuesHere}</summary>
      {open.value && <Table look={look} names={names} />}
    </details>
  );
}

function Table({ look, names }: Parameters<typeof Values>[0]) {
  const moments = valuesAt(look);
  const traced = channelNames
    .filter((name) => names.includes(name))
    .map((name) => {
      const { quantity, decimals } = channels[name];
      return [
        words.channels[name],
        ...moments.map(([, at]) => format(quantity, at[name], decimals)),
      ];
    });
  const loads = wheels.map(([end, side, name]) => [
    words.loads[name],
    ...moments.map(([, { load }]) => format("force", load[end][side], 0)),
  ]);
  return (
    <RowTable
      label={words.valuesHere}
      columns={[words.what, ...moments.map(([name]) => words[name])]}
      rows={[...traced, ...loads]}
    />
  );
}

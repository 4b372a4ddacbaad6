import { useSignal } from "@preact/signals";
import {
  type MapAxis,
  type MapOf,
  type MapReading,
  parameters,
  Refusal,
  readMap,
} from "@rollbook/lib";
import { format, reader, spell } from "@rollbook/page";
import { words } from "../../../say/map.js";
import { refusalInWords } from "../../../say/refusal.js";
import type { LiveMap } from "../live.js";
import { acceleration, nearTippingOf } from "../tell.js";
import { ticksOf } from "../ticks.js";

const most = 7; // columns and rows

/** The map as numbers, each worked out in full, while it is unfolded. */
export function Numbers({ live }: { readonly live: LiveMap }) {
  const open = useSignal(false);
  const exact = live.exact.value;
  return (
    <details
      class="numbers"
      onToggle={({ currentTarget }) => {
        open.value = currentTarget.open;
      }}
    >
      <summary>{words.table}</summary>
      <div class="table" tabIndex={0} role="region" aria-label={words.table}>
        {open.value && exact && <NumbersOf of={exact.of} />}
      </div>
    </details>
  );
}

function NumbersOf({ of }: { readonly of: MapOf }) {
  const { along, up } = of;
  const columns = ticksOf(along, most);
  return (
    <table>
      <caption>{spell(words.caption(along.name.toLowerCase(), up.name.toLowerCase()))}</caption>
      <thead>
        <tr>
          <th scope="col">{spell(words.corner(up.name, along.name))}</th>
          {columns.map((x) => (
            <th key={x} scope="col">
              {valueText(along, x)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {ticksOf(up, most).map((y) => (
          <tr key={y}>
            <th scope="row">{valueText(up, y)}</th>
            {columns.map((x) => (
              <td key={x}>{cellText(of, x, y)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function valueText({ parameter }: MapAxis, si: number): string {
  const { quantity, decimals } = parameters[parameter];
  return format(quantity, si, decimals);
}

function cellText(of: MapOf, x: number, y: number): string {
  const reading = readOrRefused(of, x, y);
  if (typeof reading === "string") return reading;
  const { balance, broken } = reading;
  const cross = broken.length > 0 ? words.cross : "";
  const { tips, given } = balance;
  if (!given) return words.cellEased + cross;
  const margin = acceleration(balance.understeerMargin, format);
  const sign = balance.understeerMargin > 0 && !/^0[.0]*\D*$/.test(margin) ? "+" : "";
  const turn = acceleration(balance.lateralAcceleration, format);
  const tipping = nearTippingOf(of, reading) === undefined ? "" : words.tipping;
  return tips ? words.cellTips(turn) + cross : `${sign}${margin}; ${turn}${cross}${tipping}`;
}

function readOrRefused(of: MapOf, x: number, y: number): MapReading | string {
  try {
    return readMap(of, x, y);
  } catch (error) {
    if (error instanceof Refusal) return refusalInWords(error, reader);
    throw error;
  }
}

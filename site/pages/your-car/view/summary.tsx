import { format, spell } from "@rollbook/page";
import { useLayoutEffect, useRef } from "preact/hooks";
import { summaryWords as words } from "../../../say/your-car/summary.js";
import { List } from "../../../ui/list.js";
import { type Summary, toldSpeed } from "../model/summary.js";
import { faults } from "../state/open.js";
import { sureness, workedOut } from "../state/worked-out.js";
import { Pairs } from "./pairs.js";
import { Sureness } from "./sureness.js";

/** What the car on the form comes to, beside it; where it is not sound, the last one that was stays, and says so. */
export function SummaryBeside() {
  const shown = workedOut.value;
  const sound = faults.value.length === 0;
  return (
    <aside
      class={shown && !sound ? "summary stale" : "summary"}
      aria-labelledby="summary-title"
      tabIndex={0}
    >
      <h2 id="summary-title">{words.summary}</h2>
      <p class="note" hidden={sound}>
        {shown ? words.stale : words.none}
      </p>
      <div>
        {shown?.refused && <p class="fault">{words.cannotStand(shown.refused)}</p>}
        {shown?.summary && <ComesTo summary={shown.summary} />}
      </div>
    </aside>
  );
}

function ComesTo({ summary }: { readonly summary: Summary }) {
  const { corners, weights, axles, turn, bewares, notes, limits, fixed } = summary;
  return (
    <>
      <h3>{words.corners}</h3>
      <div class="corners">
        <span>{corners.front.left}</span>
        <span>{corners.front.right}</span>
        <span>{corners.rear.left}</span>
        <span>{corners.rear.right}</span>
      </div>
      <Pairs rows={weights} />
      <h3>{words.axles}</h3>
      <AxleTable rows={axles} />
      <h3>{words.turn}</h3>
      <Pairs rows={turn} />
      <h3>{words.balance(toldSpeed(format))}</h3>
      <Balance summary={summary} />
      <Sureness />
      {bewares.map((beware) => (
        <p key={beware} class="beware">
          {spell(beware)}
        </p>
      ))}
      {notes.map((note) => (
        <p key={note} class="note">
          {spell(note)}
        </p>
      ))}
      <h3>{words.margins}</h3>
      <LimitList limits={limits} />
      <List texts={fixed} />
    </>
  );
}

/** Limit and balance, with no more digits than their bands have once these are known: fewer digits move nothing. */
function Balance({ summary }: { readonly summary: Summary }) {
  const place = useRef<HTMLDivElement>(null);
  const bands = sureness.value;
  const isExact = bands === undefined;
  useLayoutEffect(() => {
    const { style } = place.current ?? {};
    if (!isExact || style === undefined) return;
    style.minHeight = "";
    style.minHeight = `${place.current?.offsetHeight}px`;
  }, [summary, isExact]);
  return (
    <div ref={place}>
      <Pairs rows={bands ? summary.balanceWithin(bands.margins) : summary.balance} />
    </div>
  );
}

function AxleTable({ rows }: { readonly rows: Summary["axles"] }) {
  return (
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col">{words.front}</th>
          <th scope="col">{words.rear}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, front, rear]) => (
          <tr key={name}>
            <th scope="row">{spell(name)}</th>
            <td>{front}</td>
            <td>{rear}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function LimitList({ limits }: { readonly limits: Summary["limits"] }) {
  if (limits.length === 0) return <p>{words.noLimits}</p>;
  return (
    <ul class="limits">
      {limits.map(({ name, at }) => (
        <li key={name}>
          {spell(name)}
          <ul>
            {at.map(({ where, value, verdict, told }) => (
              <li key={where} data-verdict={verdict}>
                {where} <b>{value}</b> <small>{told}</small>
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ul>
  );
}

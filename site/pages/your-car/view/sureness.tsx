import { phaseNames } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import type { BandsSoFar } from "../../../bands/bands.js";
import { WouldMakeSurer } from "../../../bands/surer.js";
import { unitOf } from "../../../say/units.js";
import { summaryWords as words } from "../../../say/your-car/summary.js";
import { sureWords as said } from "../../../say/your-car/sure.js";
import { type ToldSureness, toldSureness, widestDoubts } from "../model/summary.js";
import { sampledCar, sureness } from "../state/worked-out.js";

const nothingYet = (name: (typeof phaseNames)[number]): ToldSureness => ({
  phase: words.phase[name],
  limit: said.waiting,
  margin: said.waiting,
  verdict: said.waiting,
});

function SurenessTable({ rows }: { readonly rows: readonly ToldSureness[] }) {
  const { phase, limit, margin, verdict } = said.columns;
  return (
    <table>
      <thead>
        <tr>
          {[phase, limit, margin, verdict].map((text) => (
            <th key={text} scope="col">
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.phase}>
            <th scope="row">{row.phase}</th>
            <td>{row.limit}</td>
            <td>{row.margin}</td>
            <td>{row.verdict}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function widest({ margins }: BandsSoFar): string {
  const doubts = widestDoubts(margins);
  return doubts.length > 0 ? spell(said.widest(doubts.join(", "))) : "";
}

/** How sure limit and balance are, told from more and more samples. */
export function Sureness() {
  const bands = sureness.value;
  const car = sampledCar.value;
  return (
    <div class="sureness">
      <h3>{said.heading}</h3>
      <div>
        <SurenessTable
          rows={bands ? toldSureness(bands.margins, reader.units) : phaseNames.map(nothingYet)}
        />
      </div>
      <p class="note progress">{bands ? said.progress(bands.count, bands.of) : said.working}</p>
      <p class="note">{said.help(unitOf("acceleration", reader.units))}</p>
      <p class="note widest">{bands && widest(bands)}</p>
      {bands && car && <WouldMakeSurer bands={bands} car={car} />}
    </div>
  );
}

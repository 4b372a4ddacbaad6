import { balancesOf, placesIn, type Report, type ReportedPlace } from "@rollbook/lib";
import { balanceText } from "../../../say/balance.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { PlaceTable } from "../../../ui/place-table.js";
import { words } from "../words.js";

const { corner, phase, input, balance, words: own } = said.columns;

interface Reports {
  readonly reports: readonly Report[];
}

/** What a group reported, place by place; words only, no names. */
export function ReportedByGroup({ reports }: Reports) {
  const rows = placesIn(reports).map((place) => ({
    ...where(place),
    cells: [
      balancesOf(place.reports).map(balanceText).join("  "),
      <WordsIn key={place.key} reports={place.reports} />,
    ],
  }));
  return <PlaceTable label={said.first} columns={[corner, phase, balance, own]} rows={rows} />;
}

/** What one driver reported, in the driver's own terms. */
export function ReportedByDriver({ reports }: Reports) {
  const rows = reports.map((report) => {
    const shown =
      report.balance === undefined ? words.report.noBalance : balanceText(report.balance);
    return { ...where(report), cells: [report.input ?? "", shown, report.words ?? ""] };
  });
  const columns = [corner, phase, input, balance, own] as const;
  return <PlaceTable label={said.first} columns={columns} rows={rows} />;
}

const where = (place: Pick<ReportedPlace, "corner" | "phase">) => ({
  corner: place.corner ?? words.report.nowhere,
  phase: place.phase ?? words.report.noPhase,
});

function WordsIn({ reports }: Reports) {
  const all = reports.flatMap(({ words: text }) => (text === undefined ? [] : [text])).sort();
  if (all.length === 0) return null;
  return (
    <ul class="plain">
      {all.map((text, i) => (
        <li key={i}>{text}</li>
      ))}
    </ul>
  );
}

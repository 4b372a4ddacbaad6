import { numberAt, shapeAt } from "@rollbook/lib";
import { format, reader, spell } from "@rollbook/page";
import { readingInWords, learnWords as words } from "../../../say/measure/learn.js";
import { plusMinus } from "../../../say/measure/plus-minus.js";
import { numberInWords } from "../../../say/number-names.js";
import { refusalInWords } from "../../../say/refusal.js";
import { Button } from "../../../ui/button.js";
import { Table } from "../../../ui/table.js";
import { carAtHand, isOwn } from "../state/sheet.js";
import type { Acceptable } from "./accept.js";
import { begin, learned, progress, takeOver } from "./state.js";

const DECIMALS = 2;

/** What a learned number measures; what several places share is a factor, or a pressure. */
function quantityOf(path: string) {
  const shape = shapeAt(path) ?? shapeAt(`front.${path}`);
  if (shape?.type === "number") return shape.quantity;
  if (path === "pressureGauge") return "pressure";
  return path.endsWith("bar.rate") ? "stiffness" : "ratio";
}

function TakeOver({ row, name }: { readonly row: Acceptable; readonly name: string }) {
  const { write, taken, learned } = row;
  if (write === undefined) return <small>{words.shared}</small>;
  if (taken) return <small>{words.taken}</small>;
  if (!isOwn.value) return null;
  const now = numberAt(carAtHand.value, write.path)?.value;
  const stood = now === undefined ? "" : format(quantityOf(learned.path), now, DECIMALS);
  return (
    <Button aria-label={words.takeThis(name)} work={() => takeOver(write, name, stood)}>
      {words.take}
    </Button>
  );
}

function Numbers({ rows }: { readonly rows: readonly Acceptable[] }) {
  if (rows.length === 0) return <p>{words.unmoved}</p>;
  const cells = rows.map((row) => {
    const { path, before, after, because } = row.learned;
    const name = spell(numberInWords(path));
    const quantity = quantityOf(path);
    const why = because.map(({ id }) => spell(readingInWords(id))).join("; ");
    return [
      name,
      plusMinus(before, quantity, DECIMALS, reader),
      plusMinus(after, quantity, DECIMALS, reader),
      why,
      <TakeOver key={path} row={row} name={name} />,
    ];
  });
  return <Table label={words.table} columns={words.columns} rows={cells} />;
}

function Outcome() {
  const last = learned.value;
  if (last === undefined) return null;
  if (last.isStale) return <p class="note">{words.stale}</p>;
  if (last.refused)
    return <p class="fault">{words.refused(refusalInWords(last.refused, reader))}</p>;
  if (last.learned === undefined) return <p>{words.none}</p>;
  const { byChance, odd } = last.learned;
  return (
    <>
      <Numbers rows={last.rows} />
      <p class="note">
        {words.together(byChance >= 0.05)} {odd !== undefined && words.odd(readingInWords(odd))}
      </p>
    </>
  );
}

/** Numbers as all readings together make them most probable; each is taken over by itself. */
export function LearnView() {
  const now = progress.value;
  return (
    <>
      <Button id="learn-begin" work={begin} disabled={now !== undefined}>
        {words.begin}
      </Button>
      <p class="note" role="status">
        {now && words.working(now.done, now.of)}
      </p>
      <Outcome />
    </>
  );
}

import { type Car, type SheetRow, type Venue, venueSpeed } from "@rollbook/lib";
import { useMemo } from "preact/hooks";
import type { BandsOf } from "../../../bands/bands.js";
import { Surer, useSure } from "../../../bands/surer.js";
import { ShiftBars, type SureShifts } from "../../../ui/shift-bars.js";

/** The day as far as it matters for what is sampled. */
interface Sampled {
  readonly measured: Car;
  readonly venue: Venue;
}

/** What is to be sampled of a run; nothing where no single change is made. */
function askOf({ step, stood }: SheetRow, { measured, venue }: Sampled): BandsOf | undefined {
  if (step.kind !== "change") return undefined;
  return { car: stood, measured, speed: venueSpeed(venue), changes: [step.change] };
}

/** How sure the shifts of a run are, as far as that is worked out. */
export function useSureRun(row: SheetRow, { measured, venue }: Sampled) {
  const of = useMemo(() => askOf(row, { measured, venue }), [row, measured, venue]);
  const [change] = useSure(of)?.changes ?? [];
  const isLeft = row.step.kind === "change" && row.step.putBack === "nothing";
  const shifts: SureShifts | undefined = isLeft
    ? change?.phases
    : ((change?.phases && change.putBack) ?? change?.phases);
  return { of, shifts };
}

/** What the model says that a run moves, how sure that is, and what would make it surer. */
export function RunShifts({
  id,
  row,
  caption,
  ...sampled
}: Sampled & { readonly id: string; readonly row: SheetRow; readonly caption: string }) {
  const { of, shifts } = useSureRun(row, sampled);
  if (row.phases === undefined || row.toDo.length === 0) return null;
  return (
    <>
      <ShiftBars phases={row.phases} caption={caption} {...(shifts && { sure: shifts })} />
      {of && <Surer id={id} of={of} />}
    </>
  );
}

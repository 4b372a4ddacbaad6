import { useSignal } from "@preact/signals";
import type { Quantity } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { decimalsIn } from "../say/shown-range.js";
import { words } from "../say/ui.js";
import { formatNumber, fromShown, toShown, unitOf } from "../say/units.js";
import { Field, faultAttributes } from "./field.js";
import { type Typed, type TypedIn, takeTyped, typedFor } from "./typed.js";

/** What a number measures, its range in SI, and digits after the point in the metric unit. */
export interface NumberRange {
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly decimals: number;
  readonly whole?: boolean;
}

/** What stands in a field for a number in SI. */
function shownText({ quantity, decimals }: NumberRange, si: number): string {
  const digits = decimalsIn(quantity, decimals, reader.units);
  return String(Number(toShown(quantity, si, reader.units).toFixed(digits)));
}

/** The number in SI that was typed; nothing where it is none, or out of range. */
function numberFrom(range: NumberRange, text: string): number | undefined {
  const { quantity, min, max, whole = false } = range;
  const typed = text.trim() === "" ? Number.NaN : Number(text);
  const si = fromShown(quantity, typed, reader.units);
  const fits = si >= min - 1e-9 && si <= max + 1e-9 && (!whole || Number.isInteger(si));
  return fits ? si : undefined;
}

function faultOf(label: string, range: NumberRange): string {
  const { quantity, min, max, whole = false } = range;
  const decimals = decimalsIn(quantity, range.decimals, reader.units);
  const shown = (si: number) => toShown(quantity, si, reader.units);
  const ends = [
    formatNumber(roundedIn(Math.ceil, shown(min), decimals), decimals),
    formatNumber(roundedIn(Math.floor, shown(max), decimals), decimals),
  ];
  return words.numberFault(label, ends, unitOf(quantity, reader.units), whole);
}

/** An end of a range, rounded so that it lies inside. */
function roundedIn(round: (value: number) => number, value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return round(Number((value * scale).toPrecision(12))) / scale;
}

interface Numbered {
  readonly id: string;
  readonly label: string;
  readonly range: NumberRange;
  readonly value: number;
  readonly report: (value: number) => void;
  /** Left out, what is half typed lives as long as the page. */
  readonly typedIn?: TypedIn<number>;
}

/**
 * A number in the reader's unit: in SI it is reported as soon as what is typed lies in the range;
 * what does not stays in the field as it was typed, is told once the field is left, and leaves the
 * number what it was before.
 */
export function NumberField({ id, label, range, value, report, typedIn }: Numbered) {
  const here = useSignal<Typed<number> | undefined>(undefined);
  const kept = typedIn ?? {
    now: () => here.value,
    keep: (typed) => {
      here.value = typed;
    },
  };
  const own = typedFor(kept, value);
  const isFault = own !== undefined && numberFrom(range, own) === undefined;
  const told = useSignal(isFault);
  const type = (text: string) => {
    const si = numberFrom(range, text);
    if (si !== undefined) told.value = false;
    takeTyped(text, si, value, kept, report);
  };
  const end = (text: string) => {
    type(text);
    const si = numberFrom(range, text);
    told.value = si === undefined;
    if (si !== undefined) kept.keep({ text, of: si, before: si });
  };
  const fault = told.value && isFault ? faultOf(label, range) : undefined;
  return (
    <Field id={id} label={label} note={unitOf(range.quantity, reader.units)} fault={fault}>
      <input
        type="number"
        id={id}
        step="any"
        inputMode="decimal"
        value={own ?? shownText(range, value)}
        onInput={({ currentTarget }) => type(currentTarget.value)}
        onChange={({ currentTarget }) => end(currentTarget.value)}
        {...faultAttributes(id, fault)}
      />
    </Field>
  );
}

import { useComputed, useSignal } from "@preact/signals";
import { reader, spell } from "@rollbook/page";
import { decimalsIn } from "../../../say/shown-range.js";
import { words } from "../../../say/ui.js";
import { formatNumber, toShown, unitOf } from "../../../say/units.js";
import type { Typed } from "../../../store/car-draft.js";
import { type FormPlace, readTyped } from "../model/input.js";
import type { Field } from "../model/spec.js";
import { sheet, type } from "../state/sheet.js";

/** The range of a field as it is told: rounded so that its ends lie inside. */
function faultOf(label: string, { quantity, min, max, decimals }: Field): string {
  const digits = decimalsIn(quantity, decimals, reader.units);
  const power = 10 ** digits;
  const shown = (si: number) =>
    Number((toShown(quantity, si, reader.units) * power).toPrecision(12));
  const ends = [Math.ceil(shown(min)), Math.floor(shown(max))].map((end) =>
    formatNumber(end / power, digits),
  );
  return words.numberFault(label, ends, unitOf(quantity, reader.units), false);
}

interface Numbered {
  readonly id: string;
  readonly field: Field;
  /** How the number is called in full. */
  readonly label: string;
  /** What stands over the box; the label where it is left out. */
  readonly caption?: string;
  readonly placeholder?: string;
  readonly typed: Typed | undefined;
  readonly take: (text: string) => void;
}

/** One number, in the reader's unit or with its own, as it was typed. */
export function NumberBox({ id, field, label, caption, placeholder, typed, take }: Numbered) {
  const left = useSignal(true);
  const value = readTyped(typed, field);
  const isFault = left.value && value !== undefined && Number.isNaN(value);
  const unit = unitOf(field.quantity, typed?.units ?? reader.units);
  return (
    <span class="box">
      <label for={id}>{spell(caption ?? label)}</label>
      <input
        id={id}
        class="number"
        inputMode="decimal"
        autocomplete="off"
        aria-label={spell(unit === "" ? label : `${label}, ${unit}`)}
        placeholder={placeholder}
        value={typed?.text ?? ""}
        onInput={({ currentTarget }) => {
          left.value = false;
          take(currentTarget.value);
        }}
        onBlur={() => {
          left.value = true;
        }}
        {...(isFault ? { "aria-invalid": true, "aria-describedby": `${id}-fault` } : {})}
      />
      <span class="on-paper" aria-hidden="true">
        {typed?.text}
      </span>
      <span class="unit">{unit}</span>
      {isFault && (
        <span class="fault" id={`${id}-fault`} role="alert">
          {spell(faultOf(label, field))}
        </span>
      )}
    </span>
  );
}

/** A number of a form, kept with the readings of the car at hand. */
export function Box({
  form,
  place,
  ...shown
}: {
  readonly form: FormPlace;
  readonly place: string;
} & Omit<Numbered, "id" | "typed" | "take">) {
  const typed = useComputed(() => sheet.value[place]).value;
  return (
    <NumberBox
      id={`at-${place.replace(/[^\w]+/g, "-")}`}
      typed={typed}
      take={(text) => type(form, place, text)}
      {...shown}
    />
  );
}

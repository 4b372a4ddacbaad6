import { useSignal } from "@preact/signals";
import { LinesField, TextField } from "../../../ui/field.js";
import { NumberField, type NumberRange } from "../../../ui/number-field.js";
import { takeTyped, typedFor } from "../../../ui/typed.js";
import { useHalfTyped } from "../day/half-typed.js";

interface Texted {
  readonly id: string;
  readonly label: string;
  /** The text that the day has. */
  readonly value: string;
  /** What was typed as the day would have it. */
  readonly tidy: (text: string) => string;
  /** Why a tidy text cannot be used. */
  readonly faultOf?: (tidied: string) => string | undefined;
  readonly take: (tidied: string) => void;
  readonly lines?: boolean;
  readonly note?: string;
}

/**
 * A text of the plan. With each letter it counts where it can be used; where it cannot, it stays in
 * the field, is kept on the device, and is told once the field is left.
 */
export function PlanText({
  id,
  label,
  value,
  tidy,
  faultOf = () => undefined,
  take,
  lines = false,
  note = "",
}: Texted) {
  const typed = useHalfTyped<string>(id);
  const own = typedFor(typed, value);
  const wrong = own === undefined ? undefined : faultOf(tidy(own));
  const told = useSignal(wrong !== undefined);
  const type = (text: string) => {
    const tidied = tidy(text);
    const usable = faultOf(tidied) === undefined;
    if (usable) told.value = false;
    takeTyped(text, usable ? tidied : undefined, value, typed, take);
  };
  const end = (text: string) => {
    type(text);
    told.value = faultOf(tidy(text)) !== undefined;
    if (!told.value) typed.keep(undefined);
  };
  const FieldOf = lines ? LinesField : TextField;
  const fault = told.value ? wrong : undefined;
  return (
    <FieldOf
      id={id}
      label={label}
      value={own ?? value}
      fault={fault}
      note={note}
      type={type}
      end={end}
    />
  );
}

/** A number of the plan; what is out of range meanwhile is kept on the device too. */
export function PlanNumber(asked: {
  readonly id: string;
  readonly label: string;
  readonly range: NumberRange;
  readonly value: number;
  readonly report: (value: number) => void;
}) {
  return <NumberField {...asked} typedIn={useHalfTyped<number>(asked.id)} />;
}

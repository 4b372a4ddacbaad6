import type { ComponentChildren } from "preact";

/** A label, what it is for, the input, and what is wrong with what stands in it. */
export function Field({
  id,
  label,
  note = "",
  fault,
  children,
}: {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  readonly fault?: string | undefined;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="field">
      <label for={id}>
        {label}
        {note !== "" && <span>{note}</span>}
      </label>
      {children}
      <p class="fault" id={`${id}-fault`} role="alert" hidden={fault === undefined}>
        {fault}
      </p>
    </div>
  );
}

/** How an input says that something is wrong with it. */
export const faultAttributes = (id: string, fault: string | undefined) =>
  fault === undefined ? {} : { "aria-invalid": true, "aria-describedby": `${id}-fault` };

interface Typed {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly note?: string;
  readonly fault?: string | undefined;
  /** Gets the text with each letter that is typed. */
  readonly type: (text: string) => void;
  /** Gets the text once it is done: the field was left, or Enter pressed. */
  readonly end?: (text: string) => void;
}

/** A line of text; `list` is the id of a list of what is often typed. */
export function TextField({
  id,
  label,
  value,
  note,
  fault,
  type,
  end,
  list,
  numeric = false,
  maxLength = 200,
}: Typed & {
  readonly list?: string;
  /** For the keyboard of a phone. */
  readonly numeric?: boolean;
  readonly maxLength?: number;
}) {
  return (
    <Field id={id} label={label} note={note ?? ""} fault={fault}>
      <input
        type="text"
        id={id}
        maxLength={maxLength}
        autocomplete="off"
        inputMode={numeric ? "decimal" : undefined}
        list={list}
        value={value}
        onInput={({ currentTarget }) => type(currentTarget.value)}
        onChange={({ currentTarget }) => end?.(currentTarget.value)}
        {...faultAttributes(id, fault)}
      />
    </Field>
  );
}

/** Lines of text. */
export function LinesField({
  id,
  label,
  value,
  note,
  fault,
  type,
  end,
  rows = 4,
  maxLength = 10_000,
}: Typed & { readonly rows?: number; readonly maxLength?: number }) {
  return (
    <Field id={id} label={label} note={note ?? ""} fault={fault}>
      <textarea
        id={id}
        rows={rows}
        maxLength={maxLength}
        value={value}
        onInput={({ currentTarget }) => type(currentTarget.value)}
        onChange={({ currentTarget }) => end?.(currentTarget.value)}
        {...faultAttributes(id, fault)}
      />
    </Field>
  );
}

/** One of some choices. */
export function ChoiceField<Value extends string>({
  id,
  label,
  choices,
  value,
  choose,
}: {
  readonly id: string;
  readonly label: string;
  readonly choices: readonly (readonly [Value, string])[];
  readonly value: Value;
  readonly choose: (value: Value) => void;
}) {
  return (
    <Field id={id} label={label}>
      <select
        id={id}
        value={value}
        onChange={({ currentTarget }) => choose(currentTarget.value as Value)}
      >
        {choices.map(([key, text]) => (
          <option key={key} value={key} selected={key === value}>
            {text}
          </option>
        ))}
      </select>
    </Field>
  );
}

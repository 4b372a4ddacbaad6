import { useComputed, useSignal } from "@preact/signals";
import { spell } from "@rollbook/page";
import { firstField, firstWords as words } from "../../../say/measure/first-car.js";
import { firstCarTyped } from "../../../store/first-car-typed.js";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { TextField } from "../../../ui/field.js";
import type { Field } from "../model/spec.js";
import { NumberBox } from "../view/box.js";
import {
  axleFields,
  type Choice,
  choices,
  chosen,
  givenFrom,
  radiusIn,
  wholeFields,
} from "./given.js";
import { makeFirstCar, typeFirst } from "./make.js";

const take = (key: string) => (text: string) => void typeFirst(key, text);
const textAt = (key: string) => firstCarTyped.now.value[key]?.text ?? "";

function FirstBox({ at, field }: { readonly at: string; readonly field: Field }) {
  const typed = useComputed(() => firstCarTyped.now.value[at]).value;
  return (
    <NumberBox
      id={`first-${at.replace(".", "-")}`}
      field={field}
      label={firstField(at)}
      typed={typed}
      take={take(at)}
    />
  );
}

function Choose({ at }: { readonly at: Choice }) {
  const all: readonly (keyof typeof words.choices)[] = choices[at];
  return (
    <Chips
      id={`first-${at}`}
      question={words.fields[at]}
      choices={all.map((value) => ({ value, text: words.choices[value] }))}
      chosen={chosen(firstCarTyped.now.value, at) as keyof typeof words.choices}
      choose={take(at)}
    />
  );
}

/** The size on the tyre's side: told as wrong once it is left. */
function TyreSize() {
  const left = useSignal(true);
  const text = textAt("tyre");
  const isFault = left.value && text.trim() !== "" && radiusIn(text) === undefined;
  return (
    <TextField
      id="first-tyre"
      label={spell(words.fields.tyre)}
      value={text}
      maxLength={40}
      fault={isFault ? spell(words.tyreFault) : undefined}
      type={(typed) => {
        left.value = false;
        void typeFirst("tyre", typed);
      }}
      end={() => {
        left.value = true;
      }}
    />
  );
}

/** A first car from what anybody can read of it. */
export function FirstCarForm() {
  const read = useComputed(() => givenFrom(firstCarTyped.now.value)).value;
  const missing = "missing" in read ? read.missing : [];
  return (
    <>
      <TextField
        id="first-name"
        label={words.fields.name}
        value={textAt("name")}
        maxLength={60}
        type={take("name")}
      />
      <div class="boxes">
        {wholeFields.map((field) => (
          <FirstBox key={field.key} at={field.key} field={field} />
        ))}
      </div>
      {axleFields.map((field) => (
        <div class="boxes" key={field.key}>
          <FirstBox at={`front.${field.key}`} field={field} />
          <FirstBox at={`rear.${field.key}`} field={field} />
        </div>
      ))}
      <TyreSize />
      <Choose at="driven" />
      <Choose at="seat" />
      <Choose at="frontKind" />
      <Choose at="rearKind" />
      <Button id="first-make" large work={() => void makeFirstCar()} disabled={missing.length > 0}>
        {words.make}
      </Button>
      {missing.length > 0 && (
        <p class="note missing">{spell(words.still(missing.map(firstField)))}</p>
      )}
    </>
  );
}

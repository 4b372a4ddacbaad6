import { reader } from "@rollbook/page";
import { choiceWords, fieldWords, words } from "../../../say/measure/words.js";
import { decimalsIn } from "../../../say/shown-range.js";
import { formatNumber, toShown, unitOf } from "../../../say/units.js";
import { Chips } from "../../../ui/chips.js";
import { Fold } from "../../../ui/fold.js";
import { boxesFor, choiceOf, type FormPlace, readingAt, toolAt } from "../model/input.js";
import { type Field, joints, MOST, type Tool } from "../model/spec.js";
import { choose, sheet } from "../state/sheet.js";
import { Box } from "./box.js";

const range = (count: number) => Array.from({ length: count }, (_, i) => i);
const nameOf = ({ key }: Field) => fieldWords[key] ?? key;

/** One thing, read once or again and again: a new box comes as soon as the last is used. */
function Single({ form, field }: { readonly form: FormPlace; readonly field: Field }) {
  const name = nameOf(field);
  const boxes = boxesFor(sheet.value, (i) => readingAt(form, field.key, i), MOST.readings);
  return (
    <div class="boxes">
      {range(boxes).map((i) => (
        <Box
          key={i}
          form={form}
          place={readingAt(form, field.key, i)}
          field={field}
          label={i === 0 ? name : `${name}, ${words.another} ${i + 1}`}
          caption={i === 0 ? name : words.another}
        />
      ))}
    </div>
  );
}

/** Things read together, line by line. */
export function Lines({ form }: { readonly form: FormPlace }) {
  const { columns } = form.spec;
  if (columns.length === 0) return null;
  const used = (i: number) => columns.map(({ key }) => readingAt(form, key, i));
  const lines = Math.max(
    ...columns.map(({ key }) => boxesFor(sheet.value, (i) => readingAt(form, key, i), MOST.lines)),
  );
  return (
    <ol class="lines">
      {range(lines).map((i) => (
        <li key={used(i)[0]} class="boxes">
          {columns.map((column) => (
            <Box
              key={column.key}
              form={form}
              place={readingAt(form, column.key, i)}
              field={column}
              label={`${nameOf(column)}, ${words.line(i + 1)}`}
              caption={i === 0 ? nameOf(column) : ""}
            />
          ))}
        </li>
      ))}
    </ol>
  );
}

/** Fields that the chosen kind of links has. */
function fieldsOf(form: FormPlace): readonly Field[] {
  const { spec } = form;
  if (spec.id !== "linkage") return spec.fields;
  const kind = choiceOf(sheet.value, form, "kind");
  return joints
    .filter(({ kinds }) => kinds.length === 0 || kinds.includes(kind))
    .flatMap(({ fields }) => fields);
}

export function Choices({ form }: { readonly form: FormPlace }) {
  return (
    <>
      {form.spec.choices.map(({ key, values }) => (
        <Chips
          key={key}
          id={`${form.spec.id}-${key}`}
          question={choiceWords[key] ?? key}
          choices={values.map((value) => ({
            value,
            text: choiceWords[`${key}.${value}`] ?? value,
          }))}
          chosen={choiceOf(sheet.value, form, key)}
          choose={(value) => choose(form, key, value)}
        />
      ))}
    </>
  );
}

export function Singles({ form }: { readonly form: FormPlace }) {
  return (
    <>
      {fieldsOf(form).map((field) => (
        <Single key={field.key} form={form} field={field} />
      ))}
    </>
  );
}

function usualOf({ quantity, usual, decimals }: Tool): string {
  const digits = decimalsIn(quantity, decimals, reader.units) + 1;
  return String(Number(formatNumber(toShown(quantity, usual, reader.units), digits)));
}

/** How far the tools may be off, with what is usual. */
export function Tools({ form }: { readonly form: FormPlace }) {
  if (form.spec.tools.length === 0) return null;
  return (
    <Fold id={`${form.spec.id}-tools`} title={words.tools} kind="tools">
      <p class="note">{words.toolsNote}</p>
      <div class="boxes">
        {form.spec.tools.map((tool) => (
          <Box
            key={tool.key}
            form={form}
            place={toolAt(form, tool.key)}
            field={tool}
            label={nameOf(tool)}
            placeholder={`${usualOf(tool)} ${unitOf(tool.quantity, reader.units)}`}
          />
        ))}
      </div>
    </Fold>
  );
}

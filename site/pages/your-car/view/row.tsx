import { reader, spell } from "@rollbook/page";
import { fields } from "../../../say/your-car/fields.js";
import { formWords as words } from "../../../say/your-car/form.js";
import { whereOf } from "../../../say/your-car/places.js";
import { shownRangeOf } from "../model/number.js";
import { keyOf, type Path, placesOf, shapeAt } from "../model/path.js";
import { Boxes } from "./box.js";

/** A fold that says how to measure something. */
export function How({ name, help }: { readonly name: string; readonly help: string }) {
  return (
    <details class="how">
      <summary aria-label={words.howNamed(name)}>{words.how}</summary>
      <p>{spell(help)}</p>
    </details>
  );
}

function rangeOf(path: Path): string {
  const shape = shapeAt(path);
  return shape?.type === "number" ? shownRangeOf(shape, reader.units) : "";
}

/** A line of the form: what it is, its range and how to measure it, and its boxes. */
export function RowOfBoxes({ general }: { readonly general: string }) {
  const paths = placesOf(general);
  const { label, help } = fields[keyOf(general)] ?? { label: general, help: undefined };
  const range = rangeOf(paths[0] ?? "");
  return (
    <div class="row">
      <div class="what">
        <span class="name">{spell(label)}</span>
        {range && (
          <>
            {" "}
            <span class="range">{range}</span>
          </>
        )}
        {help && <How name={label} help={help} />}
      </div>
      <Boxes paths={paths} captionOf={whereOf} />
    </div>
  );
}

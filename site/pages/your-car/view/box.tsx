import { useComputed } from "@preact/signals";
import { demoCar, type Shape } from "@rollbook/lib";
import { reader, spell } from "@rollbook/page";
import { unitOf } from "../../../say/units.js";
import { fields } from "../../../say/your-car/fields.js";
import { formWords as words } from "../../../say/your-car/form.js";
import { nameOf } from "../../../say/your-car/places.js";
import { keyOf, type Path, shapeAt } from "../model/path.js";
import { followsLinks, shownText } from "../model/shown-text.js";
import { type } from "../state/doing.js";
import { asDemo, faultAt, openDraft } from "../state/open.js";
import { idOf } from "./go-to.js";

/** What every kind of input of a place has. */
type Shared = Readonly<Record<string, unknown>> & {
  readonly onInput: (event: { readonly currentTarget: { readonly value: string } }) => void;
};

function Control({
  path,
  shape,
  shared,
}: {
  readonly path: Path;
  readonly shape: Shape;
  readonly shared: Shared;
}) {
  if (shape.type === "text" && shape.choices)
    return (
      <select {...shared}>
        {shape.choices.map((choice) => (
          <option key={choice} value={choice}>
            {choice}
          </option>
        ))}
      </select>
    );
  if (path === "notes") return <textarea rows={2} {...shared} />;
  const empty = fields[keyOf(path)]?.empty;
  if (shape.type !== "number") return <input type="text" placeholder={empty} {...shared} />;
  const mode = shape.min < 0 ? "text" : "decimal"; // phones leave the minus out of the latter
  return <input type="text" class="number" inputMode={mode} placeholder={empty} {...shared} />;
}

const unitOfShape = (shape: Shape): string =>
  shape.type === "number" ? unitOf(shape.quantity, reader.units) : "";

/** What changes about a place: a view that reads it is drawn anew only when it differs. */
function usePlace(path: Path) {
  return {
    text: useComputed(() => (openDraft.value ? shownText(openDraft.value, path, reader.units) : ""))
      .value,
    follows: useComputed(() => openDraft.value !== undefined && followsLinks(openDraft.value, path))
      .value,
    isFaulty: useComputed(() => faultAt(path) !== "").value,
    isDemo: useComputed(() => asDemo.value.has(path)).value,
  };
}

/** The input of a place with its unit and its mark. */
function Box({
  path,
  shape,
  caption,
}: {
  readonly path: Path;
  readonly shape: Shape;
  readonly caption: string;
}) {
  const { text, follows, isFaulty, isDemo } = usePlace(path);
  const id = idOf(path);
  const unit = unitOfShape(shape);
  const name = spell(nameOf(path));
  const described = [isFaulty ? `${id}-fault` : "", isDemo ? `${id}-mark` : ""].filter(Boolean);
  const shared = {
    id,
    name: path,
    autocomplete: "off",
    spellcheck: false,
    value: text,
    disabled: follows,
    "aria-label": unit ? `${name}, ${unit}` : name,
    "aria-invalid": isFaulty ? "true" : undefined,
    "aria-describedby": described.length > 0 ? described.join(" ") : undefined,
    onInput: ({ currentTarget }: { currentTarget: { value: string } }) =>
      type(path, currentTarget.value),
  };
  return (
    <label class="box" for={id}>
      <span class="caption">{caption}</span>
      <Control path={path} shape={shape} shared={shared} />
      <span class="unit">{unit}</span>
      <span class="mark" id={`${id}-mark`} hidden={!isDemo}>
        {words.stillDemo(demoCar.name)}
      </span>
    </label>
  );
}

/** What is wrong at a place, if anything. */
export function FaultLine({ path }: { readonly path: Path }) {
  const sentence = useComputed(() => faultAt(path)).value;
  return (
    <p class="fault" id={`${idOf(path)}-fault`} hidden={sentence === ""}>
      {spell(sentence)}
    </p>
  );
}

/** The boxes of some places side by side, and under them what is wrong with any. */
export function Boxes({
  paths,
  captionOf,
}: {
  readonly paths: readonly Path[];
  readonly captionOf: (path: Path) => string;
}) {
  const known = paths.flatMap((path) => {
    const shape = shapeAt(path);
    return shape ? [{ path, shape }] : [];
  });
  return (
    <>
      <div class="boxes">
        {known.map(({ path, shape }) => (
          <Box key={path} path={path} shape={shape} caption={captionOf(path)} />
        ))}
      </div>
      {known.map(({ path }) => (
        <FaultLine key={path} path={path} />
      ))}
    </>
  );
}

import { readFileSync, writeFileSync } from "node:fs";
import { carShape } from "../../lib/car/file/car-shape.js";
import { type FileHead, fileSchema } from "../../lib/car/file/json-schema.js";
import { CAR_FILE_VERSION } from "../../lib/car/file/migrate.js";
import {
  type GroupShape,
  type NumberShape,
  rangeInFile,
  rangeInHandy,
  type Shape,
  type TextShape,
} from "../../lib/car/file/shape.js";
import { TYRE_FILE_KIND, TYRE_FILE_VERSION, tyreShape } from "../../lib/car/file/tyre-file.js";
import { CLASS_FILE_KIND, CLASS_FILE_VERSION, classShape } from "../../lib/day/class/class-file.js";
import { neededCoefficients } from "../../lib/tyre/tyre-data.js";

/** The files that are made from the parameter table, and what must stand in them. */
export function fileDocs(pageOf: (file: string) => string): Record<string, string> {
  return Object.fromEntries(
    kinds.flatMap(({ name, shape, head, tables }) => [
      [`docs/${name}.schema.json`, `${JSON.stringify(fileSchema(shape, head), null, 2)}\n`],
      [`docs/${name}.md`, withNeeded(withTables(pageOf(`docs/${name}.md`), tables()))],
    ]),
  );
}

interface FileKind {
  readonly name: string;
  readonly shape: GroupShape;
  readonly head: FileHead;
  /** Fields by the marks between which their table stands. */
  readonly tables: () => Readonly<Record<string, Fields>>;
}

type Fields = Readonly<Record<string, Shape>>;

const kinds: readonly FileKind[] = [
  {
    name: "car-file",
    shape: carShape,
    head: { title: "Car file", version: CAR_FILE_VERSION },
    tables: () => {
      const { front, rear: _, ...car } = carShape.fields;
      const { linkage, ...axle } = front.fields;
      return { car, axle, linkage: { linkage } };
    },
  },
  {
    name: "class-file",
    shape: classShape,
    head: { title: "Class file", version: CLASS_FILE_VERSION, kind: CLASS_FILE_KIND },
    tables: () => ({ class: classShape.fields }),
  },
  {
    name: "tyre-file",
    shape: tyreShape,
    head: { title: "Tyre file", version: TYRE_FILE_VERSION, kind: TYRE_FILE_KIND },
    tables: () => ({ tyre: tyreShape.fields }),
  },
];

/** The page with its tables made anew between their marks. */
function withTables(page: string, tables: Readonly<Record<string, Fields>>): string {
  return Object.entries(tables).reduce((text, [name, fields]) => {
    const marks = new RegExp(`(<!-- ${name} -->\n)[^]*?(<!-- end -->)`);
    return text.replace(marks, (_, before, after) => `${before}${table(fields)}${after}`);
  }, page);
}

/** The page with the coefficients that a tyre cannot do without, where it has a place for them. */
function withNeeded(page: string): string {
  const rows = Object.entries(neededCoefficients).map(
    ([name, { min, max, unit }]) => `| \`${name}\` | ${`${min} to ${max} ${unit}`.trim()} |`,
  );
  const needed = ["| name | may be |", "| --- | --- |", ...rows, ""].join("\n");
  return page.replace(
    /(<!-- needed -->\n)[\s\S]*?(<!-- end -->)/,
    (_, before, after) => `${before}${needed}${after}`,
  );
}

/** Shapes that another page tells. */
const toldElsewhere = (fields: Fields): readonly (readonly [string, string])[] =>
  "rules" in fields
    ? [["car", "a [car](car-file.md)"]]
    : [["class-rule", "as in a [class file](class-file.md)"]];

function table(fields: Readonly<Record<string, Shape>>): string {
  const head = ["| field | what | in the file | the same as shown |", "| --- | --- | --- | --- |"];
  const told: Told = new Map(toldElsewhere(fields));
  const rows = Object.entries(fields).flatMap(([name, shape]) => rowsOf(name, shape, told));
  return [...head, ...rows.map((cells) => `| ${cells.join(" | ")} |`), ""].join("\n");
}

type Row = readonly [field: string, what: string, inFile: string, shown: string];

/** Where each shape with a name was first told. */
type Told = Map<string, string>;

function rowsOf(path: string, shape: Shape, told: Told): Row[] {
  const what = shape.optional ? `${shape.about} *(may be left out)*` : shape.about;
  const field = `\`${path}\``;
  const before = told.get(shape.definition ?? "");
  if (before !== undefined) return [[field, what, before, ""]];
  if (shape.definition !== undefined && shape.definition !== "point")
    told.set(shape.definition, `as \`${path}\``);
  switch (shape.type) {
    case "number":
      return [[field, what, ...ranges(shape)]];
    case "text":
      return [[field, what, textIn(shape), ""]];
    case "list":
      return [
        [field, what, `1 to ${shape.most} entries`, ""],
        ...inside(`${path}[]`, shape.item, told),
      ];
    case "record":
      return [
        [field, what, `up to ${shape.most} ${shape.names}`, ""],
        ...inside(`${path}[]`, shape.item, told),
      ];
    case "group":
      return alike(field, what, shape) ?? [[field, what, "", ""], ...inside(path, shape, told)];
    case "variant":
      return [
        [field, what, `kind: ${Object.keys(shape.kinds).join(" or ")}`, ""],
        ...Object.entries(shape.kinds).flatMap(([kind, part]) =>
          inside(`${path}{${kind}}`, part, told),
        ),
      ];
  }
}

function inside(path: string, shape: Shape, told: Told): Row[] {
  if (shape.type !== "group") return rowsOf(path, shape, told);
  const fields = Object.entries(shape.fields).filter(([name]) => name !== "kind");
  return fields.flatMap(([name, field]) => rowsOf(`${path}.${name}`, field, told));
}

function ranges(shape: NumberShape): [string, string] {
  const [file, shown] = [rangeInFile(shape), rangeInHandy(shape)];
  return [file, file === shown ? "" : shown];
}

const textIn = ({ choices, format }: TextShape): string =>
  choices?.join(", ") ?? (format === "date" ? "YYYY-MM-DD" : "text");

const MARKS = ["left, right", "x, y, z", "min, max, step"];

/** Sides, coordinates and ends of an adjuster share a row. */
function alike(field: string, what: string, { fields }: GroupShape): Row[] | undefined {
  const names = Object.keys(fields).join(", ");
  const [first] = Object.values(fields);
  if (!MARKS.includes(names) || first?.type !== "number") return undefined;
  const [file, shown] = ranges(first);
  return [[field, what, `${names}: ${file}`, shown]];
}

/** Writes them; the test says when they are out of date. */
if (process.argv[1]?.endsWith("car-file-docs.ts")) {
  const made = fileDocs((file) => readFileSync(file, "utf8"));
  for (const [file, text] of Object.entries(made)) writeFileSync(file, text);
}

import { readFileSync, writeFileSync } from "node:fs";
import { carShape } from "../../lib/car/file/car-shape.js";
import { carFileSchema } from "../../lib/car/file/json-schema.js";
import {
  type GroupShape,
  type NumberShape,
  rangeInFile,
  rangeInHandy,
  type Shape,
  type TextShape,
} from "../../lib/car/file/shape.js";

/** The files that are made from the parameter table, and what must stand in them. */
export function carFileDocs(page: string): Record<string, string> {
  return {
    "docs/car-file.schema.json": `${JSON.stringify(carFileSchema(carShape), null, 2)}\n`,
    "docs/car-file.md": withTables(page),
  };
}

/** The page with its tables made anew between their marks. */
function withTables(page: string): string {
  const { front, rear, ...car } = carShape.fields;
  const { linkage, ...axle } = front.fields;
  const tables = { car, axle, linkage: { linkage } };
  return Object.entries(tables).reduce((text, [name, fields]) => {
    const marks = new RegExp(`(<!-- ${name} -->\n)[^]*?(<!-- end -->)`);
    return text.replace(marks, (_, before, after) => `${before}${table(fields)}${after}`);
  }, page);
}

function table(fields: Readonly<Record<string, Shape>>): string {
  const head = ["| field | what | in the file | the same as shown |", "| --- | --- | --- | --- |"];
  const told: Told = new Map();
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
  if (before !== undefined) return [[field, what, `as \`${before}\``, ""]];
  if (shape.definition !== undefined && shape.definition !== "point")
    told.set(shape.definition, path);
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
          inside(`${path}(${kind})`, part, told),
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
  const made = carFileDocs(readFileSync("docs/car-file.md", "utf8"));
  for (const [file, text] of Object.entries(made)) writeFileSync(file, text);
}

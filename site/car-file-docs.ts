import { readFileSync, writeFileSync } from "node:fs";
import { carShape } from "../lib/car/file/car-shape.js";
import { carFileSchema } from "../lib/car/file/json-schema.js";
import { type Shape, shownRangeOf } from "../lib/car/file/shape.js";
import { quantities } from "../lib/units.js";

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
  const rows = Object.entries(fields).flatMap(([name, shape]) => rowsOf(name, shape));
  return ["| field | what | SI unit | range |", "|---|---|---|---|", ...rows, ""].join("\n");
}

function rowsOf(path: string, shape: Shape): string[] {
  const about = shape.optional ? `${shape.about} *(may be left out)*` : shape.about;
  const row = (unit: string, range: string) => `| \`${path}\` | ${about} | ${unit} | ${range} |`;
  switch (shape.type) {
    case "number":
      return [row(quantities[shape.quantity].si, shownRangeOf(shape))];
    case "text":
      return [row("", (shape.choices ?? []).map((choice) => `"${choice}"`).join(", "))];
    case "list":
      return [row("", `1 to ${shape.most} entries`), ...inside(`${path}[]`, shape.item)];
    case "group":
      return [row("", ""), ...inside(path, shape)];
    case "variant":
      return [
        row(
          "",
          Object.keys(shape.kinds)
            .map((kind) => `"${kind}"`)
            .join(" or "),
        ),
        ...Object.entries(shape.kinds).flatMap(([kind, group]) =>
          inside(`${path}(${kind})`, group),
        ),
      ];
  }
}

function inside(path: string, shape: Shape): string[] {
  if (shape.type !== "group") return rowsOf(path, shape);
  const names = Object.keys(shape.fields).join("");
  if (names === "xyz" || names === "leftright") return leaves(path, shape.fields);
  return Object.entries(shape.fields).flatMap(([name, field]) => rowsOf(`${path}.${name}`, field));
}

/** The two sides of a wheel pair, or the three coordinates of a point, in one row. */
function leaves(path: string, fields: Readonly<Record<string, Shape>>): string[] {
  const [first] = Object.values(fields);
  if (first?.type !== "number") return [];
  const names = Object.keys(fields).join(", ");
  return [
    `| \`${path}\` each: ${names} | | ${quantities[first.quantity].si} | ${shownRangeOf(first)} |`,
  ];
}

/** Writes them; the test says when they are out of date. */
if (process.argv[1]?.endsWith("car-file-docs.ts")) {
  const made = carFileDocs(readFileSync("docs/car-file.md", "utf8"));
  for (const [file, text] of Object.entries(made)) writeFileSync(file, text);
}

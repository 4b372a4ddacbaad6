import { typescriptLanguage } from "@codemirror/lang-javascript";

/** A cell that cannot be read as code; lines count from 1. */
export class CellFault extends Error {
  override readonly name = "CellFault";
  constructor(
    readonly line: number,
    message: string,
  ) {
    super(message);
  }
}

type Node = ReturnType<typeof typescriptLanguage.parser.parse>["topNode"];
type Edit = readonly [from: number, to: number, text?: string];

const onlyTypes = new Set([
  "TypeAnnotation",
  "TypeParamList",
  "TypeArgList",
  "TypeAliasDeclaration",
  "InterfaceDeclaration",
  "AmbientDeclaration",
  "Optional",
  "Privacy",
  "readonly",
  "abstract",
  "override",
  "declare",
]);

const whole = ({ from, to }: Node): Edit[] => [[from, to]];
const has = (node: Node, child: string): boolean => node.getChild(child) !== null;

/** `import { a, b as c } from "x"` as `const { a, b: c } = rollbookRequire("x")`. */
function importEdits(node: Node): Edit[] {
  if (has(node, "type")) return whole(node);
  const edits: Edit[] = [];
  for (let part = node.firstChild; part; part = part.nextSibling) {
    if (part.name === "import") edits.push([part.from, part.to, "const"]);
    if (part.name === "Star") edits.push([part.from, part.to]);
    if (part.name === "as") edits.push([part.from, part.to]);
    if (part.name === "from") edits.push([part.from, part.to, "= rollbookRequire("]);
    if (part.name === "String") edits.push([part.to, part.to, ")"]);
    if (part.name === "ImportGroup") edits.push(...importedNames(part));
  }
  return edits;
}

function importedNames(group: Node): Edit[] {
  const renamed = group.getChildren("as").map(({ from, to }): Edit => [from, to, ":"]);
  const types = group.getChildren("type").map(({ from, nextSibling: name, to }): Edit => {
    const after = name?.nextSibling;
    return [from, after?.name === "," ? after.to : (name?.to ?? to)];
  });
  return [...renamed, ...types];
}

/** What of a node goes and what comes in its place; nothing where its parts decide. */
function editsOf(node: Node, source: string): Edit[] | undefined {
  const { name, from, to, parent } = node;
  if (onlyTypes.has(name)) return whole(node);
  switch (name) {
    case "ImportDeclaration":
      return importEdits(node);
    case "as":
    case "satisfies":
      return parent?.name === "BinaryExpression" ? [[from, parent.to]] : undefined;
    case "LogicOp":
      return parent?.name === "PostfixExpression" ? whole(node) : undefined;
    case "implements":
      return [[from, parent?.getChild("ClassBody")?.from ?? to]];
    case "FunctionDeclaration":
    case "MethodDeclaration":
      return has(node, "Block") ? undefined : whole(node);
    case "PropertyDeclaration":
      return has(node, "declare") || has(node, "abstract") ? whole(node) : undefined;
    case "PrefixCast":
      return [[from, source.indexOf(">", node.getChild("<")?.nextSibling?.to ?? from) + 1]];
  }
  return undefined;
}

/** Forms that leave something behind when their types are taken away, or that a cell has no use for. */
function refusal({ name, parent, type, from, to }: Node, source: string): string | undefined {
  if (type.isError) {
    const near = source
      .slice(from, Math.max(to, from + 12))
      .split("\n")[0]
      ?.trim();
    return near ? `cannot be read at “${near}”` : "something is missing at the end of the line";
  }
  if (name === "EnumDeclaration" || name === "NamespaceDeclaration")
    return "enum and namespace do not run in the page; use const";
  if (name === "Privacy" && parent?.name === "ParamList")
    return "a parameter that declares a property does not run in the page";
  if (name === "ExportDeclaration") return "a cell does not export";
  return undefined;
}

const blank = (text: string): string => text.replace(/[^\n]/g, " ");

function applied(source: string, edits: readonly Edit[]): string {
  let [done, rest] = ["", 0];
  for (const [from, to, text] of [...edits].sort((a, b) => a[0] - b[0])) {
    if (from < rest) continue;
    done += source.slice(rest, from) + (text ?? blank(source.slice(from, to)));
    rest = to;
  }
  return done + source.slice(rest);
}

/**
 * A cell's TypeScript as JavaScript with every line where it was: types are blanked, not checked.
 *
 * @throws CellFault where it cannot be read
 */
export function stripTypes(source: string): string {
  const edits: Edit[] = [];
  typescriptLanguage.parser.parse(source).iterate({
    enter({ node }) {
      const fault = refusal(node, source);
      if (fault) throw new CellFault(source.slice(0, node.from).split("\n").length, fault);
      const own = editsOf(node, source);
      if (own) edits.push(...own);
      return own === undefined;
    },
  });
  return applied(source, edits);
}

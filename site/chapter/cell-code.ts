import { typescriptLanguage } from "@codemirror/lang-javascript";

/** A node of a cell's syntax tree. */
type Node = ReturnType<typeof typescriptLanguage.parser.parse>["topNode"];

/** A name or an expression in a cell, with its line there, from 1. */
export interface Found {
  readonly text: string;
  readonly line: number;
}

const treeOf = (source: string) => typescriptLanguage.parser.parse(source);

const lineAt = (source: string, at: number): number => source.slice(0, at).split("\n").length;

const importedName = /^(?:type\s+)?(?:\w+\s+as\s+)?(\w+)$/;

/** Names that a cell imports. */
export function importedIn(source: string): Found[] {
  return [...source.matchAll(/import\s*(?:type\s*)?\{([^}]*)\}/g)].flatMap(
    ({ 1: list = "", index }) =>
      list.split(",").flatMap((part) => {
        const [, name] = importedName.exec(part.trim()) ?? [];
        return name ? [{ text: name, line: lineAt(source, source.indexOf(part, index)) }] : [];
      }),
  );
}

/** Every name that a cell uses, its imports apart. */
export function namesIn(source: string): Set<string> {
  const names = new Set<string>();
  treeOf(source).iterate({
    enter({ name, from, to }) {
      if (name === "ImportDeclaration") return false;
      if (name === "VariableName" || name === "TypeName") names.add(source.slice(from, to));
      return undefined;
    },
  });
  return names;
}

/** Factors of a product, quotient or power: the last name of each, such as "mass" of "car.mass". */
function factorsOf(source: string, node: Node): string[] {
  const text = source.slice(node.from, node.to);
  if (node.name === "ParenthesizedExpression" && node.firstChild?.nextSibling)
    return factorsOf(source, node.firstChild.nextSibling);
  if (node.name !== "BinaryExpression") return [/(\w+)$/.exec(text)?.[1] ?? text];
  const [left, operator, right] = childrenOf(node);
  const sign = operator ? source.slice(operator.from, operator.to) : "";
  if (!left || !right || !["*", "/", "**"].includes(sign)) return [];
  return [left, right].flatMap((side) => factorsOf(source, side));
}

function childrenOf(node: Node): Node[] {
  const children: Node[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) children.push(child);
  return children;
}

/** Products, quotients and powers of a cell, the largest of each; a slip of an exercise may be any. */
export function productsIn(source: string): (Found & { readonly factors: readonly string[] })[] {
  const products: (Found & { factors: string[] })[] = [];
  treeOf(source).iterate({
    enter({ name, from, to, node }) {
      if (name === "Property" && /^slips\b/.test(source.slice(from, to))) return false;
      if (name !== "BinaryExpression") return undefined;
      const factors = factorsOf(source, node);
      if (factors.length === 0) return undefined;
      const text = source.slice(node.from, node.to);
      products.push({ text, line: lineAt(source, node.from), factors });
      return false;
    },
  });
  return products;
}

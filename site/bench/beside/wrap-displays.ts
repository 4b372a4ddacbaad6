import { typescriptLanguage } from "@codemirror/lang-javascript";

const showing = new Set(["figure", "worked", "predict", "exercise"]);

const functions = new Set([
  "ArrowFunction",
  "FunctionDeclaration",
  "FunctionExpression",
  "MethodDeclaration",
]);

/**
 * A cell's code with every call that shows something wrapped in `display(…)`.
 *
 * Such a call is a statement of its own outside any function, be it in a condition or a loop.
 */
export function wrapDisplays(source: string): string {
  const calls: { from: number; to: number }[] = [];
  typescriptLanguage.parser.parse(source).iterate({
    enter({ name, node }) {
      if (functions.has(name)) return false;
      const call = name === "ExpressionStatement" ? node.getChild("CallExpression") : null;
      const called = call?.firstChild;
      if (!call || !called || !showing.has(source.slice(called.from, called.to))) return undefined;
      calls.push(call);
      return false;
    },
  });
  return calls.reduceRight(
    (text, { from, to }) =>
      `${text.slice(0, from)}display(${text.slice(from, to)})${text.slice(to)}`,
    source,
  );
}

import katex from "katex";
import type MarkdownIt from "markdown-it";

type Markdown = InstanceType<typeof MarkdownIt>;
type InlineRule = Parameters<Markdown["inline"]["ruler"]["push"]>[1];
type BlockRule = Parameters<Markdown["block"]["ruler"]["push"]>[1];

/** `$…$` beside no word and no other dollar; a backslash keeps the next letter as it is. */
const inLine = /\$((?:\\[\s\S]|[^$\\])+)\$(?![\w$])/y;

const inlineFormula: InlineRule = (state, silent) => {
  if (/[\w$\\]/.test(state.src[state.pos - 1] ?? "")) return false;
  inLine.lastIndex = state.pos;
  const [whole, formula] = inLine.exec(state.src) ?? [];
  if (whole === undefined || formula === undefined) return false;
  if (!silent) state.push("formula", "math", 0).content = formula;
  state.pos += whole.length;
  return true;
};

/** Lines from one that opens with `$$` to one that ends with it, which may be the same. */
const blockFormula: BlockRule = (state, start, end, silent) => {
  const text = state.getLines(start, end, state.blkIndent, false);
  const [whole, formula] = /^\s*\$\$((?:(?!\$\$)[\s\S])+)\$\$[ \t]*(?=\n|$)/.exec(text) ?? [];
  if (whole === undefined || formula === undefined) return false;
  if (silent) return true;
  const next = start + whole.split("\n").length;
  const token = state.push("formula_block", "math", 0);
  Object.assign(token, { block: true, content: formula, map: [start, next] });
  state.line = next;
  return true;
};

/** A formula as HTML; what KaTeX cannot read is left in red, with the reason in its title. */
const html = (formula: string, displayMode: boolean): string =>
  katex.renderToString(formula.trim(), { displayMode, throwOnError: false });

/** Formulas between dollars, in a line and as a block, set by KaTeX. */
export function formulas(markdown: Markdown): void {
  markdown.inline.ruler.after("escape", "formula", inlineFormula);
  markdown.block.ruler.after("blockquote", "formula_block", blockFormula, {
    alt: ["paragraph", "reference", "blockquote", "list"],
  });
  const { rules } = markdown.renderer;
  const contentOf = (tokens: readonly { content: string }[], i: number) => tokens[i]?.content ?? "";
  rules.formula = (tokens, i) => html(contentOf(tokens, i), false);
  rules.formula_block = (tokens, i) => `<p>${html(contentOf(tokens, i), true)}</p>\n`;
}

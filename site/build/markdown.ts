import MarkdownIt from "markdown-it";
import { formulas } from "./formulas.js";
import { partWords } from "./part-words.js";
import { type OpenTerms, termLinks } from "./term-links.js";

/** A stable anchor from a heading's words. */
export function slug(text: string): string {
  return text
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
}

/** The words of a line of markdown without its marks. */
export const plain = (text: string): string => text.replace(/[*_`$]/g, "");

const markdown = new MarkdownIt({ html: false, typographer: true })
  .use(formulas)
  .use(termLinks)
  .use(partWords);

markdown.core.ruler.push("heading_anchors", ({ tokens }) => {
  tokens.forEach((token, index) => {
    if (token.type !== "heading_open") return;
    const text = tokens[index + 1]?.content ?? "";
    token.attrSet("id", slug(text.replace(/^Deeper: /, "")));
  });
});

/** A quotation that opens with the word Caution is a safety notice. */
markdown.core.ruler.push("cautions", ({ tokens }) => {
  tokens.forEach((token, index) => {
    const opens = /^\*\*Caution/.test(tokens[index + 2]?.content ?? "");
    if (token.type === "blockquote_open" && opens) token.attrSet("class", "caution");
  });
});

/** A paragraph that asks to move a figure says nothing where nothing moves. */
markdown.core.ruler.push("to_find_out", ({ tokens }) => {
  tokens.forEach((token, index) => {
    const asks = /^\*\*Find out\.\*\*/.test(tokens[index + 1]?.content ?? "");
    if (token.type === "paragraph_open" && asks) token.attrSet("class", "find-out");
  });
});

const wrapTable = markdown.renderer.rules;
wrapTable.table_open = () => '<div class="table"><table>';
wrapTable.table_close = () => "</table></div>";

/** What a chapter's prose gets beside its marks. */
interface Extras {
  /** Words that name a part of a car carry its tone. */
  readonly partWords?: boolean;
  /** Words of the glossary that are still to be linked. */
  readonly terms?: OpenTerms;
}

/** Markdown as HTML. */
export const render = (source: string, extras: Extras = {}): string =>
  markdown.render(source, { ...extras });

/** A line of markdown as HTML without a paragraph around it. */
export const renderInline = (source: string): string => markdown.renderInline(source);

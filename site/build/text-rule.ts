import type MarkdownIt from "markdown-it";

export type Markdown = InstanceType<typeof MarkdownIt>;
export type Token = ReturnType<Markdown["parse"]>[number];
export type MakeToken = (type: string, tag?: string, nesting?: Token["nesting"]) => Token;

/**
 * Turns texts of paragraphs and tables into other tokens; headings, links, formulas and code are left alone.
 *
 * @param inBlock - what does it in one paragraph; nothing where the page is left as it is
 */
export function textRule(
  markdown: Markdown,
  name: string,
  inBlock: (
    env: Record<string, unknown>,
  ) => ((token: Token, make: MakeToken) => Token[]) | undefined,
): void {
  markdown.core.ruler.push(name, ({ tokens, env, Token: Made }) => {
    const make: MakeToken = (type, tag = "", nesting = 0) => new Made(type, tag, nesting);
    tokens.forEach((block, index) => {
      if (block.type !== "inline" || tokens[index - 1]?.type === "heading_open") return;
      const change = inBlock(env);
      if (change === undefined) return;
      let inLink = false;
      block.children = (block.children ?? []).flatMap((token) => {
        if (token.type === "link_open") inLink = true;
        if (token.type === "link_close") inLink = false;
        return token.type === "text" && !inLink ? change(token, make) : [token];
      });
    });
  });
}

import { createHash } from "node:crypto";

/** What an element of inline code is allowed by in the policy of its page. */
const allowance = (text: string): string =>
  `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

/** Code that cannot end its own element. */
const contained = (code: string): string =>
  code.replace(/<\/script/gi, "<\\/script").replace(/<!--/g, "<\\!--");

/**
 * Scripts and one style sheet as elements of a page, and the policy that allows just these.
 *
 * @param asks - whom the scripts may ask, as a policy says it
 */
export function inline(scripts: readonly string[], style: string, asks = "'none'") {
  const codes = scripts.map(contained);
  const policy = [
    "default-src 'none'",
    `script-src ${codes.length > 0 ? codes.map(allowance).join(" ") : "'none'"}`,
    `style-src ${allowance(style)}`,
    "style-src-attr 'unsafe-inline'",
    "img-src data:",
    "font-src data:",
    `connect-src ${asks}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return {
    policy,
    style: `<style>${style}</style>`,
    scripts: codes.map((code) => `<script>${code}</script>`).join("\n"),
  };
}

import { shareAddress, stateCopied } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";

const said = { copied: words.linkCopied, inBar: words.linkShown };

/** Ways to give the puzzle to somebody else. */
export function Sharing({ link }: { readonly link: string }) {
  return (
    <>
      <Button id="copy-link" work={async () => say(await stateCopied(link, said))}>
        {words.link}
      </Button>
      <a href={shareAddress(`practice.html${link}`)}>{words.asCode}</a>
    </>
  );
}

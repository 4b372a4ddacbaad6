import { addressCopied, shareAddress } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";

async function copy(link: string): Promise<void> {
  const held = await addressCopied(location.href.replace(/#.*|$/s, link));
  say(held ? words.linkCopied : words.linkShown);
}

/** Ways to give the puzzle to somebody else. */
export function Sharing({ link }: { readonly link: string }) {
  return (
    <>
      <Button id="copy-link" work={() => void copy(link)}>
        {words.link}
      </Button>
      <a href={shareAddress(`practice.html${link}`)}>{words.asCode}</a>
    </>
  );
}

import { copied } from "@rollbook/page";
import { carWords } from "../../../say/your-car/cars.js";
import { classWords as words } from "../../../say/your-car/classes.js";
import { Button } from "../../../ui/button.js";
import { CodePicture } from "../../../ui/code-picture.js";
import { say } from "../../../ui/notice.js";
import { handing, stopHanding } from "../state/hand-on.js";

/** The link and the codes of what is handed on. */
export function HandOn() {
  const now = handing.value;
  if (now === undefined) return null;
  const { name, link, codes } = now;
  const copy = async () => say((await copied(link ?? "")) ? words.linkCopied : words.linkNotCopied);
  return (
    <section class="hand-on" aria-labelledby="hand-on-title">
      <h2 id="hand-on-title">{words.handOnTitle(name)}</h2>
      {link === undefined ? (
        <p>
          {words.noAddress} <a href="share.html">{words.share}</a>.
        </p>
      ) : (
        <>
          <p class="note">{words.handOnHelp}</p>
          {codes.length === 0 && <p>{words.tooLarge}</p>}
          <div class="codes">
            {codes.map((code, i) => (
              <figure class="code-to-take" key={code} data-link={code}>
                <CodePicture link={code} label={words.code(i + 1, codes.length)} />
                <figcaption>{words.code(i + 1, codes.length)}</figcaption>
              </figure>
            ))}
          </div>
        </>
      )}
      <p class="doing">
        {link !== undefined && (
          <Button id="copy-link" work={() => void copy()}>
            {words.copyLink}
          </Button>
        )}
        <Button work={stopHanding}>{carWords.close}</Button>
      </p>
    </section>
  );
}

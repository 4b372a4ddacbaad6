import type { EventEntry, LogEntry } from "@rollbook/lib";
import { courseAddress } from "@rollbook/page";
import { useEffect, useState } from "preact/hooks";
import { courseAt, isOnlyHere } from "../../../hand-over/course.js";
import { entriesInCodes, type InCodes } from "../../../hand-over/entries-in-codes.js";
import { CodePicture } from "../../../ui/code-picture.js";
import type { View } from "../route.js";
import { words } from "../words.js";

const { handing: said } = words;

/** Where other devices find the workbook; nothing where only this device can open it. */
function course(): URL | undefined {
  const here = new URL("./", location.href.replace(/[?#].*$/s, ""));
  if (!isOnlyHere(here)) return here;
  const address = courseAddress.now.value;
  return address === "" ? undefined : courseAt(address);
}

interface Handed {
  readonly entries: readonly LogEntry[];
  /** The day they belong to, where it is known and not among them. */
  readonly day?: EventEntry | undefined;
  readonly view: View;
}

/** Codes that bring entries to whoever points a camera at them; they are links, and nothing is sent. */
export function Codes({ entries, day, view }: Handed) {
  const [made, setMade] = useState<InCodes | undefined>();
  useEffect(() => {
    let wanted = true;
    void entriesInCodes(entries, day).then((inCodes) => wanted && setMade(inCodes));
    return () => {
      wanted = false;
    };
  }, [entries, day]);
  const address = course();
  if (address === undefined)
    return (
      <p>
        {said.noAddress} <a href="share.html">{said.share}</a>.
      </p>
    );
  if (made === undefined) return null;
  const { packed, tooLarge } = made;
  return (
    <>
      <p class="quiet">{said.help}</p>
      <div class="codes">
        {packed.map((letters, i) => (
          <CodeToTake
            key={letters}
            link={new URL(`workshop.html#${view}?take=${letters}`, address).href}
            label={said.code(i + 1, packed.length)}
          />
        ))}
      </div>
      {tooLarge.length > 0 && <p>{said.tooLarge(tooLarge.length)}</p>}
    </>
  );
}

function CodeToTake({ link, label }: { readonly link: string; readonly label: string }) {
  return (
    <figure class="code-to-take">
      <CodePicture link={link} label={label} />
      <figcaption>{label}</figcaption>
    </figure>
  );
}

import { useSignal } from "@preact/signals";
import { copied, courseAddress } from "@rollbook/page";
import { useEffect, useRef } from "preact/hooks";
import { courseAt, isOnlyHere } from "../../hand-over/course.js";
import { words } from "../../say/share.js";
import { Button } from "../../ui/button.js";
import { CodePicture } from "../../ui/code-picture.js";
import { linkWanted, targetOf } from "./state.js";

/** The folder that this page lies in. */
const here = new URL("./", location.href.replace(/[?#].*$/s, ""));

export function Share() {
  const link = useSignal(linkWanted(here, location.hash));
  const address = useSignal(courseAddress.now.value);
  useEffect(() => {
    const follow = () => {
      link.value = linkWanted(here, location.hash);
    };
    addEventListener("hashchange", follow);
    return () => removeEventListener("hashchange", follow);
  }, []);
  const type = (text: string) => {
    address.value = text;
    if (courseAt(text)) void courseAddress.set(text);
  };
  return (
    <>
      <label for="link">{words.link}</label>
      <input
        id="link"
        autocomplete="off"
        spellcheck={false}
        maxLength={2000}
        value={link.value}
        onInput={({ currentTarget }) => {
          link.value = currentTarget.value;
        }}
      />
      <p class="help">{words.help}</p>
      {isOnlyHere(here) && <Address value={address.value} type={type} />}
      <Code target={targetOf(here, { link: link.value, address: address.value })} />
    </>
  );
}

interface AddressField {
  readonly value: string;
  readonly type: (text: string) => void;
}

/** Where others find a course that is open from this device alone. */
function Address({ value, type }: AddressField) {
  return (
    <>
      <label for="address">{words.address}</label>
      <input
        id="address"
        type="url"
        autocomplete="url"
        maxLength={290}
        value={value}
        onInput={({ currentTarget }) => type(currentTarget.value)}
      />
      <p class="help">{words.addressHelp}</p>
    </>
  );
}

/** The code of a link, or why there is none, and what to do with it. */
function Code({ target }: { readonly target: ReturnType<typeof targetOf> }) {
  const figure = useRef<HTMLElement>(null);
  const told = useSignal<{ sentence: string; of: string } | undefined>(undefined);
  const link = target instanceof URL ? target.href : undefined;
  const copy = async () => {
    const held = await copied(link ?? "");
    told.value = { sentence: held ? words.copied : words.notCopied, of: link ?? "" };
  };
  const saidOfCopy = told.value?.of === link ? told.value?.sentence : "";
  return (
    <>
      <p role="status">{target instanceof URL ? saidOfCopy : words[target]}</p>
      <figure class="code-of-link" ref={figure} hidden={link === undefined}>
        {link !== undefined && (
          <>
            <CodePicture link={link} label={words.codeOf(link)} />
            <figcaption>{link}</figcaption>
          </>
        )}
      </figure>
      <p class="acts">
        <Button work={() => void copy()}>{words.copy}</Button>
        {document.fullscreenEnabled && (
          <Button work={() => void figure.current?.requestFullscreen()}>{words.large}</Button>
        )}
        <Button work={() => print()}>{words.print}</Button>
      </p>
    </>
  );
}

import { courseAddress, element, placeOf } from "@rollbook/page";
import { longestLink } from "../../hand-over/code.js";
import { courseAt, isOnlyHere, viewIn } from "../../hand-over/course.js";
import { picture } from "./picture.js";
import { words } from "./words.js";

/** The folder that this page lies in. */
const here = new URL("./", location.href.replace(/[?#].*$/s, ""));
const onlyHere = isOnlyHere(here);

const linkBox = element("input", {
  id: "link",
  autocomplete: "off",
  spellcheck: "false",
  maxlength: 2000,
});
const addressBox = element("input", {
  id: "address",
  type: "url",
  autocomplete: "url",
  maxlength: 290,
});
const code = element("figure", { class: "code-of-link" });
const status = element("p", { role: "status" });

const course = (): URL | undefined => (onlyHere ? courseAt(addressBox.value) : here);

/** The part of the link inside the course, whether it was made from this copy or from the public one. */
function view(): string | undefined {
  const typed = linkBox.value;
  const there = course();
  return viewIn(here, typed) ?? (there && viewIn(there, typed));
}

function fault(): string {
  const inside = view();
  const there = course();
  if (inside === undefined) return words.leadsAway;
  if (!there) return addressBox.value ? words.badAddress : words.noAddress;
  return there.href.length + inside.length > longestLink ? words.tooLong : "";
}

function show(): void {
  status.textContent = fault();
  code.hidden = status.textContent !== "";
  if (code.hidden) return;
  const link = new URL(view() ?? "", course()).href;
  code.replaceChildren(picture(link), element("figcaption", {}, link));
}

function button(label: string, act: () => void): HTMLButtonElement {
  const made = element("button", { type: "button" }, label);
  made.addEventListener("click", act);
  return made;
}

async function copy(): Promise<void> {
  try {
    await navigator.clipboard.writeText(code.querySelector("figcaption")?.textContent ?? "");
    status.textContent = words.copied;
  } catch {
    status.textContent = words.notCopied;
  }
}

function addressField(): Node[] {
  addressBox.value = courseAddress.now.value;
  addressBox.addEventListener("input", () => {
    if (courseAt(addressBox.value)) void courseAddress.set(addressBox.value);
    show();
  });
  return [
    element("label", { for: "address" }, words.address),
    addressBox,
    element("p", { class: "help" }, words.addressHelp),
  ];
}

/** The view that this page's own address asks to share. */
function wantedView(): string {
  try {
    return decodeURIComponent(location.hash.slice(1)) || "index.html";
  } catch {
    return "index.html";
  }
}

function lay(place: HTMLElement): void {
  const wanted = wantedView();
  linkBox.value = viewIn(here, wanted) === undefined ? wanted : new URL(wanted, here).href;
  linkBox.addEventListener("input", show);
  place.replaceChildren(
    element("label", { for: "link" }, words.link),
    linkBox,
    element("p", { class: "help" }, words.help),
    ...(onlyHere ? addressField() : []),
    status,
    code,
    element(
      "p",
      { class: "acts" },
      button(words.copy, copy),
      ...(document.fullscreenEnabled
        ? [button(words.large, () => void code.requestFullscreen())]
        : []),
      button(words.print, () => print()),
    ),
  );
  show();
}

const place = placeOf("share");
if (place) {
  lay(place);
  addEventListener("hashchange", () => lay(place));
}

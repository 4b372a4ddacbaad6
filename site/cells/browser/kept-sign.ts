import { effect } from "@preact/signals-core";
import { keptWords as words } from "../../say/kept.js";
import { letAsideGo } from "../../store/document.js";
import { keptAside, unkept } from "../../store/told.js";
import { element } from "./element.js";
import { saveFile } from "./save-file.js";

type ByKey = ReadonlyMap<string, unknown>;

function button(text: string, work: () => void): HTMLElement {
  const made = element("button", { type: "button" }, text);
  made.addEventListener("click", work);
  return made;
}

const inFile = (values: ByKey): string =>
  `${JSON.stringify(Object.fromEntries(values), null, 1)}\n`;

/** A line at the foot of the page that is there while it has something to say. */
function line(name: string): HTMLElement {
  const made = element("p", { class: name, role: "status", hidden: true });
  document.querySelector(".colophon")?.append(made);
  return made;
}

function show(place: HTMLElement, keys: readonly string[], ...content: (Node | string)[]): void {
  place.hidden = keys.length === 0;
  place.replaceChildren(...(keys.length === 0 ? [] : content));
}

/**
 * Says at the foot of the page what the device refused to keep, and what it keeps that cannot be read,
 * each with a way to take it out.
 *
 * @param elsewhere - whether the page itself tells what of a document was put aside
 */
export function signWhatIsKept(elsewhere: (key: string) => boolean): void {
  const [refused, aside] = [line("not-kept"), line("put-aside")];
  effect(() => {
    const keys = [...unkept.value.keys()];
    const save = () => saveFile(words.unkeptName, inFile(unkept.value));
    show(refused, keys, `${words.refused(keys)} `, button(words.save, save));
  });
  effect(() => {
    const told = [...keptAside.value].filter(([key]) => !elsewhere(key));
    const keys = told.map(([key]) => key);
    const save = () => saveFile(words.asideName, inFile(new Map(told)));
    const letGo = () => told.forEach(([key, parts]) => void letAsideGo(key, parts));
    const doing = [button(words.save, save), " ", button(words.letGo, letGo)];
    show(aside, keys, `${words.aside(keys)} `, ...doing);
  });
}

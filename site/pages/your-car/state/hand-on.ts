import { signal } from "@preact/signals";
import { type Car, type CarClass, formatCar, formatClass } from "@rollbook/lib";
import { courseAddress } from "@rollbook/page";
import { courseAt, isOnlyHere } from "../../../hand-over/course.js";
import { codeEndsOf, linkEndOf } from "../../../hand-over/file-links.js";
import { pack } from "../../../hand-over/packed.js";

/** A car or a class that is handed on. */
export type HandedOn =
  | { readonly what: "car"; readonly of: Car }
  | { readonly what: "class"; readonly of: CarClass };

/** What is handed on now. */
interface Handing {
  readonly name: string;
  /** Where others open it; nothing where this copy of the course is open from this device alone. */
  readonly link: string | undefined;
  readonly codes: readonly string[];
}

export const handing = signal<Handing | undefined>(undefined);

export const stopHanding = (): void => {
  handing.value = undefined;
};

/** Where other devices find the course: here, or where the reader or the class says; else nothing. */
function course(one: HandedOn): URL | undefined {
  const here = new URL("./", location.href.replace(/[?#].*$/s, ""));
  if (!isOnlyHere(here)) return here;
  const ofClass = one.what === "class" ? (one.of.course ?? "") : "";
  return courseAt(courseAddress.now.value || ofClass);
}

/** Packs a car or a class into a link and codes. */
export async function handOn(one: HandedOn): Promise<void> {
  const text = one.what === "car" ? formatCar(one.of) : formatClass(one.of);
  const letters = await pack(JSON.stringify(JSON.parse(text)));
  const address = course(one);
  const linkTo = (end: string) => new URL(`your-car.html${end}`, address).href;
  handing.value = {
    name: one.of.name,
    link: address && linkTo(linkEndOf(letters)),
    codes: address ? codeEndsOf(letters).map(linkTo) : [],
  };
}

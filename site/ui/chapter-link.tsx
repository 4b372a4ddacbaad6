import { chapterAddress } from "@rollbook/page";
import type { ComponentChildren } from "preact";

/** A link to a place in a chapter; its words alone where this course has no such chapter. */
export function ChapterLink({
  to,
  children,
}: {
  readonly to: string;
  readonly children: ComponentChildren;
}) {
  const address = chapterAddress(to);
  return address === undefined ? <span>{children}</span> : <a href={address}>{children}</a>;
}

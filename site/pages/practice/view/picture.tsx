import { livePicture, type Panel } from "@rollbook/page";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { Look } from "./charts.js";

/** A picture by the painter of the chapters' figures. */
export function Picture({
  panel,
  title,
  look,
  tell,
}: {
  readonly panel: Panel<Look>;
  readonly title: string;
  readonly look: Look;
  /** Takes the sentence when the axes cannot be had. */
  readonly tell: (sentence: string) => void;
}) {
  const place = useRef<HTMLDivElement>(null);
  const picture = useRef<ReturnType<typeof livePicture<Look>>>(undefined);
  useLayoutEffect(() => {
    picture.current = livePicture(panel, title, tell);
    place.current?.append(picture.current.svg);
  }, []);
  useLayoutEffect(() => picture.current?.paint(look), [look.drives, look.distance]);
  return <div class="picture" ref={place} />;
}

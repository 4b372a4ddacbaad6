import { spell } from "@rollbook/page";
import { useEffect, useRef } from "preact/hooks";
import { words } from "../../../say/map.js";
import type { LiveMap } from "../live.js";
import { axesIn, markOf } from "../state.js";
import { MapPainter } from "./painter.js";
import { steer } from "./steering.js";

/** Puts the painter into the picture's element, and lets keys, mouse and touch move the mark. */
function begin(node: HTMLElement, live: LiveMap): () => void {
  const painter = new MapPainter(node);
  steer(node, {
    placeOf: (event) => painter.placeOf(event),
    now: () => {
      const { along, up } = axesIn(live.state.value, live.axes);
      return { mark: markOf(live.state.value, along, up), along, up };
    },
    to: (mark) => live.markAt(mark),
  });
  const again = () => {
    painter.again();
    live.point();
  };
  const size = new ResizeObserver(again);
  const dark = matchMedia("(prefers-color-scheme: dark)");
  size.observe(node);
  dark.addEventListener("change", again);
  live.paintWith(painter);
  return () => {
    size.disconnect();
    dark.removeEventListener("change", again);
  };
}

/** The picture of the map, drawn by its own painter. */
export function Picture({ live }: { readonly live: LiveMap }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => (place.current === null ? undefined : begin(place.current, live)), [live]);
  const { along, up } = axesIn(live.state.value, live.axes);
  const took = live.took.value;
  return (
    <div
      ref={place}
      class="map"
      role="application"
      tabIndex={0}
      aria-roledescription={words.role}
      aria-describedby="map-keys"
      aria-label={spell(words.map(along.name, up.name))}
      hidden={live.refused.value !== undefined}
      data-drawn={live.exactness.value?.kind}
      data-frame={took?.toFixed(2)}
    />
  );
}

import { useSignal } from "@preact/signals";
import { words as shared, spell, stateCopied } from "@rollbook/page";
import { useEffect } from "preact/hooks";
import { words } from "../../../say/map.js";
import { Button } from "../../../ui/button.js";
import { Forbidden } from "../../../ui/forbidden.js";
import { linkToMap, mapFromLink } from "../link.js";
import type { LiveMap } from "../live.js";
import { axesIn, type MapState } from "../state.js";
import { Chooser, Moving } from "./chooser.js";
import { Legend } from "./legend.js";
import { Numbers } from "./numbers.js";
import { Picture } from "./picture.js";
import { HowExact, Reading, Result } from "./sentences.js";

const said = { copied: words.linked, inBar: words.inBar };

/** Copies the address of the map as it is; where the browser refuses, it goes into the address bar. */
function LinkButton({ live }: { readonly live: LiveMap }) {
  const told = useSignal<{ text: string; of: MapState } | undefined>(undefined);
  const state = live.state.value;
  const copy = async () => {
    told.value = { text: await stateCopied(linkToMap(state, live.axes), said), of: state };
  };
  return (
    <>
      <Button work={() => void copy()}>{words.link}</Button>
      <span class="told" role="status">
        {told.value?.of === state && told.value.text}
      </span>
    </>
  );
}

function Progress({ live }: { readonly live: LiveMap }) {
  const part = live.progress.value;
  return (
    <progress
      class={part === undefined ? "progress" : "progress on"}
      aria-hidden="true"
      max={1}
      value={part ?? 1}
    />
  );
}

/** Follows what the address asks for. */
function useAddress(live: LiveMap): void {
  useEffect(() => {
    const follow = () => {
      const wanted = mapFromLink(location.hash, live.axes);
      if (wanted === undefined) return;
      live.change(wanted.state);
      live.faults.value = wanted.faults;
    };
    follow();
    addEventListener("hashchange", follow);
    return () => removeEventListener("hashchange", follow);
  }, [live]);
}

/** The map of a car with all that belongs to it. */
export function MapView({ live, first }: { readonly live: LiveMap; readonly first: MapState }) {
  useAddress(live);
  const reset = () => {
    history.replaceState(null, "", location.href.replace(/#.*$/s, ""));
    live.change(first);
  };
  const { along, up } = axesIn(live.state.value, live.axes);
  const isBlend = [along, up].some(({ parameter }) => parameter === "barPosition");
  return (
    <>
      <p class="whose-car">{words.whose(live.car.name)}</p>
      <div class="figure">
        <Chooser live={live} />
        <Picture live={live} />
        <Progress live={live} />
        <Moving live={live} />
        <HowExact live={live} />
        <Reading live={live} />
        <p id="map-keys" class="hint">
          {words.keys}
        </p>
        <Result live={live} />
        <p class="fault" role="alert" hidden={live.faults.value.length === 0}>
          {spell(live.faults.value.join(" "))}
        </p>
        <div class="buttons">
          <Button work={reset}>{shared.reset}</Button>
          <LinkButton live={live} />
        </div>
        <Legend live={live} />
        <Forbidden car={live.car} />
      </div>
      <Numbers live={live} />
      {isBlend && <p class="hint">{words.between}</p>}
    </>
  );
}

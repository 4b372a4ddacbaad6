import { reader } from "@rollbook/page";
import { useEffect, useRef } from "preact/hooks";
import type { BandsSoFar } from "../../../bands/bands.js";
import { nextTold } from "../../../bands/next-told.js";
import { nextWords as words } from "../../../say/measure/next.js";
import { Button } from "../../../ui/button.js";
import { carAtHand } from "../state/sheet.js";
import { asked, begin, stop, told, wanted } from "./state.js";
import { changesTold, endsTold } from "./tell.js";
import { wayOf } from "./way.js";

function Pairs({
  title,
  pairs,
}: {
  readonly title: string;
  readonly pairs: readonly (readonly [string, string])[];
}) {
  return (
    <>
      <h3>{title}</h3>
      <dl class="pairs">
        {pairs.map(([what, said]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

function NextList({ bands }: { readonly bands: BandsSoFar }) {
  const list = nextTold(bands, carAtHand.value, reader);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const { value } = wanted;
    if (value === "") return;
    (document.getElementById(value) ?? head.current)?.scrollIntoView({ block: "center" });
  }, []);
  return (
    <>
      <h3 ref={head}>{words.list}</h3>
      {list.length === 0 && <p>{words.nothing}</p>}
      <ol class="next">
        {list.map(({ anchor, id, title, narrows }) => (
          <li
            key={anchor}
            id={anchor}
            aria-current={anchor === wanted.value ? "location" : undefined}
          >
            <a href={wayOf(id, reader).at}>{title}</a> <small>{wayOf(id, reader).how}</small>
            <br />
            {narrows}
          </li>
        ))}
      </ol>
      <p class="note">{words.rest}</p>
    </>
  );
}

/** What the course can tell of the car at hand, and what would make it surer. */
export function NextToMeasure() {
  const car = carAtHand.value;
  const so = told.value;
  const isWorking = asked.value === "yes" && !(so && so.count >= so.of);
  const changes = so ? changesTold(so, car, reader) : [];
  return (
    <>
      {isWorking ? (
        <Button id="next-stop" work={stop}>
          {words.stop}
        </Button>
      ) : (
        <Button id="next-begin" work={begin}>
          {words.begin(car.name)}
        </Button>
      )}
      <p class="note" role="status">
        {asked.value === "cannot" && words.refused}
        {so && words.progress(so.count, so.of)}
        {!so && isWorking && words.working}
      </p>
      {so && (
        <>
          <Pairs title={words.canTell} pairs={endsTold(so)} />
          {changes.length > 0 ? (
            <Pairs title={words.changes} pairs={changes} />
          ) : (
            <p class="note">{words.noChanges}</p>
          )}
          <NextList bands={so} />
        </>
      )}
    </>
  );
}

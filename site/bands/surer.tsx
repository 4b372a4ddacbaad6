import type { Car } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { surerWords as words } from "../say/surer.js";
import { Button } from "../ui/button.js";
import type { BandsOf, BandsSoFar } from "./ask.js";
import { nextTold } from "./next-told.js";
import { bandsOf, isUnderWay, keyOf, stop, workOut } from "./worked.js";

/** What is known of how sure figures are, for whoever shows them; each part is drawn again once more is. */
export function useSure(of: BandsOf | undefined): BandsSoFar | undefined {
  const key = useMemo(() => of && keyOf(of), [of]);
  return key === undefined ? undefined : bandsOf(key);
}

/** Works out for one tap how sure figures are, and tells which measurement would make them surer. */
export function Surer({
  id,
  of,
  children,
}: {
  readonly id: string;
  readonly of: BandsOf;
  /** What is told of it, once there is something to tell. */
  readonly children?: ComponentChildren;
}) {
  const key = useMemo(() => keyOf(of), [of]);
  const bands = bandsOf(key);
  const isWorking = isUnderWay(key);
  const isWhole = bands !== undefined && bands.count >= bands.of;
  return (
    <div class="surer" id={id}>
      {!isWorking && !isWhole && (
        <Button id={`${id}-begin`} work={() => workOut(of)}>
          {words.begin}
        </Button>
      )}
      {isWorking && (
        <Button id={`${id}-stop`} work={stop}>
          {words.stop}
        </Button>
      )}
      {bands && children}
      <p class="note" role="status">
        {isWorking && !bands && words.working}
        {bands && words.progress(bands.count, bands.of)}
      </p>
      {bands && <WouldMakeSurer bands={bands} car={of.measured} />}
    </div>
  );
}

const ENOUGH = 100; // samples: of fewer, chance picks the measurement

/** The measurement that would narrow most, at its entry of what to measure next. */
export function WouldMakeSurer({ bands, car }: { readonly bands: BandsSoFar; readonly car: Car }) {
  const isEnough = bands.count >= Math.min(ENOUGH, bands.of);
  const [first] = isEnough ? nextTold(bands, car, reader) : [];
  if (!isEnough) return <p class="note">{words.waiting}</p>;
  return (
    <p class="note would-make-surer">
      {words.surer}{" "}
      {first ? (
        <>
          <a href={`measure.html#${first.anchor}`}>{first.title}</a> ({first.narrows}).
        </>
      ) : (
        <>
          {words.nothing}. <a href="measure.html#next">{words.all}</a>
        </>
      )}
    </p>
  );
}

import {
  comparedIn,
  type EventEntry,
  happeningsOf,
  inOtherCar,
  isLeftOut,
  onOtherRoad,
  testedIn,
  venueSpeed,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import type { BandsOf } from "../../../bands/bands.js";
import { Surer, useSure } from "../../../bands/surer.js";
import { changeLabel } from "../../../say/change.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { ChangeInTurn } from "../parts/change-in-turn.js";
import { insertNext } from "../plan/steps.js";
import { DriverTable, GroupTable } from "./side-by-side.js";
import type { Topic } from "./topic.js";

/** What the model says of a run against the one before, beside what was felt. */
export function Model({ log, event, run, car, driver }: Topic) {
  const { tested, compared, elsewhere, strangers } = useMemo(
    () => ({
      tested: testedIn(log, event, run, car),
      compared: comparedIn(log, event, run, car),
      elsewhere: onOtherRoad(log, event, run, car),
      strangers: inOtherCar(log, event, run, car),
    }),
    [log, event, run, car],
  );
  const of = useMemo(() => askOf(tested, event), [tested, event]);
  const sure = useSure(of)?.changes[0]?.phases;
  if (run < 2) return <p>{said.baselineRun}</p>;
  if (isLeftOut(happeningsOf(log, event), run, car)) return <p>{said.leftOut}</p>;
  if (tested === undefined) return <p class="beware">{said.notComparable}</p>;
  const one = compared.find((each) => each.driver === driver);
  const asked = (names: readonly string[]) =>
    names.filter((name) => driver === undefined || name === driver);
  return (
    <>
      <Tested labels={tested.changes.map((change) => changeLabel(change, tested.before, reader))} />
      <ChangeInTurn car={tested.before} changes={tested.changes} />
      <OtherRoad names={asked(elsewhere)} car={car} />
      {asked(strangers).length > 0 && <p>{said.otherCar(asked(strangers).join(", "))}</p>}
      {of && <Surer id="talk-sure" of={of} />}
      {driver === undefined && <GroupTable compared={compared} sure={sure} />}
      {one && <DriverTable cells={one.cells} sure={sure} />}
    </>
  );
}

/** What is to be sampled of what was tested; nothing where it is not a single change. */
function askOf(tested: ReturnType<typeof testedIn>, { venue }: EventEntry): BandsOf | undefined {
  const [change, ...others] = tested?.changes ?? [];
  if (tested === undefined || change === undefined || others.length > 0) return undefined;
  const { before, measured } = tested;
  return { car: before, measured, speed: venueSpeed(venue), changes: [change] };
}

/** Wet against dry: why nothing is compared, and a new baseline for one tap. */
function OtherRoad({ names, car }: { readonly names: readonly string[]; readonly car: number }) {
  if (names.length === 0) return null;
  const add = () => {
    const added = insertNext({ kind: "baseline" }, [car]);
    if (added !== undefined) say(said.baselineAdded(added.run), added.takeBack);
  };
  return (
    <div class="beware" id="other-road">
      <p>{said.otherRoad(names.join(", "))}</p>
      <Button id="talk-baseline" work={add}>
        {said.addBaseline}
      </Button>
    </div>
  );
}

/** What was tested, marked where it is more than one thing. */
function Tested({ labels }: { readonly labels: readonly string[] }) {
  const changes = labels.join("; ");
  if (labels.length === 0) return <p>{said.nothingTested}</p>;
  if (labels.length === 1) return <p>{said.tested(changes)}</p>;
  return <p class="beware confounded">{said.confounded(changes)}</p>;
}

import { comparedIn, testedIn } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { changeLabel } from "../../../say/change.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { DriverTable, GroupTable } from "./side-by-side.js";
import type { Topic } from "./topic.js";

/** What the model says of a run against the one before, beside what was felt. */
export function Model({ log, event, run, driver }: Topic) {
  const { tested, compared } = useMemo(
    () => ({ tested: testedIn(log, event, run), compared: comparedIn(log, event, run) }),
    [log, event, run],
  );
  if (run < 2) return <p>{said.baselineRun}</p>;
  if (tested === undefined) return <p class="beware">{said.notComparable}</p>;
  const one = compared.find((each) => each.driver === driver);
  return (
    <>
      <Tested labels={tested.changes.map((change) => changeLabel(change, tested.before, reader))} />
      {driver === undefined && <GroupTable compared={compared} />}
      {one && <DriverTable cells={one.cells} />}
    </>
  );
}

/** What was tested, marked where it is more than one thing. */
function Tested({ labels }: { readonly labels: readonly string[] }) {
  const changes = labels.join("; ");
  if (labels.length === 0) return <p>{said.nothingTested}</p>;
  if (labels.length === 1) return <p>{said.tested(changes)}</p>;
  return <p class="beware confounded">{said.confounded(changes)}</p>;
}

import type { PlanStep, SheetRow } from "@rollbook/lib";
import { inList } from "../../../say/in-list.js";
import { Button } from "../../../ui/button.js";
import { words } from "../words.js";
import { changeStep } from "./steps.js";

const { plan } = words;

interface Run {
  readonly step: PlanStep;
  readonly row: SheetRow | undefined;
}

const isOutside = ({ step, row }: Run): boolean =>
  step.kind === "change" && (row?.warnings.some(({ code }) => code === "limit") ?? false);

const isKept = ({ step }: Run): boolean => step.kind === "change" && step.outsideClass === "kept";

function setKept(index: number, kept: boolean): void {
  changeStep(index, (step) => {
    if (step.kind !== "change") return step;
    const { outsideClass: _, ...plain } = step;
    return kept ? { ...plain, outsideClass: "kept" } : plain;
  });
}

/** Lets the organiser keep a change that breaks the class, or think again. */
export function KeepOutside({ index, ...run }: Run & { readonly index: number }) {
  if (!isOutside(run)) return null;
  const kept = isKept(run);
  return (
    <p class="tools">
      <Button id={`step-${index}-outside`} work={() => setKept(index, !kept)}>
        {kept ? plan.notOutside : plan.keepOutside}
      </Button>
    </p>
  );
}

/** Which changes break the class and were not kept knowingly. */
export function NotKept({ runs }: { readonly runs: readonly Run[] }) {
  const open = runs.flatMap((run, i) => (isOutside(run) && !isKept(run) ? [String(i + 1)] : []));
  if (open.length === 0) return null;
  return (
    <p class="beware" id="outside-class">
      {plan.outside(open.length, inList(open))}
    </p>
  );
}

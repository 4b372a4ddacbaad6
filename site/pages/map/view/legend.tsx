import { hasLimits } from "@rollbook/lib";
import { format, spell } from "@rollbook/page";
import type { ComponentChildren, VNode } from "preact";
import { words } from "../../../say/map.js";
import { decimalsOfStep } from "../../../say/shown-range.js";
import { undrawnIn } from "../drawn.js";
import type { LiveMap } from "../live.js";

const samples = {
  balance: <path class="balance" d="M2,9H38" />,
  neutral: <path class="neutral" d="M2,9H38" />,
  grip: <path class="grip" d="M2,9H38" />,
  limit: <rect class="limit" x={2} y={1} width={36} height={16} />,
  undrawn: <rect class="undrawn" x={2} y={1} width={36} height={16} />,
  present: <path class="present" d="M20,1l8,8l-8,8l-8,-8z" />,
  mark: <circle class="mark" cx={20} cy={9} r={7} />,
} as const satisfies Record<string, VNode>;

function Row({
  kind,
  children,
}: {
  readonly kind: keyof typeof samples;
  readonly children: ComponentChildren;
}) {
  return (
    <li>
      <svg class="sample" width={40} height={18} aria-hidden="true">
        {samples[kind]}
      </svg>
      <span>{children}</span>
    </li>
  );
}

/** What lines, marks and colours mean, with their numbers. */
export function Legend({ live }: { readonly live: LiveMap }) {
  const told = live.told.value;
  if (told === undefined) return <div class="legend" />;
  const { map, scales } = told;
  const text = (value: number, step: number) =>
    format("acceleration", value, Math.max(2, decimalsOfStep(step)));
  const why = undrawnIn(map).map((state) => words.why[state]);
  return (
    <div class="legend">
      <div class="scale">
        <span>{words.oversteer(text(scales.deepest, scales.balance))}</span>
        <span class="colours" aria-hidden="true" />
        <span>{words.understeer(text(scales.deepest, scales.balance))}</span>
      </div>
      <ul aria-label={words.legend}>
        <Row kind="balance">{words.solid(text(scales.balance, scales.balance))}</Row>
        <Row kind="neutral">{words.neutral}</Row>
        <Row kind="grip">{words.dashed(text(scales.grip, scales.grip))}</Row>
        <Row kind="limit">{spell(hasLimits(map) ? words.hatched : words.noLimits)}</Row>
        {why.length > 0 && <Row kind="undrawn">{spell(words.undrawn(why.join(words.or)))}</Row>}
        <Row kind="present">{words.car}</Row>
        <Row kind="mark">{words.mark}</Row>
      </ul>
    </div>
  );
}

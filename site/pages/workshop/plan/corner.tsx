import { lateralAccelerationOf, parameters, surfaces, type VenueCorner } from "@rollbook/lib";
import { format } from "@rollbook/page";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { words } from "../words.js";
import { faultOfName, trimmed } from "./people.js";
import { PlanNumber, PlanText } from "./plan-fields.js";

const { plan } = words;

const directions = [
  ["left", words.left],
  ["right", words.right],
] as const;
const roads = surfaces.map((surface) => [surface, plan.surfaces[surface]] as const);

/** Numbers of a corner: label, range, and what a corner has that does not say. */
const numbers = [
  ["radius", plan.radius, parameters.cornerRadius],
  ["speed", plan.speed, parameters.speed],
  ["grade", plan.grade, { quantity: "share", min: -0.25, max: 0.25, decimals: 1 }],
  ["banking", plan.banking, { quantity: "angle", min: -0.35, max: 0.7, decimals: 1 }],
] as const;

/** What a corner's fields do to it. */
export interface CornerWork {
  set(part: Partial<VenueCorner>): void;
  move(by: -1 | 1): void;
  remove(): void;
  isTaken(name: string): boolean;
}

interface Asked {
  readonly corner: VenueCorner;
  readonly id: string;
  readonly work: CornerWork;
}

/** One corner of the list. */
export function CornerFields({ corner, id, title, work }: Asked & { readonly title: string }) {
  return (
    <fieldset class="corner" id={id}>
      <legend>{title}</legend>
      <PlanText
        id={`${id}-name`}
        label={plan.cornerName}
        value={corner.name}
        tidy={trimmed}
        faultOf={(name) =>
          faultOfName(name) ?? (work.isTaken(name) ? plan.sameCorner(name) : undefined)
        }
        take={(name) => work.set({ name })}
      />
      <ChoiceField
        id={`${id}-direction`}
        label={plan.direction}
        choices={directions}
        value={corner.direction}
        choose={(direction) => work.set({ direction })}
      />
      <CornerNumbers corner={corner} id={id} work={work} />
      <ChoiceField
        id={`${id}-surface`}
        label={plan.surface}
        choices={roads}
        value={corner.surface ?? "smooth"}
        choose={(surface) => work.set({ surface })}
      />
      <p class="quiet" id={`${id}-asks`}>
        {plan.asks(format("accelerationInG", lateralAccelerationOf(corner), 2))}
      </p>
      <CornerTools corner={corner} id={id} work={work} />
    </fieldset>
  );
}

function CornerNumbers({ corner, id, work }: Asked) {
  return (
    <>
      {numbers.map(([field, label, range]) => (
        <PlanNumber
          key={field}
          id={`${id}-${field}`}
          label={label}
          range={range}
          value={corner[field] ?? 0}
          report={(value) => work.set({ [field]: value })}
        />
      ))}
    </>
  );
}

function CornerTools({ corner: { name }, id, work }: Asked) {
  return (
    <p class="tools">
      <Button id={`${id}-up`} aria-label={plan.upCorner(name)} work={() => work.move(-1)}>
        ↑
      </Button>
      <Button id={`${id}-down`} aria-label={plan.downCorner(name)} work={() => work.move(1)}>
        ↓
      </Button>
      <Button id={`${id}-remove`} aria-label={plan.removeCorner(name)} work={work.remove}>
        {plan.remove}
      </Button>
    </p>
  );
}

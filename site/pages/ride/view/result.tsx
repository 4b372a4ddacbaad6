import {
  type HabitDifference,
  orUndefined,
  predictedRollGradient,
  type RideCorner,
  type RideFacts,
  type RollGradient,
} from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import { plusMinus } from "../../../say/measure/plus-minus.js";
import { habitInWords, words } from "../../../say/measure/ride.js";
import { Button } from "../../../ui/button.js";
import { ChoiceField } from "../../../ui/field.js";
import { Fold } from "../../../ui/fold.js";
import { Table } from "../../../ui/table.js";
import { carAtHand, chosen, isOwn, lookAt, nameOf, outcome, rides, takeReading } from "../state.js";
import type { Told } from "../work/work.js";
import { CornerPicture } from "./picture.js";

const gradientText = (one: RollGradient["balance"]) =>
  one && plusMinus(one, "rollGradient", 2, reader);

/** Which ride this one is held against. */
function HeldAgainst() {
  const { id = "", other = "" } = chosen.value ?? {};
  const others = (rides.value ?? []).filter((ride) => ride.id !== id);
  if (others.length === 0) return null;
  return (
    <ChoiceField
      id="ride-other"
      label={words.held}
      choices={[["", words.nothingHeld], ...others.map((ride) => [ride.id, nameOf(ride)] as const)]}
      value={other}
      choose={(next) => void lookAt(id, next === "" ? undefined : next)}
    />
  );
}

const different = (habits: readonly HabitDifference[]): string =>
  habits
    .filter(({ differs }) => differs)
    .map(({ habit, by }) => habitInWords[habit](format("share", Math.abs(by), 0), by > 0))
    .join(", ");

/** The sentence first. */
function Verdict({ told: { same, notSame } }: { readonly told: Told }) {
  if (notSame !== undefined) return <p class="verdict">{words.cannot(notSame)}</p>;
  if (same === undefined) return <p class="note">{words.one}</p>;
  const alike = same.variation === "laps" ? words.same : words.sameUsual;
  return <p class="verdict">{same.same ? alike : words.different(different(same.habits))}</p>;
}

const inFew = ({ entrySpeed, peak }: RideCorner): string =>
  [entrySpeed !== undefined && format("speed", entrySpeed, 0), format("accelerationInG", peak, 2)]
    .filter(Boolean)
    .join(", ");

/** One small picture for each corner. */
function Corners({ told: { facts, same } }: { readonly told: Told }) {
  const shown = same
    ? same.corners.map(({ first, second, differs }) => ({ corner: second, other: first, differs }))
    : facts.corners.map((corner) => ({ corner, other: undefined, differs: [] }));
  if (shown.length === 0) return <p>{words.noCorners}</p>;
  return (
    <>
      <h3>{words.cornersHead}</h3>
      <p class="note">{words.pictureNote}</p>
      <ul class="corners">
        {shown.map(({ corner, other, differs }, i) => {
          const title = words.corner(i + 1, corner.way);
          const numbers = other ? `${inFew(other)} → ${inFew(corner)}` : inFew(corner);
          return (
            <li key={i} class={differs.length > 0 ? "differs" : undefined}>
              <CornerPicture corner={corner} other={other} label={`${title}: ${numbers}`} />
              <span>{title}</span>
              {other && <small>{inFew(other)} →</small>}
              <small>{inFew(corner)}</small>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** What was measured of the roll, beside the model. */
function Roll({ facts: { rollGradient } }: { readonly facts: RideFacts }) {
  const car = carAtHand.value;
  const model = orUndefined(() => predictedRollGradient(car));
  if (rollGradient === undefined)
    return (
      <>
        <h3>{words.rollHead}</h3>
        <p>{words.noGradient}</p>
      </>
    );
  const { balance, integrated, byChance } = rollGradient;
  return (
    <>
      <h3>{words.rollHead}</h3>
      <p class="gradient">
        <strong>{words.gradient(plusMinus(rollGradient, "rollGradient", 2, reader))}</strong>{" "}
        {model !== undefined && words.predicted(car.name, format("rollGradient", model, 2))}
      </p>
      <p class="note">
        {words.ways(gradientText(balance), gradientText(integrated))}{" "}
        {byChance < 0.05 && words.apart}
      </p>
      {isOwn.value ? (
        <Button id="ride-take" work={() => void takeReading(rollGradient)}>
          {words.take(car.name)}
        </Button>
      ) : (
        <p class="note">{words.forDemo}</p>
      )}
    </>
  );
}

const orBlank = (value: number | undefined, text: (value: number) => string) =>
  value === undefined ? "" : text(value);

function Numbers({ corners }: { readonly corners: readonly RideCorner[] }) {
  const angle = (value: number) => format("angle", value, 2);
  const rows = corners.map((one, i) => [
    words.corner(i + 1, one.way),
    orBlank(one.entrySpeed, (value) => format("speed", value, 0)),
    format("acceleration", one.peak, 1),
    orBlank(one.steady, (value) => format("acceleration", value, 1)),
    format("yawRate", one.rollRate, 1),
    orBlank(one.roll.balance, angle),
    orBlank(one.roll.integrated, angle),
  ]);
  return (
    <Fold id="ride-numbers" title={words.numbersHead}>
      <Table label={words.numbersHead} columns={words.columns} rows={rows} />
    </Fold>
  );
}

function Phone({ facts }: { readonly facts: RideFacts }) {
  const { satellites, speedsLeftOut, rest, mounting } = facts;
  return (
    <p class="note">
      {speedsLeftOut && words.speedsLeftOut}{" "}
      {satellites &&
        words.lag(format("time", satellites.lag, 1), format("speed", satellites.scatter, 1))}{" "}
      {words.rest(format("time", rest.duration, 0))} {!mounting.sidesKnown && words.sidesUnknown}
    </p>
  );
}

/** What the ride that is looked at tells. */
export function Result() {
  const ride = rides.value?.find(({ id }) => id === chosen.value?.id);
  if (ride === undefined) return null;
  const { told, refused } = outcome.value ?? {};
  return (
    <>
      <h2>{words.resultHead(nameOf(ride))}</h2>
      <HeldAgainst />
      {refused !== undefined && <p class="fault">{words.cannot(refused)}</p>}
      {outcome.value === undefined && <p role="status">{words.working}</p>}
      {told && (
        <>
          <Verdict told={told} />
          <Corners told={told} />
          <Roll facts={told.facts} />
          <Numbers corners={told.facts.corners} />
          <Phone facts={told.facts} />
        </>
      )}
    </>
  );
}

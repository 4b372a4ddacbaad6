import { type Car, type CarClass, demoCar, type FixedRule } from "@rollbook/lib";
import { format, ownCars } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { factName, factStanding, fixedLevers } from "../../../say/class-rules.js";
import { carWords } from "../../../say/your-car/cars.js";
import { classWords as words } from "../../../say/your-car/classes.js";
import { chosenClass, classesNow } from "../../../store/classes.js";
import { Button } from "../../../ui/button.js";
import { Fold } from "../../../ui/fold.js";
import { List } from "../../../ui/list.js";
import { beginFromBase, classAsFile, factsIn, goBy, removeClass } from "../state/classes.js";
import { handOn } from "../state/hand-on.js";

/** The classes of this device: which the course goes by, and the cars against its rules. */
export function ClassPart() {
  const { classes } = classesNow();
  const chosen = chosenClass();
  if (classes.length === 0) return null;
  return (
    <section class="cars classes" aria-labelledby="class-title">
      <h2 id="class-title">{words.title}</h2>
      <fieldset>
        <legend>{words.goesBy}</legend>
        <ul>
          <li>
            <Choice name="" told={words.none} chosen={chosen === undefined} />
          </li>
          {classes.map((one) => (
            <ClassLine
              key={one.name}
              one={one}
              chosen={one === chosen || one.name === chosen?.name}
            />
          ))}
        </ul>
      </fieldset>
      {chosen && <Chosen carClass={chosen} />}
    </section>
  );
}

function Choice({
  name,
  told,
  chosen,
}: {
  readonly name: string;
  readonly told: string;
  readonly chosen: boolean;
}) {
  return (
    <label>
      <input
        type="radio"
        name="class"
        value={name}
        checked={chosen}
        onChange={() => void goBy(name === "" ? undefined : name)}
      />
      <span>
        {name === "" ? (
          told
        ) : (
          <>
            <b>{name}</b> <small>{told}</small>
          </>
        )}
      </span>
    </label>
  );
}

function ClassLine({ one, chosen }: { readonly one: CarClass; readonly chosen: boolean }) {
  const { name, rules } = one;
  const named = (text: string, work: () => void) => (
    <Button aria-label={`${text}: ${name}`} work={work}>
      {text}
    </Button>
  );
  return (
    <li>
      <Choice name={name} told={words.rules(rules.length)} chosen={chosen} />
      <span class="doing">
        {named(carWords.asFile, () => classAsFile(one))}
        {named(words.handOn, () => handOn({ what: "class", of: one }))}
        {named(carWords.remove, () => void removeClass(one))}
      </span>
    </li>
  );
}

function Chosen({ carClass }: { readonly carClass: CarClass }) {
  const { baseCar, notes } = carClass;
  return (
    <>
      {notes !== undefined && <p class="note">{notes}</p>}
      <p class="note">{words.caution}</p>
      <Against carClass={carClass} cars={[demoCar, ...ownCars.now.value.cars]} />
      <Fixed carClass={carClass} />
      <Meeting carClass={carClass} />
      {baseCar && (
        <p class="doing">
          <Button work={() => beginFromBase(baseCar)}>{words.begin(baseCar.name)}</Button>
        </p>
      )}
    </>
  );
}

interface Cars {
  readonly carClass: CarClass;
  readonly cars: readonly Car[];
}

/** Each car: that it holds every rule, or which it breaks and by how much. */
function Against({ carClass, cars }: Cars) {
  return (
    <>
      <h3>{words.inClass}</h3>
      {cars.map((car) => (
        <CarAgainst key={car.name} car={car} carClass={carClass} />
      ))}
    </>
  );
}

function CarAgainst({ car, carClass }: { readonly car: Car; readonly carClass: CarClass }) {
  const key = JSON.stringify(carClass.rules);
  const facts = useMemo(() => factsIn(car, carClass), [car, key]);
  const broken = facts?.filter(({ held }) => !held) ?? [];
  const well = facts === undefined ? words.cannotStand : words.held;
  return (
    <div class="against">
      <b>{car.name}</b>
      {broken.length === 0 ? (
        <> {well}</>
      ) : (
        <List
          texts={broken.map((fact) => `${factName(fact, format)}: ${factStanding(fact, format)}`)}
        />
      )}
    </div>
  );
}

function Fixed({ carClass: { rules } }: { readonly carClass: CarClass }) {
  const fixed = rules.filter((rule): rule is FixedRule => rule.kind === "fixed");
  if (fixed.length === 0) return null;
  return (
    <>
      <h3>{words.fixed}</h3>
      <List texts={fixed.map(fixedLevers)} />
    </>
  );
}

/** Where the class meets, and what is read out there. */
function Meeting({ carClass: { venue, briefing, course } }: { readonly carClass: CarClass }) {
  const lines = (briefing ?? "").split("\n").filter((line) => line.trim() !== "");
  return (
    <>
      {venue && (
        <p>
          {words.venue}: <b>{venue.name}</b>
          {venue.notes !== undefined && ` (${venue.notes})`}
        </p>
      )}
      {lines.length > 0 && (
        <Fold id="class-briefing" title={words.briefing}>
          {lines.map((line, i) => (
            <p key={i}>{line}</p>
          ))}
        </Fold>
      )}
      {course !== undefined && (
        <p>
          {words.course}:{" "}
          <a href={course} rel="noopener noreferrer">
            {course}
          </a>
        </p>
      )}
    </>
  );
}

import type { ComponentChildren } from "preact";
import { logNow } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { canFile, type Draft, isFiled } from "../day/draft.js";
import { dayNow, fileDay } from "../day/open-day.js";
import { DayToPhones } from "../handing/day-to-phones.js";
import { sayKept } from "../parts/say-kept.js";
import { views } from "../route.js";
import { words } from "../words.js";
import { Candidates } from "./candidates.js";
import { CarsAndMinutes } from "./cars.js";
import { DayChooser } from "./day-chooser.js";
import { People } from "./people.js";
import { RotationTable } from "./rotation-table.js";
import { Sequence } from "./sequence.js";
import { VenueEditor } from "./venue.js";

const { plan } = words;

/** Car, place, time, people and runs of a day. */
export function Plan({ open }: { readonly open: boolean }) {
  const day = dayNow.value;
  return (
    <>
      <h2 tabIndex={-1}>{words.views.plan}</h2>
      <DayChooser />
      {day === undefined ? <FirstLook /> : <DayParts day={day} open={open} />}
    </>
  );
}

/** What an instructor reads who has no day open: what the buttons give, and what the views are for. */
function FirstLook() {
  return (
    <>
      <p>{plan.exampleGives}</p>
      <p>{plan.newDayGives}</p>
      <ol>
        {views.map((name) => (
          <li key={name}>
            <b>{words.views[name]}</b>
            {` ${words.about[name]}`}
          </li>
        ))}
      </ol>
    </>
  );
}

function DayParts({ day, open }: { readonly day: Draft; readonly open: boolean }) {
  const { drivers, steps, venue } = day;
  return (
    <>
      <p class="only-print">{factsOf(day)}</p>
      <Part title={plan.who}>
        <People day={day} />
        <CarsAndMinutes day={day} />
      </Part>
      <Part title={plan.venue}>
        <VenueEditor venue={venue} />
      </Part>
      <Part title={plan.sequence}>
        <Sequence day={day} open={open} />
        <Candidates day={day} open={open} />
      </Part>
      {drivers.length > 1 && steps.length > 0 && (
        <Part title={plan.rotation}>
          <RotationTable day={day} />
        </Part>
      )}
      <div class="filing-plan">
        <Filing day={day} />
      </div>
    </>
  );
}

function Part({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="part">
      <h3>{title}</h3>
      {children}
    </div>
  );
}

/** The day in a sentence, for paper, where the fields are left out. */
const factsOf = ({ name, car, venue, minutes, cars, drivers }: Draft): string =>
  `${name}: ${words.sheets.facts(car.name, venue.name, words.hours(minutes), cars, drivers.length)}`;

/** Whether the log has the plan, and a button that files it. */
function Filing({ day }: { readonly day: Draft }) {
  if (isFiled(day, logNow.value))
    return (
      <>
        <p class="quiet">{plan.filed}</p>
        <DayToPhones />
      </>
    );
  if (!canFile(day)) return <p class="quiet">{plan.cannotFile}</p>;
  const file = () => {
    fileDay();
    sayKept(plan.filed);
  };
  return (
    <>
      <p class="quiet">{plan.notFiled}</p>
      <Button id="file-plan" work={file}>
        {plan.file}
      </Button>
    </>
  );
}

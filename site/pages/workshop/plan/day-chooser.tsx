import type { EventEntry } from "@rollbook/lib";
import { logNow } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import { daysOf } from "../day/draft.js";
import { openExample } from "../day/example.js";
import { openDay, openFiled, theDay } from "../day/open-day.js";
import { words } from "../words.js";
import { newDay } from "./new-day.js";

const { plan } = words;

function example(): void {
  openExample();
  say(plan.exampleOpen);
}

function start(): void {
  openDay(newDay());
  say(plan.dayOpened(plan.newName));
}

/** Opens the example, a new day, or one of the log. */
export function DayChooser() {
  const days = daysOf(logNow.value).filter(({ id }) => id !== theDay()?.event);
  return (
    <div class="day-chooser">
      <Button id="open-example" work={example}>
        {plan.example}
      </Button>
      <Button id="new-day" work={start}>
        {plan.newDay}
      </Button>
      {days.length > 0 && <OtherDays days={days} />}
    </div>
  );
}

function OtherDays({ days }: { readonly days: readonly EventEntry[] }) {
  const choose = (select: HTMLSelectElement) => {
    const day = days.find(({ id }) => id === select.value);
    select.value = "";
    if (day !== undefined) say(openFiled(day) ? plan.dayOpened(day.name) : plan.carMissing);
  };
  return (
    <label for="other-day">
      {plan.otherDay}{" "}
      <select id="other-day" onChange={({ currentTarget }) => choose(currentTarget)}>
        <option value="">{plan.choose}</option>
        {days.map(({ id, name, at }) => (
          <option key={id} value={id}>
            {`${name} (${at.slice(0, 10)})`}
          </option>
        ))}
      </select>
    </label>
  );
}

import { gradeOf, parameters, type VenueCorner } from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import { toDoInWords } from "../../../say/plan.js";
import { List } from "../../../ui/list.js";
import { Table } from "../../../ui/table.js";
import { carTitle } from "../day/car-names.js";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";
import { ClassBriefing } from "./class-briefing.js";
import { type CarRun, carsIn, type OfDay, Paper } from "./paper.js";

const { sheets: said, safety } = words;

/** What everybody gets: the idea, the runs without what to expect of them, the corners, how to report. */
export function HandOut({ day, rows, sheets }: OfDay) {
  return (
    <Paper day={day} title={day.name}>
      <h4>{said.idea}</h4>
      <p>{said.ideaText}</p>
      <h4>{said.runs}</h4>
      <ol class="plain">
        {rows.map(({ run }) => (
          <li key={run}>
            {carsIn(sheets, run).map((one) => (
              <RunOfCar key={one.car} day={day} one={one} />
            ))}
          </li>
        ))}
      </ol>
      <h4>{said.corners}</h4>
      <Table
        label={said.corners}
        columns={Object.values(said.cornerColumns)}
        rows={day.venue.corners.map(cornerRow)}
      />
      <h4>{said.howToReport}</h4>
      <List texts={said.reportLines} />
      <ClassBriefing />
      <h4>{said.safety}</h4>
      <List texts={[safety.first, safety.stop, safety.rules]} />
    </Paper>
  );
}

function RunOfCar({ day, one: { car, row } }: { readonly day: Draft; readonly one: CarRun }) {
  const toDo = toDoInWords(row, reader).join("; ");
  const whose = carTitle(day, car);
  return (
    <p class="run-of-car">
      {whose !== undefined && `${whose}. `}
      <b>{words.run.kinds[row.step.kind]}</b>
      {toDo === "" ? "" : `: ${toDo}`}
      {row.step.on === "circle" && ` (${words.plan.onCircle})`}
    </p>
  );
}

function cornerRow(corner: VenueCorner): string[] {
  const { name, direction, radius, speed, surface = "smooth" } = corner;
  const { cornerRadius, speed: anySpeed } = parameters;
  return [
    name,
    words[direction],
    format(cornerRadius.quantity, radius, cornerRadius.decimals),
    format(anySpeed.quantity, speed, anySpeed.decimals),
    gradeOf(corner),
    words.plan.surfaces[surface],
  ];
}

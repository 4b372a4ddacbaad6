import { List } from "../../../ui/list.js";
import { words } from "../words.js";
import { ClassBriefing } from "./class-briefing.js";
import { Blank, type OfDay, Paper } from "./paper.js";

const { sheets: said } = words;

/** What is said before anybody drives, with lines for what only the venue can say. */
export function Briefing({ day }: OfDay) {
  return (
    <Paper day={day} title={said.kinds.briefing}>
      <p>{said.briefingFirst}</p>
      <List texts={said.briefingLines} />
      <ClassBriefing />
      {said.briefingBlanks.map((label) => (
        <Blank key={label} label={label} />
      ))}
      {day.venue.notes !== undefined && <p>{day.venue.notes}</p>}
    </Paper>
  );
}

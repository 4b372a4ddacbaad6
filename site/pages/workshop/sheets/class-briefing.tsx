import { classWords } from "../../../say/your-car/classes.js";
import { chosenClass } from "../../../store/classes.js";

/** What the class says before the first run; nothing where the course goes by none that says any. */
export function ClassBriefing() {
  const { name, briefing } = chosenClass() ?? {};
  if (name === undefined || briefing === undefined) return null;
  return (
    <>
      <h4>{classWords.briefingOf(name)}</h4>
      {classWords.lines(briefing).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

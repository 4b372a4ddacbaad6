import { Wall } from "../../../ui/wall.js";
import { useWhileOpen } from "../../../ui/while-open.js";
import { theDay } from "../day/open-day.js";
import { NoDay } from "../parts/no-day.js";
import { words } from "../words.js";
import { AskedToAll } from "./asked-to-all.js";
import { ForInstructor, ForTheWall, OnTheCars, ReportsIn, WhoDrives } from "./at-hand.js";
import { RunButtons, StageButtons, StageList } from "./controls.js";
import { Behind, Time } from "./face.js";
import { SlipGrid } from "./grid.js";
import { Happenings, Road } from "./happenings.js";
import { Late } from "./late.js";
import { Note } from "./note.js";
import { QuestionAtHand } from "./question-at-hand.js";
import { type AtHand, atHand } from "./state.js";
import { VoteWithCards } from "./vote.js";
import { chosenQuestion } from "./vote-state.js";

const { run: said } = words;

/** The clock, what is done and who is out. */
function Step({ at }: { readonly at: AtHand }) {
  const { row, rows, cars } = at;
  return (
    <div>
      <h3>
        {cars.length > 1
          ? said.title(row.run, rows.length)
          : `${said.title(row.run, rows.length)}: ${said.kinds[row.step.kind]}`}
      </h3>
      <RunButtons at={at} />
      <div class="at-hand">
        <div>
          <Time at={at} />
          <Behind at={at} />
          <Late at={at} />
          <StageButtons at={at} />
          <StageList at={at} />
        </div>
        <div>
          <ForInstructor at={at} />
          <QuestionAtHand at={at} />
          <OnTheCars at={at} />
        </div>
        <div>
          <h3>{said.drives}</h3>
          <WhoDrives at={at} />
          <h3>{said.reports}</h3>
          <ReportsIn at={at} />
          <Road at={at} />
        </div>
      </div>
    </div>
  );
}

/** What a room sees: the step at hand and what is put to the vote. */
function RunWall({ at }: { readonly at: AtHand }) {
  const asked = chosenQuestion();
  return (
    <Wall label={said.wall} opener="open-wall">
      <ForTheWall at={at} />
      <div class="wall-question">{asked && <AskedToAll asked={asked} />}</div>
    </Wall>
  );
}

/** The clock, the step at hand, notes and votes. A plan that is edited elsewhere is worked out when it is looked at. */
export function RunView({ open }: { readonly open: boolean }) {
  return useWhileOpen(open, () => {
    const at = atHand.value;
    return (
      <>
        <h2 tabIndex={-1}>{words.views.run}</h2>
        {at === undefined ? (
          <NoDay sentence={theDay() === undefined ? undefined : said.noRuns} />
        ) : (
          <>
            <Step at={at} />
            <Happenings at={at} />
            <SlipGrid at={at} />
            <VoteWithCards />
            <Note />
            <RunWall at={at} />
          </>
        )}
        <p class="note">
          <a href="ride.html">{said.rideAlong}</a>
        </p>
      </>
    );
  });
}

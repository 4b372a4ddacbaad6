import {
  freeName,
  isTakenName,
  type Venue,
  withCorner,
  withCornerMoved,
  withoutCorner,
} from "@rollbook/lib";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { Fold } from "../../../ui/fold.js";
import { say } from "../../../ui/notice.js";
import { edit, theDay } from "../day/open-day.js";
import { words } from "../words.js";
import { CornerFields, type CornerWork } from "./corner.js";
import { plainCorner } from "./new-day.js";
import { faultOfName, trimmed } from "./people.js";
import { PlanText } from "./plan-fields.js";

const { plan } = words;
const MOST_CORNERS = 60;

const setVenue = (with_: (venue: Venue) => Venue): void =>
  edit((day) => ({ ...day, venue: with_(day.venue) }));

/** The place and its corners, folded: most days they are only read. */
export function VenueEditor({ venue }: { readonly venue: Venue }) {
  const { name, notes = "", corners } = venue;
  return (
    <Fold id="venue" title={plan.cornerCount(name, corners.length)}>
      <PlanText
        id="venue-name"
        label={plan.venueName}
        value={name}
        tidy={trimmed}
        faultOf={faultOfName}
        take={(name) => setVenue((now) => ({ ...now, name }))}
      />
      <PlanText
        id="venue-notes"
        label={plan.venueNotes}
        lines
        value={notes}
        tidy={(text) => (text.trim() === "" ? "" : text)}
        take={(text) => setVenue((now) => withNotes(now, text))}
      />
      <div class="corners" id="corners">
        {corners.map((corner, i) => (
          <CornerFields
            key={i}
            corner={corner}
            id={`corner-${i}`}
            title={`${i + 1}`}
            work={workOn(i)}
          />
        ))}
        <Button id="corner-add" work={addCorner}>
          {plan.addCorner}
        </Button>
      </div>
    </Fold>
  );
}

const withNotes = ({ notes: _, ...venue }: Venue, notes: string): Venue =>
  notes === "" ? venue : { ...venue, notes };

function workOn(index: number): CornerWork {
  return {
    set: (part) =>
      setVenue((venue) => {
        const corner = venue.corners[index];
        return corner === undefined ? venue : withCorner(venue, index, { ...corner, ...part });
      }),
    move: (by) => {
      setVenue((venue) => withCornerMoved(venue, index, by));
      focusSoon(`#corner-${index + by}-${by < 0 ? "up" : "down"}`);
    },
    remove: () => removeCorner(index),
    isTaken: (name) => isTakenName(theDay()?.venue ?? { name: "", corners: [] }, index, name),
  };
}

function removeCorner(index: number): void {
  const before = theDay()?.venue;
  if (before === undefined || before.corners.length < 2) return;
  setVenue((venue) => withoutCorner(venue, index));
  focusSoon("#corner-add");
  say(plan.removed(before.corners[index]?.name ?? ""), () => setVenue(() => before));
}

function addCorner(): void {
  const venue = theDay()?.venue;
  if (venue === undefined || venue.corners.length >= MOST_CORNERS) return;
  const corner = plainCorner(freeName(venue, plan.corner));
  setVenue((now) => ({ ...now, corners: [...now.corners, corner] }));
  focusSoon(`#corner-${venue.corners.length}-name`);
}

import { type Drives, namedDrives } from "@rollbook/lib";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import type { Round } from "../state.js";
import { Part } from "./part.js";
import { Traces } from "./traces.js";

const isCutShort = (drives: Drives) =>
  namedDrives(drives).some(([, { search }]) => search === "cut short");

/** The drives of a round, the known car first. */
export function DrivePart({ round, drive }: { readonly round: Round; readonly drive: () => void }) {
  const { drives } = round;
  const step = drives === undefined ? 0 : drives.changed === undefined ? 1 : 2;
  return (
    <Part id="drive" heading={words.drives} step={step}>
      <p>{words.ready}</p>
      {drives === undefined ? (
        <Button id="drive-known" large work={drive}>
          {words.driveKnown}
        </Button>
      ) : (
        <Traces round={round} drives={drives} />
      )}
      {drives && isCutShort(drives) && <p>{words.cutShort}</p>}
      {step === 1 && (
        <Button id="drive-changed" large work={drive}>
          {words.driveChanged}
        </Button>
      )}
    </Part>
  );
}

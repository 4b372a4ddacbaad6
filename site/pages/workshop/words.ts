import { ballot } from "../../say/workshop/ballot.js";
import { grid } from "../../say/workshop/grid.js";
import { happen } from "../../say/workshop/happen.js";
import { log } from "../../say/workshop/log.js";
import { paddock } from "../../say/workshop/paddock.js";
import { plan } from "../../say/workshop/plan.js";
import { report } from "../../say/workshop/report.js";
import { run } from "../../say/workshop/run.js";
import { safety } from "../../say/workshop/safety.js";
import { scan } from "../../say/workshop/scan.js";
import { sheets } from "../../say/workshop/sheets.js";
import { talk } from "../../say/workshop/talk.js";
import { handing } from "./words/handing.js";
import { page } from "./words/page.js";

/** Every word that the workshop says of itself, apart from code so that it can be translated. */
export const words = {
  ...page,
  plan,
  sheets,
  safety,
  run,
  report,
  talk,
  log,
  handing,
  happen,
  paddock,
  scan,
  ballot,
  grid,
} as const;

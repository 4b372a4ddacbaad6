import { handing } from "./words/handing.js";
import { log } from "./words/log.js";
import { page } from "./words/page.js";
import { plan } from "./words/plan.js";
import { report } from "./words/report.js";
import { run } from "./words/run.js";
import { safety } from "./words/safety.js";
import { sheets } from "./words/sheets.js";
import { talk } from "./words/talk.js";

/** Every word that the workshop says of itself, apart from code so that it can be translated. */
export const words = { ...page, plan, sheets, safety, run, report, talk, log, handing } as const;

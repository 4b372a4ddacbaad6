import { log } from "../../say/workshop/log.js";
import { report } from "../../say/workshop/report.js";
import { run } from "../../say/workshop/run.js";
import { talk } from "../../say/workshop/talk.js";
import { handing } from "./words/handing.js";
import { page } from "./words/page.js";
import { plan } from "./words/plan.js";
import { safety } from "./words/safety.js";
import { sheets } from "./words/sheets.js";

/** Every word that the workshop says of itself, apart from code so that it can be translated. */
export const words = { ...page, plan, sheets, safety, run, report, talk, log, handing } as const;

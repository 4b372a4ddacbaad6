import type { Log } from "@rollbook/lib";
import { log as said } from "../../../say/workshop/log.js";
import { logNow } from "../../../store/log.js";
import { useWhileOpen } from "../../../ui/while-open.js";
import { words } from "../words.js";
import { Attention } from "./attention.js";
import { Files } from "./files.js";
import { Forget } from "./forget.js";
import { Reports } from "./reports.js";
import { Runs } from "./runs.js";
import { SetUps } from "./set-ups.js";
import { Spoken } from "./spoken.js";
import { Versions } from "./versions.js";

/** All that was written, to be looked at, mended, taken along and taken in. */
export function LogView({ open }: { readonly open: boolean }) {
  return useWhileOpen(open, () => (
    <>
      <h2 tabIndex={-1}>{words.views.log}</h2>
      <p class="quiet">{said.holds(logNow.value.entries.length)}</p>
      <Files />
      <Entries log={logNow.value} />
    </>
  ));
}

function Entries({ log }: { readonly log: Log }) {
  return (
    <>
      <Attention log={log} />
      <SetUps log={log} />
      <Runs log={log} />
      <Reports log={log} />
      <Spoken log={log} />
      <Versions log={log} />
      <Forget />
    </>
  );
}

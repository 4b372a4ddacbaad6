/** What this kernel has run so far, as it ran: a figure that lives in a front end is made of it. */
import { Session } from "node:inspector";
import vm from "node:vm";
import { type Piece, pieceOf } from "./pieces.js";

const opening = /^\((async )?function\(exports, require\) \{ /;
const closing = "\n})(__tslab__.exports, __tslab__.require)";

const pieces: Piece[] = [];
let runs = 0;

function take(script: string): Piece | undefined {
  const [head, isAsync] = opening.exec(script) ?? [];
  if (head === undefined || !script.endsWith(closing)) return undefined;
  const piece = pieceOf(script.slice(head.length, -closing.length), isAsync !== undefined);
  pieces.push(piece);
  runs += 1;
  return piece;
}

/** Scripts that ran before anybody followed: of these the engine alone has the text. */
function takeEarlier(): void {
  const session = new Session();
  session.connect();
  const found: string[] = [];
  session.on("Debugger.scriptParsed", ({ params: { url, scriptId } }) => {
    if (url === "evalmachine.<anonymous>") found.push(scriptId);
  });
  session.post("Debugger.enable");
  for (const scriptId of found)
    session.post("Debugger.getScriptSource", { scriptId }, (fault, told) => {
      if (!fault) take(told.scriptSource);
    });
  session.disconnect();
}

/** Follows what the kernel runs from here on; `onImport` is called for a cell that imports these helpers. */
export function followSession(onImport: () => void): void {
  takeEarlier();
  const run = vm.runInThisContext;
  vm.runInThisContext = (code, options) => {
    if (take(code)?.imports.includes("@rollbook/cells")) onImport();
    return run(code, options);
  };
}

/** The cell that runs now with those before it that it needs, and the number of its run. */
export const presentRun = (): { readonly run: number; readonly pieces: readonly Piece[] } => ({
  run: runs,
  pieces,
});

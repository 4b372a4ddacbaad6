import type { Progress } from "../kernel/run.js";

/** Says how far each notebook is: a line that moves in a terminal, a line a notebook elsewhere. */
export function progressTo(stream: NodeJS.WriteStream): Progress {
  const counts = new Map<string, string>();
  return ({ name }, done, total) => {
    counts.set(name, `${name} ${done}/${total}`);
    const finished = done === total;
    if (stream.isTTY) {
      const running = [...counts.values()].join("  ");
      stream.write(`\r\u001b[K${finished ? `${name} ran ${total} cells\n` : running}`);
    } else if (finished) {
      stream.write(`${name} ran ${total} cells\n`);
    }
    if (finished) counts.delete(name);
  };
}

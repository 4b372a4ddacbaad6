import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { vi } from "vitest";
import { freePort } from "../../../../site/commands/free-port.js";
import { debianPython } from "../../../../site/commands/needs.js";
import { environment, shelf } from "./executed.js";

/** A real server of the classic notebook, on this machine alone. */
export async function startClassic(): Promise<{ url: string; stop(): void }> {
  const port = await freePort();
  const options = [
    ...["--no-browser", "--allow-root", "--ip=127.0.0.1", `--port=${port}`],
    ...["--NotebookApp.token=", "--NotebookApp.password=", `--notebook-dir=${shelf}`],
  ];
  const server: ChildProcess = spawn(debianPython, ["-m", "notebook", ...options], {
    ...{ env: environment, stdio: "ignore" },
  });
  const url = `http://127.0.0.1:${port}`;
  const answers = async () => (await fetch(`${url}/api`)).ok;
  await vi.waitUntil(() => answers().catch(() => false), { timeout: 120_000, interval: 200 });
  return { url, stop: () => void server.kill("SIGTERM") };
}

/** The static page that nbconvert makes of a notebook. */
export function exported(name: string): string {
  const args = ["-m", "nbconvert", "--to", "html", "--output", "static", `${shelf}/${name}.ipynb`];
  spawnSync(debianPython, args, { env: environment, stdio: "ignore" });
  return `file://${shelf}/static.html`;
}

/** What the tests need from the machine besides npm's packages. */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { CourseError } from "../build/notebook.js";

/** Debian's Python, whose packages apt installs; another Python on the path would not see them. */
export const debianPython = "/usr/bin/python3";

const firstOf = (paths: readonly (string | undefined)[]): string | undefined =>
  paths.find((path) => path !== undefined && existsSync(path));

const shell = "/usr/bin/chromium-headless-shell";
const withWindows = [
  process.env.CHROMIUM_PATH,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** Path of a Chromium on this machine, if there is one. */
export const chromiumPath = (): string | undefined => firstOf([...withWindows, shell]);

/** One without windows where there is one: it opens a page in a third of the time. */
export const quickChromiumPath = (): string | undefined =>
  firstOf([process.env.CHROMIUM_PATH, shell]) ?? chromiumPath();

/** Path of Firefox, the second engine; its tests are left out where there is none. */
export const firefoxPath = (): string | undefined =>
  firstOf([
    process.env.FIREFOX_PATH,
    "/usr/bin/firefox-esr",
    "/usr/bin/firefox",
    "/Applications/Firefox.app/Contents/MacOS/firefox",
  ]);

const hasJupyterClient = (): boolean =>
  spawnSync(debianPython, ["-c", "import nbclient, jupyter_core"]).status === 0;

/** Whether Debian's classic notebook is there, the front end that the tests start. */
export const hasClassicNotebook = (): boolean =>
  spawnSync(debianPython, ["-c", "import notebook.notebookapp, nbconvert"]).status === 0;

const hasScipy = (): boolean =>
  spawnSync(debianPython, ["-c", "import scipy.optimize"]).status === 0;

/** Path of nginx, for the one test that runs it; it is skipped where there is none. */
export const nginxPath = (): string | undefined => firstOf(["/usr/sbin/nginx", "/usr/bin/nginx"]);

/** What tests use, the Debian packages that bring it, and what becomes of the tests without it. */
interface Tool {
  readonly packages: readonly string[];
  readonly there: () => boolean;
  /** Said where it cannot be had; tools without a sentence are needed. */
  readonly without?: string;
}

const forTests: readonly Tool[] = [
  {
    packages: ["chromium-headless-shell", "fonts-liberation"],
    there: () => firstOf([process.env.CHROMIUM_PATH, shell]) !== undefined,
    without: "the tests take a Chromium with windows and a third longer",
  },
  { packages: ["chromium", "fonts-liberation"], there: () => chromiumPath() !== undefined },
  {
    packages: ["firefox-esr"],
    there: () => firefoxPath() !== undefined,
    without: "the course is tried in Chromium alone",
  },
  { packages: ["jupyter-core", "python3-nbclient"], there: hasJupyterClient },
  {
    packages: ["python3-notebook"],
    there: hasClassicNotebook,
    without: "notebooks are tried in JupyterLab's renderer alone, not in the classic front end",
  },
  { packages: ["python3-scipy"], there: hasScipy },
  {
    packages: ["nginx"],
    there: () => nginxPath() !== undefined,
    without: "the test of docs/hosting.md is left out",
  },
];

const forBenchmark: readonly Tool[] = [
  {
    packages: ["chromium", "fonts-liberation"],
    there: () => firstOf(withWindows) !== undefined,
    without: "pages are measured in a Chromium without windows",
  },
];

const permitted = (): boolean => process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");

const apt = (...args: string[]) =>
  spawnSync("apt-get", args, {
    stdio: ["ignore", "ignore", "inherit"],
    // Run level 1: what is installed is not started as a service.
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive", RUNLEVEL: "1" },
  });

/** Installs each missing tool from Debian where that is permitted; else, or where one cannot be had, says so. */
function ensure(tools: readonly Tool[]): void {
  if (permitted() && tools.some(({ there }) => !there())) apt("update", "-qq");
  for (const { packages, there, without } of tools) {
    if (there()) continue;
    if (permitted()) {
      console.log(`Installing ${packages.join(", ")} …`);
      apt("install", "-y", "-qq", "--no-install-recommends", ...packages);
      if (there()) continue;
    }
    const names = packages.join(" ");
    if (without === undefined)
      throw new CourseError(`The tests need ${names}; on Debian: sudo apt-get install ${names}`);
    console.log(`Without ${packages[0]}, ${without} (on Debian: sudo apt-get install ${names}).`);
  }
}

export const ensureTestTools = (): void => ensure(forTests);
export const ensureBenchmarkTools = (): void => ensure(forBenchmark);

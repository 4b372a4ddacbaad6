/** What the tests need from the machine besides npm's packages. */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { CourseError } from "../build/notebook.js";

/** Debian's Python, whose packages apt installs; another Python on the path would not see them. */
export const debianPython = "/usr/bin/python3";

const firstOf = (paths: readonly (string | undefined)[]): string | undefined =>
  paths.find((path) => path !== undefined && existsSync(path));

const shell = "/usr/bin/chromium-headless-shell";
const browsers = [
  process.env.CHROMIUM_PATH,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  shell,
];

/** Path of a Chromium on this machine, if there is one. */
export const chromiumPath = (): string | undefined => firstOf(browsers);

/** The same, but where there is one without windows that: it opens a page in a third of the time. */
export const quickChromiumPath = (): string | undefined =>
  firstOf([process.env.CHROMIUM_PATH, shell]) ?? chromiumPath();

/** Path of a Firefox, for the tests of a second engine; they are skipped where there is none. */
export const firefoxPath = (): string | undefined =>
  firstOf([
    process.env.FIREFOX_PATH,
    "/usr/bin/firefox-esr",
    "/usr/bin/firefox",
    "/Applications/Firefox.app/Contents/MacOS/firefox",
  ]);

const hasJupyterClient = (): boolean =>
  spawnSync(debianPython, ["-c", "import nbclient, jupyter_core"]).status === 0;

const hasScipy = (): boolean =>
  spawnSync(debianPython, ["-c", "import scipy.optimize"]).status === 0;

/** Path of nginx, for the one test that runs it; it is skipped where there is none. */
export const nginxPath = (): string | undefined =>
  ["/usr/sbin/nginx", "/usr/bin/nginx"].find((path) => existsSync(path));

function missingPackages(): string[] {
  const browser = chromiumPath() ? [] : ["chromium", "fonts-liberation"];
  const client = hasJupyterClient() ? [] : ["jupyter-core", "python3-nbclient"];
  const solver = hasScipy() ? [] : ["python3-scipy"];
  return [...browser, ...client, ...solver];
}

function install(packages: readonly string[]): boolean {
  const apt = (...args: string[]) =>
    spawnSync("apt-get", args, {
      stdio: "inherit",
      // Run level 1: what is installed is not started as a service.
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive", RUNLEVEL: "1" },
    }).status === 0;
  return (
    apt("update", "-qq") && apt("install", "-y", "-qq", "--no-install-recommends", ...packages)
  );
}

/** Installs what is missing from Debian where that is permitted, nginx with it; else says what to install. */
export function ensureTestTools(): void {
  const missing = missingPackages();
  if (missing.length === 0) return;
  const wanted = nginxPath() ? missing : [...missing, "nginx"];
  const permitted = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (permitted) console.log(`Installing ${wanted.join(", ")} …`);
  if (permitted && install(wanted) && missingPackages().length === 0) return;
  throw new CourseError(
    `The tests need ${missing.join(", ")}; on Debian, run: sudo apt-get install ${missing.join(" ")}`,
  );
}

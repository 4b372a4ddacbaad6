// The way in for every npm script. Plain JavaScript on Node's own modules alone, since on a fresh
// clone it runs before anything is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const [command, ...rest] = process.argv.slice(2);

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}

function run(program, args, whenItFails) {
  const shell = process.platform === "win32" && program === "npm";
  const { status, error } = spawnSync(program, args, { cwd: root, stdio: "inherit", shell });
  if (error) stop(`${whenItFails} (${error.message})`);
  return status ?? 1;
}

function needNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    stop(`Rollbook needs Node 20.19 or newer; this is ${process.version}.`);
  }
}

/** Installs what the lock file names, unless that was done since the lock file last changed. */
function needPackages() {
  const lock = createHash("sha256")
    .update(readFileSync(`${root}package-lock.json`))
    .digest("hex");
  const stamp = `${root}node_modules/.rollbook-installed`;
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  console.log("Installing packages …");
  const failed = "npm ci did not finish; is the npm registry within reach?";
  if (run("npm", ["ci", "--no-fund", "--no-audit", "--loglevel=error"], failed) !== 0) stop(failed);
  writeFileSync(stamp, lock);
}

function compilePackages() {
  const tsc = `${root}node_modules/typescript/bin/tsc`;
  const failed = "lib and site/cells do not compile; the lines above say where.";
  if (run(process.execPath, [tsc, "-b", "lib", "site/cells"], failed) !== 0) stop(failed);
  const notBundled = "What notebooks carry was not bundled; the lines above say why.";
  if (run(process.execPath, [`${root}site/cells/bundle.mjs`], notBundled) !== 0) stop(notBundled);
}

needNode();
needPackages();
compilePackages();
const script = `${root}site/commands/${command}.ts`;
if (!existsSync(script)) stop(`There is no command ${command}.`);
process.exit(
  run(process.execPath, ["--import", "tsx", script, ...rest], `${command} did not start`),
);

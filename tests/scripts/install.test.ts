import { expect, test } from "vitest";
import { isNewEnough, whyInstall } from "../../scripts/setup/install.mjs";

const here = { os: [process.platform], cpu: [process.arch] };
const lock = {
  "": { version: "0.1.0" },
  "node_modules/a": { version: "1.0.0", integrity: "i" },
  "node_modules/a/node_modules/b": { version: "2.0.0" },
  "node_modules/here": { version: "1.0.0", optional: true, ...here },
  "node_modules/elsewhere": { version: "1.0.0", optional: true, os: ["plan9"] },
  "node_modules/maybe": { version: "1.0.0", optional: true },
};
const installed = {
  "node_modules/a": lock["node_modules/a"],
  "node_modules/a/node_modules/b": lock["node_modules/a/node_modules/b"],
  "node_modules/here": lock["node_modules/here"],
};

test("nothing is installed again when everything that fits this machine is there", () => {
  expect(whyInstall(lock, installed)).toBeUndefined();
});

test("a missing, changed or unreadable part is a reason to install", () => {
  expect(whyInstall(lock, undefined)).toBe("nothing is installed");
  expect(whyInstall(undefined, installed)).toBe("package-lock.json cannot be read");
  expect(whyInstall(lock, { ...installed, "node_modules/a/node_modules/b": undefined })).toBe("b is missing");
  expect(whyInstall(lock, { ...installed, "node_modules/here": undefined })).toBe("here is missing");
  expect(whyInstall(lock, { ...installed, "node_modules/a": { version: "1.0.1", integrity: "i" } })).toBe("a is another version");
  expect(whyInstall(lock, { ...installed, "node_modules/a": { version: "1.0.0", integrity: "j" } })).toBe("a is another version");
});

test.each([
  ["v18.20.0", false],
  ["v20.20.2", false],
  ["v22.17.1", false],
  ["v22.18.0", true],
  ["v23.11.0", false],
  ["v24.0.0", true],
  ["v26.1.0", true],
])("Node %s can run the project: %s", (version, expected) => {
  expect(isNewEnough(version)).toBe(expected);
});

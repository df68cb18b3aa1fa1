/**
 * The content security policy every page carries. `frame-ancestors` has no effect in a meta element, and the pages under
 * /embed/ are made to be framed.
 * The WebAssembly of the search runs in a worker, which has a policy of its own, so that pages need no `wasm-unsafe-eval`.
 * `trusted-types default`: the one policy of src/site/trusted-scripts.ts, which lets through workers of this site and no markup.
 */
const directives: Readonly<Record<string, string>> = {
  "default-src": "'self'",
  "img-src": "'self' data: blob:",
  "base-uri": "'none'",
  "object-src": "'none'",
  "form-action": "'self'",
  "require-trusted-types-for": "'script'",
  "trusted-types": "default",
};

export const policy = Object.entries(directives)
  .map(([name, value]) => `${name} ${value}`)
  .join("; ");

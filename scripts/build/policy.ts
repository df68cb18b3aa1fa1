/**
 * What a browser may do with the pages, said once: the meta element of every page, the server of this project and the settings
 * for other servers (scripts/build/server-settings.ts) are made from it.
 */

/**
 * The content security policy every page carries.
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

function written(these: Readonly<Record<string, string>>): string {
  return Object.entries(these)
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");
}

/** As in the meta element; who may frame a page is heard in a header only. */
export const policy = written(directives);

/** Folders of the site that are not like the rest; every path is below the path of the site. */
export const folders = {
  /** Pages that are made to stand in a frame of another site, in every language. */
  framed: ["embed/", "task/", "es/embed/", "es/task/"],
  /** The search, whose worker compiles its program: a worker has the policy it was sent with, not that of its page. */
  search: ["pagefind/"],
  /** Files with a hash in their name, which never change under it. */
  hashed: ["_astro/"],
} as const;

export const policyHeader = "Content-Security-Policy";

const policies = {
  framed: policy,
  search: written({ ...directives, "script-src": "'self' 'wasm-unsafe-eval'", "frame-ancestors": "'none'" }),
  other: written({ ...directives, "frame-ancestors": "'none'" }),
};

export const cacheHeader = "Cache-Control";

const caching = {
  hashed: "public, max-age=31536000, immutable",
  /** Kept, and asked for again with its entity tag before every use: a new version is seen at once. */
  other: "no-cache",
};

/** What no page of the handbook uses. Switching these off keeps them from whatever text might get into a page. */
const unusedFeatures = [
  "accelerometer",
  "camera",
  "display-capture",
  "geolocation",
  "gyroscope",
  "magnetometer",
  "microphone",
  "midi",
  "payment",
  "usb",
];

/** The same for every file. */
export const commonHeaders: Readonly<Record<string, string>> = {
  "X-Content-Type-Options": "nosniff",
  // What was typed is in the address; a site that is linked to has no use for it.
  "Referrer-Policy": "same-origin",
  "Permissions-Policy": unusedFeatures.map((name) => `${name}=()`).join(", "),
  "Cross-Origin-Opener-Policy": "same-origin",
};

const isIn = (path: string, list: readonly string[]) => list.some((folder) => path.startsWith(folder));

/** @param path - below the path of the site, such as `bending/` or `_astro/x.js` */
export function policyFor(path: string): string {
  return isIn(path, folders.framed) ? policies.framed : isIn(path, folders.search) ? policies.search : policies.other;
}

/** @param path - below the path of the site */
export function cachingFor(path: string): string {
  return isIn(path, folders.hashed) ? caching.hashed : caching.other;
}

/**
 * Every header a server should send with a file that is there, or with the page for what is not.
 * @param path - below the path of the site; `404.html` for what is not there
 */
export function headersFor(path: string): Readonly<Record<string, string>> {
  return { ...commonHeaders, [policyHeader]: policyFor(path), [cacheHeader]: cachingFor(path) };
}

import { describe, expect, test } from "vitest";
import { headersFor, policy, policyFor } from "../../scripts/build/policy.ts";
import { caddySettings, headersFile, nginxSettings } from "../../scripts/build/server-settings.ts";

const entries = [
  ...["404.html", "_astro/", "bending/", "embed/", "es/", "index.html", "pagefind/", "sw.js", "task/"],
  ...["bending/index.html", "bending/order/", "es/index.html", "es/bending/", "es/embed/", "pagefind/pagefind.js"],
];

/** Paths of every kind below the path of the site. */
const paths = [
  "",
  "404.html",
  "_astro/x.123.js",
  "bending/",
  "bending/embed/",
  "bending/order/",
  "embed/bend-length/",
  "es/",
  "es/bending/",
  "es/embed/bend-length/",
  "pagefind/pagefind-worker.js",
  "sw.js",
  "task/",
];

type Headers = Record<string, string>;

const unquoted = (text: string) => text.replace(/^"|"$/g, "").replaceAll('\\"', '"');

/** What an nginx with these settings sends: its maps take the first pattern that fits (nginx documentation, ngx_http_map_module). */
function nginxHeaders(settings: string, uri: string): Headers {
  const maps = new Map<string, string>();
  for (const [, name = "", body = ""] of settings.matchAll(/map \$uri (\$\w+) \{\n([\s\S]*?)\n\}/g)) {
    const lines = [...body.matchAll(/^\s*("~.*?"|default) (".*");$/gm)].map(([, pattern = "", value = ""]) => ({
      pattern,
      value,
    }));
    const fits = lines.find(({ pattern }) => pattern !== "default" && new RegExp(unquoted(pattern).slice(1)).test(uri));
    maps.set(name, unquoted((fits ?? lines.find(({ pattern }) => pattern === "default"))?.value ?? ""));
  }
  return Object.fromEntries(
    [...settings.matchAll(/^\s*add_header (\S+) (.*) always;$/gm)].map(([, name = "", value = ""]) => [
      name,
      maps.get(value) ?? unquoted(value),
    ]),
  );
}

/** What a Caddy with these settings sends; fails when two lines set the same header (Caddy documentation, request matchers). */
function caddyHeaders(settings: string, uri: string): Headers {
  const served = settings.slice(0, settings.indexOf("handle_errors"));
  const found: Headers = {};
  const matches = (name: string) => {
    const [, not, list = ""] = new RegExp(`@${name} (not )?path (.*)`).exec(served) ?? [];
    const isIn = list.split(" ").some((pattern) => uri.startsWith(pattern.slice(0, -1)));
    return not ? !isIn : isIn;
  };
  for (const [, matcher, name = "", value = ""] of served.matchAll(/^\theader (?:@(\w+) )?([A-Z]\S+) (".*")$/gm)) {
    if (matcher && !matches(matcher)) continue;
    expect(found[name], `${name} of ${uri} is set twice`).toBeUndefined();
    found[name] = unquoted(value);
  }
  return found;
}

/** What a host with this headers file sends; fails unless exactly one rule fits. */
function fileHeaders(settings: string, uri: string): Headers {
  const rules = settings
    .replace(/^#.*\n/, "")
    .split("\n\n")
    .map((rule) => rule.trim().split("\n"));
  const fitting = rules.filter(([pattern = ""]) =>
    pattern.endsWith("*") ? uri.startsWith(pattern.slice(0, -1)) : uri === pattern,
  );
  expect(fitting, `rules for ${uri}`).toHaveLength(1);
  const lines = fitting[0]?.slice(1) ?? [];
  return Object.fromEntries(lines.map((line) => /^ {2}(\S+): (.*)$/.exec(line)?.slice(1) ?? []));
}

describe.each(["/", "/handbook/", "/a.b/handbook/"])("published under %s", (base) => {
  test.each(paths)("every server sends with “%s” what the definition says", (path) => {
    const wanted = headersFor(path);
    const uri = base + path;
    expect(nginxHeaders(nginxSettings(base), uri)).toEqual(wanted);
    expect(caddyHeaders(caddySettings(base), uri)).toEqual(wanted);
    expect(fileHeaders(headersFile(base, entries), uri)).toEqual(wanted);
  });
});

test("only pages that are made for it may be framed", () => {
  for (const path of ["embed/bend-length/", "es/embed/bend-length/", "task/"])
    expect(policyFor(path)).not.toMatch(/frame-ancestors/);
  for (const path of paths.filter((each) => !/^(?:es\/)?(?:embed|task)\//.test(each)))
    expect(policyFor(path)).toMatch(/frame-ancestors 'none'/);
});

test("no policy lets inline code or styles through, and all require Trusted Types", () => {
  for (const each of [policy, ...paths.map(policyFor)]) {
    expect(each).not.toMatch(/unsafe-inline|unsafe-eval(?<!wasm-unsafe-eval)|unsafe-hashes|https?:|\*/);
    expect(each).toMatch(/default-src 'self'/);
    expect(each).toMatch(/require-trusted-types-for 'script'/);
  }
  expect(paths.filter((path) => policyFor(path).includes("wasm-unsafe-eval"))).toEqual(["pagefind/pagefind-worker.js"]);
});

test("files with a hash in their name are kept for good, and everything else is asked for again", () => {
  for (const path of paths)
    expect(headersFor(path)["Cache-Control"]).toBe(
      path.startsWith("_astro/") ? "public, max-age=31536000, immutable" : "no-cache",
    );
});

import { mkdir, readdir, rm, writeFile } from "node:fs/promises";
import { basename, join, resolve } from "node:path";
import { cacheHeader, cachingFor, commonHeaders, folders, headersFor, policyFor, policyHeader } from "./policy.ts";

/** Settings for web servers, made from the one definition of the headers. They are written beside the site, not into it. */

/** A folder that stands for all of its kind. */
const example = { framed: folders.framed[0], search: folders.search[0], hashed: folders.hashed[0], other: "" } as const;

const escaped = (path: string) => path.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** A pattern for paths in some folders of the site. */
const within = (base: string, list: readonly string[]) =>
  `^${escaped(base)}(?:${list.map((folder) => escaped(folder.slice(0, -1))).join("|")})/`;

const quoted = (text: string) => `"${text.replaceAll('"', '\\"')}"`;

/** Puts a packed copy beside every file that gets smaller by it; both servers take it where it is there. */
const packing = `find /srv/handbook -type f -size +256c -regex '.*\\.\\(html\\|css\\|js\\|json\\|svg\\|webmanifest\\)' -exec gzip -9kf {} +`;

/** For a `http` block of nginx: two maps and a server. */
export function nginxSettings(base: string): string {
  const headers = Object.entries(commonHeaders).map(([name, value]) => `  add_header ${name} ${quoted(value)} always;`);
  const location =
    base === "/"
      ? "  location / {\n    root /srv/handbook;\n    index index.html;\n  }"
      : `  location ${base} {\n    alias /srv/handbook/;\n    index index.html;\n  }`;
  return `# Made by the build from scripts/build/policy.ts. Put it where nginx includes files into its http block, for instance
# /etc/nginx/conf.d/handbook.conf, with your own server_name, certificate and folder.
#
# Where many visit, pack the files once instead of at every visit, each time the site is put there:
#   ${packing}

map $uri $handbook_policy {
  default ${quoted(policyFor(example.other))};
  "~${within(base, folders.framed)}" ${quoted(policyFor(example.framed))};
  "~${within(base, folders.search)}" ${quoted(policyFor(example.search))};
}

map $uri $handbook_caching {
  default ${quoted(cachingFor(example.other))};
  "~${within(base, folders.hashed)}" ${quoted(cachingFor(example.hashed))};
}

server {
  listen 80;
  listen [::]:80;
  server_name _;
  charset utf-8;
  absolute_redirect off;
  gzip on;
  gzip_static on;
  gzip_vary on;
  gzip_min_length 256;
  gzip_types text/css text/csv text/javascript application/javascript application/json application/manifest+json image/svg+xml;

  add_header ${policyHeader} $handbook_policy always;
  add_header ${cacheHeader} $handbook_caching always;
${headers.join("\n")}

${location}
  location = ${base}manifest.webmanifest {
    ${base === "/" ? "root /srv/handbook" : "alias /srv/handbook/manifest.webmanifest"};
    types {}
    default_type application/manifest+json;
  }
  error_page 404 ${base}404.html;
}
`;
}

/** A site of a Caddyfile. The matchers leave no file to two of them, so that their order does not matter. */
export function caddySettings(base: string): string {
  const paths = (list: readonly string[]) => list.map((folder) => `${base}${folder}*`).join(" ");
  const set = (name: string, value: string) => `${name} ${quoted(value)}`;
  const site =
    base === "/"
      ? "\tfile_server {\n\t\tprecompressed gzip\n\t}"
      : `\tredir ${base.slice(0, -1)} ${base}\n\thandle_path ${base}* {\n\t\tfile_server {\n\t\t\tprecompressed gzip\n\t\t}\n\t}\n\thandle {\n\t\terror 404\n\t}`;
  return `# Made by the build from scripts/build/policy.ts. Put your own host name in the place of :80, and your folder in that of /srv/handbook.
# Where many visit, pack the files once instead of at every visit, each time the site is put there:
#   ${packing}
:80 {
	encode gzip
	root * /srv/handbook
	@framed path ${paths(folders.framed)}
	@search path ${paths(folders.search)}
	@unframed not path ${paths([...folders.framed, ...folders.search])}
	@hashed path ${paths(folders.hashed)}
	@unhashed not path ${paths(folders.hashed)}
	@manifest path ${base}manifest.webmanifest
	header @manifest Content-Type "application/manifest+json"
	header @framed ${set(policyHeader, policyFor(example.framed))}
	header @search ${set(policyHeader, policyFor(example.search))}
	header @unframed ${set(policyHeader, policyFor(example.other))}
	header @hashed ${set(cacheHeader, cachingFor(example.hashed))}
	header @unhashed ${set(cacheHeader, cachingFor(example.other))}
${Object.entries(commonHeaders)
  .map(([name, value]) => `\theader ${set(name, value)}`)
  .join("\n")}
${site}
	handle_errors {
		header ${set(policyHeader, policyFor(example.other))}
		header ${set(cacheHeader, cachingFor(example.other))}
		rewrite * /404.html
		file_server
	}
}
`;
}

/**
 * A plain headers file, as several static hosts read it from the top of what is published. Rules that match one address are
 * added up there, so the rules leave no address to two of them: one for every entry at the top of the site, and for every entry
 * of a folder in which pages differ.
 *
 * @param entries - names at the top of the built folder, and `name/name` for those one below; folders with a slash at the end
 */
export function headersFile(base: string, entries: readonly string[]): string {
  const rule = (pattern: string, path: string) =>
    [pattern, ...Object.entries(headersFor(path)).map(([name, value]) => `  ${name}: ${value}`)].join("\n");
  const mixed = (folder: string) =>
    Object.values(folders).some((list) => list.some((each) => each !== folder && each.startsWith(folder)));
  const address = (entry: string) => entry.replace(/(?:^|(?<=\/))index\.html$/, "");
  const rules = entries
    .filter((entry) => entry !== "index.html" && !(entry.endsWith("/") && mixed(entry)))
    .filter((entry) => !/\/./.test(entry) || mixed(`${entry.split("/")[0]}/`))
    .map((entry) => rule(base + (entry.endsWith("/") ? `${entry}*` : address(entry)), entry));
  return `# Made by the build from scripts/build/policy.ts. Copy it to the top of what you publish, where your host reads such a file.\n${[
    rule(base, ""),
    ...rules,
  ].join("\n\n")}\n`;
}

/** Names in a folder, those of folders with a slash at the end. */
async function namesIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  return entries.map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name)).sort();
}

/** Where the settings for a built site lie. */
export function settingsFolder(folder: string): string {
  return `${resolve(folder)}-server`;
}

/** Writes the settings for the site that was built into a folder. @returns where they are, below the folder around the site */
export async function writeServerSettings(folder: string, base: string): Promise<string> {
  const names = await namesIn(folder);
  const below = await Promise.all(
    names
      .filter((name) => name.endsWith("/"))
      .map(async (name) => (await namesIn(join(folder, name))).map((inner) => name + inner)),
  );
  const into = settingsFolder(folder);
  await rm(into, { recursive: true, force: true });
  await mkdir(into);
  await writeFile(join(into, "nginx.conf"), nginxSettings(base));
  await writeFile(join(into, "Caddyfile"), caddySettings(base));
  await writeFile(join(into, "_headers"), headersFile(base, [...names, ...below.flat()]));
  return `${basename(into)}/`;
}

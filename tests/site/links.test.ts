import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { attribute, builtPages, type Element, elements } from "./built.ts";

const folder = inject("folder");
const base = inject("base");
const pages = (await builtPages()).map(({ path, html }) => ({ path, elements: elements(html) }));
const idsOf = new Map(pages.map((page) => [page.path, new Set(page.elements.map((element) => attribute(element, "id")))]));

/** What is wrong with an address on a page, or undefined. */
function fault(from: string, address: string): string | undefined {
  const here = new URL(base.slice(0, -1) + from, "http://here");
  const there = new URL(address, here);
  if (there.origin !== here.origin) return undefined;
  if (!there.pathname.startsWith(base)) return `leaves the site: it must go through url()`;
  const path = `/${decodeURIComponent(there.pathname.slice(base.length))}`;
  const ids = idsOf.get(path);
  if (!ids) return existsSync(join(folder, path)) && !path.endsWith("/") ? undefined : "leads nowhere";
  const id = decodeURIComponent(there.hash.slice(1));
  return id === "" || ids.has(id) ? undefined : `has no place called “${id}”`;
}

function addresses(element: Element): string[] {
  const pieces = ["href", "src", "action", "poster", "data"].map((name) => attribute(element, name));
  const set = attribute(element, "srcset")
    ?.split(",")
    .map((entry) => entry.trim().split(/\s+/)[0]);
  return [...pieces, ...(set ?? [])].filter((address) => address !== undefined);
}

test("every link, picture, script and style sheet of the site is there", () => {
  const faults = pages.flatMap((page) =>
    page.elements.flatMap((element) =>
      addresses(element).flatMap((address) => {
        const found = fault(page.path, address);
        return found ? [`${page.path}: ${address} ${found}`] : [];
      }),
    ),
  );
  expect(faults).toEqual([]);
});

test("no page loads anything from another host", () => {
  const loading = new Set(["script", "link", "img", "iframe", "source", "video", "audio", "object", "embed", "image", "use"]);
  const foreign = pages.flatMap((page) =>
    page.elements
      .filter(({ tagName }) => loading.has(tagName))
      // These two name a page, and a browser loads neither.
      .filter((element) => !/^(?:canonical|alternate)$/.test(attribute(element, "rel") ?? ""))
      .flatMap(addresses)
      .filter((address) => /^(?:[a-z]+:)?\/\//i.test(address))
      .map((address) => `${page.path}: ${address}`),
  );
  expect(foreign).toEqual([]);
});

test("no id is used twice on a page", () => {
  const doubles = pages.flatMap((page) => {
    const ids = page.elements.map((element) => attribute(element, "id")).filter((id) => id !== undefined);
    return ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${page.path}: ${id}`);
  });
  expect(doubles).toEqual([]);
});

test("every page has a language, one main heading, one main part and a title of its own", () => {
  const titles = new Map<string, string>();
  const faults = pages.flatMap((page) => {
    const count = (tag: string) => page.elements.filter(({ tagName }) => tagName === tag).length;
    const root = page.elements.find(({ tagName }) => tagName === "html");
    const titleElement = page.elements.find(({ tagName, namespaceURI }) => tagName === "title" && namespaceURI.endsWith("xhtml"));
    const text = titleElement?.childNodes.map((node) => ("value" in node ? node.value : "")).join("") ?? "";
    const other = titles.get(text);
    titles.set(text, page.path);
    return [
      ...(root && attribute(root, "lang") ? [] : ["no lang"]),
      ...(count("h1") === 1 ? [] : [`${count("h1")} h1`]),
      ...(count("main") === 1 ? [] : [`${count("main")} main`]),
      ...(text.trim() === "" ? ["no title"] : other ? [`same title as ${other}`] : []),
    ].map((what) => `${page.path}: ${what}`);
  });
  expect(faults).toEqual([]);
});

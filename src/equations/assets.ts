import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import type { AstroIntegration } from "astro";
import subsetFont from "subset-font";
import { faces, families, sizes } from "./faces.ts";

const katex = new URL("../../node_modules/katex/", import.meta.url);
const styles = new URL("../styles/", import.meta.url);
const fonts = new URL("fonts/", styles);
const sheet = new URL("katex.css", styles);

/** Lets the line of a worked formula break at its relations, and a formula that is still too wide scroll by itself. */
const own = `
.katex-display>.katex{white-space:normal}
.katex-display{overflow:auto hidden}
`;

interface Rule {
  readonly selector: string;
  readonly body: string;
}

/** katex.min.css has no nested rules, so that a brace ends a rule. */
function rulesOf(css: string): Rule[] {
  return css
    .split("}")
    .filter((rule) => rule.includes("{"))
    .map((rule) => ({ selector: rule.slice(0, rule.indexOf("{")), body: rule.slice(rule.indexOf("{") + 1) }));
}

function usesOtherFamily(body: string): boolean {
  const family = /font-family:(KaTeX_\w+)/.exec(body)?.[1];
  return family !== undefined && !families.includes(family);
}

function usesOtherSize(selector: string): boolean {
  const used = [...selector.matchAll(/\.(?:reset-)?size(\d+)/g)].map((match) => Number(match[1]));
  return /fontsize-ensurer|katex-sizing/.test(selector) && used.some((size) => !sizes.includes(size));
}

/** The style sheet of KaTeX with only the faces and sizes named in faces.ts, each face as woff2 alone. */
export function trimSheet(css: string): string {
  const kept = rulesOf(css)
    .filter(({ selector, body }) => selector !== "@font-face" && !usesOtherFamily(body) && !usesOtherSize(selector))
    .map(({ selector, body }) => `${selector}{${body}}`);
  const faceRules = Object.keys(faces).map((face) => {
    const italic = face.includes("Italic");
    return `@font-face{font-display:block;font-family:KaTeX_${face.split("-")[0]};font-style:${italic ? "italic" : "normal"};font-weight:400;src:url(./fonts/${face}.woff2) format("woff2")}`;
  });
  return `${[...faceRules, ...kept].join("\n")}${own}`;
}

async function stamp(): Promise<string> {
  const hash = createHash("sha256");
  for (const file of ["faces.ts", "assets.ts"]) hash.update(await readFile(new URL(file, import.meta.url)));
  for (const module of ["katex", "subset-font"])
    hash.update(await readFile(new URL(`../../node_modules/${module}/package.json`, import.meta.url)));
  return `/* made by src/equations/assets.ts ${hash.digest("hex").slice(0, 16)} */`;
}

/**
 * Writes `src/styles/katex.css` and `src/styles/fonts/`. It must happen before the build: cutting the fonts afterwards
 * would leave the name of the whole font on a file with other bytes, and a cached copy would be taken for it.
 * @returns false when they were up to date
 */
export async function makeAssets(): Promise<boolean> {
  const mark = await stamp();
  const present = await readFile(sheet, "utf8").catch(() => "");
  if (present.startsWith(mark)) {
    const there = await readdir(fonts).catch((): string[] => []);
    if (Object.keys(faces).every((face) => there.includes(`${face}.woff2`))) return false;
  }
  await rm(fonts, { recursive: true, force: true });
  await mkdir(fonts, { recursive: true });
  for (const [face, characters] of Object.entries(faces)) {
    const whole = await readFile(new URL(`dist/fonts/KaTeX_${face}.woff2`, katex));
    await writeFile(
      new URL(`${face}.woff2`, fonts),
      await subsetFont(whole, characters, { targetFormat: "woff2", noHinting: true, keepFeatures: [] }),
    );
  }
  await writeFile(sheet, `${mark}\n${trimSheet(await readFile(new URL("dist/katex.min.css", katex), "utf8"))}`);
  return true;
}

export function equationAssets(): AstroIntegration {
  return {
    name: "equation-assets",
    hooks: {
      "astro:config:setup": async ({ logger }) => {
        if (await makeAssets()) logger.info("cut the fonts of the formulas down to the letters in use");
      },
    },
  };
}

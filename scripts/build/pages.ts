import { createHash } from "node:crypto";
import { glob, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type Page, readPage, styleSheet } from "./page.ts";

export interface BuiltPage {
  /** Path of the file below the output folder, with slashes. */
  readonly file: string;
  readonly html: string;
  readonly hasSearchText: boolean;
}

/**
 * Gives every built page its content security policy, and turns KaTeX's style attributes into classes of one style sheet.
 * @throws Error naming every page that holds something the policy would block
 */
export async function finishPages(folder: string, base: string): Promise<BuiltPage[]> {
  const pages: { file: string; page: Page }[] = [];
  for await (const found of glob("**/*.html", { cwd: folder })) {
    const html = await readFile(join(folder, found), "utf8");
    pages.push({ file: found.replaceAll("\\", "/"), page: readPage(html) });
  }
  pages.sort((a, b) => (a.file < b.file ? -1 : 1));
  if (pages.length === 0) throw new Error(`No page was built in ${folder}`);
  const problems = pages.flatMap(({ file, page }) => page.problems.map((problem) => `  ${file}: ${problem}`));
  if (problems.length > 0) throw new Error(`The content security policy would block:\n${problems.join("\n")}`);

  const css = styleSheet(new Set(pages.flatMap(({ page }) => [...page.declarations])));
  const name = `_astro/equations.${createHash("sha256").update(css).digest("hex").slice(0, 8)}.css`;
  if (css !== "") {
    await mkdir(join(folder, "_astro"), { recursive: true });
    await writeFile(join(folder, name), css);
  }
  return Promise.all(
    pages.map(async ({ file, page }) => {
      const html = page.rewrite(base + name);
      await writeFile(join(folder, file), html);
      return { file, html, hasSearchText: page.hasSearchText };
    }),
  );
}

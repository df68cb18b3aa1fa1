/** Draws the icons of the installed handbook from its mark: `node scripts/icons.ts`, after `public/favicon.svg` was changed. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launchBrowser } from "./browser/launch.ts";

const publicFolder = new URL("../public/", import.meta.url).pathname;

export interface Icon {
  /** Below `public/`. */
  readonly file: string;
  /** Side [px]. */
  readonly size: number;
  /** Share of the icon that the mark takes; 1 keeps the mark's own rounded ground, less lets the ground fill the square. */
  readonly mark: number;
}

/**
 * Systems cut a maskable icon to shapes of their own, and keep a circle of 80 % of its side whole (W3C, Web Application
 * Manifest, "Icon masks and safe zone"): the corners of the mark, 19.2 units from the middle of 40, have to lie within 16.
 */
export const icons = {
  small: { file: "icons/192.png", size: 192, mark: 1 },
  large: { file: "icons/512.png", size: 512, mark: 1 },
  maskable: { file: "icons/maskable-512.png", size: 512, mark: 0.75 },
  home: { file: "icons/home-180.png", size: 180, mark: 0.85 },
} as const satisfies Record<string, Icon>;

/** The icon as a drawing, made from the text of the mark. */
export function iconSvg(markSvg: string, { size, mark }: Icon): string {
  const found = /<rect [^>]*fill="(#[0-9a-f]{6})"\/>([\s\S]*)<\/svg>/.exec(markSvg);
  if (!found) throw new Error("public/favicon.svg has no ground with a mark on it");
  const [ground, fill, lines] = found;
  const inset = (40 * (1 - mark)) / 2;
  const drawing =
    mark === 1
      ? ground.replace("</svg>", "")
      : `<rect width="40" height="40" fill="${fill}"/><g transform="translate(${inset} ${inset}) scale(${mark})">${lines}</g>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40" width="${size}" height="${size}">${drawing}</svg>`;
}

/** Draws an icon in a page of a browser. */
export async function drawIcon(page: Page, icon: Icon): Promise<Buffer> {
  const svg = iconSvg(await readFile(join(publicFolder, "favicon.svg"), "utf8"), icon);
  await page.setViewportSize({ width: icon.size, height: icon.size });
  await page.setContent(`<style>body{margin:0}svg{display:block}</style>${svg}`);
  return page.screenshot({ omitBackground: true });
}

if (import.meta.main) {
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage();
    await mkdir(join(publicFolder, "icons"), { recursive: true });
    for (const icon of Object.values(icons)) await writeFile(join(publicFolder, icon.file), await drawIcon(page, icon));
  } finally {
    await browser.close();
  }
}

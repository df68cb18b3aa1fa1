import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { inject } from "vitest";
import { browserCommand } from "../../scripts/browser/launch.ts";
import { drawIcon, type Icon, icons } from "../../scripts/icons.ts";
import { attribute, builtPages, elements } from "./built.ts";
import { address, expect, test } from "./harness.ts";

interface Manifest {
  readonly id: string;
  readonly name: string;
  readonly short_name: string;
  readonly start_url: string;
  readonly scope: string;
  readonly display: string;
  readonly theme_color: string;
  readonly background_color: string;
  readonly icons: readonly { readonly src: string; readonly sizes: string; readonly type: string; readonly purpose?: string }[];
}

const base = inject("base");
const manifest: Manifest = JSON.parse(await readFile(join(inject("folder"), "manifest.webmanifest"), "utf8"));

test("every page is linked with the manifest and the icon for a home screen", async () => {
  const wanted = { manifest: `${base}manifest.webmanifest`, "apple-touch-icon": `${base}icons/home-180.png` };
  for (const { path, html } of await builtPages()) {
    const all = elements(html);
    for (const [rel, href] of Object.entries(wanted)) {
      const links = all.filter((element) => element.tagName === "link" && attribute(element, "rel") === rel);
      expect(
        links.map((link) => attribute(link, "href")),
        `${rel} of ${path}`,
      ).toEqual([href]);
    }
    const colours = all.filter((element) => attribute(element, "name") === "theme-color");
    expect(colours.map((colour) => attribute(colour, "content"))).toEqual([manifest.theme_color]);
  }
});

/** Members and their forms: W3C, Web Application Manifest. */
test("the manifest holds under any path: every address in it is relative and lies within its scope", () => {
  for (const place of ["https://shop.example/", "https://school.example/metal/handbook/"]) {
    const file = `${place}manifest.webmanifest`;
    const at = (relative: string) => new URL(relative, file).href;
    expect(at(manifest.scope)).toBe(place);
    expect(at(manifest.start_url)).toBe(place);
    expect(new URL(manifest.id, at(manifest.start_url)).href).toBe(place);
    for (const { src } of manifest.icons) expect(at(src).startsWith(place)).toBe(true);
  }
  expect(manifest.display).toBe("standalone");
  expect(manifest.name.length).toBeGreaterThan(0);
  expect(manifest.short_name.length).toBeGreaterThan(0);
  for (const colour of [manifest.theme_color, manifest.background_color]) expect(colour).toMatch(/^#[0-9a-f]{6}$/);
  const sizes = manifest.icons.map(({ sizes: size, purpose = "any" }) => `${size} ${purpose}`);
  expect(sizes).toEqual(expect.arrayContaining(["192x192 any", "512x512 any", "512x512 maskable"]));
});

test("the icons are as large as the manifest says, and drawn from the mark as it is", async ({ open }) => {
  const page = await open("/");
  for (const { src, sizes, type } of manifest.icons.filter(({ sizes: size }) => size !== "any")) {
    const answer = await page.request.get(address(`/${src}`));
    expect(answer.headers()["content-type"]).toBe(type);
    const png = await answer.body();
    // Width and height stand at bytes 16 and 20 (ISO/IEC 15948, IHDR).
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
  }
  const browser = await chromium.connect(inject("browser"));
  const canvas = await browser.newPage();
  for (const icon of Object.values<Icon>(icons)) {
    const drawn = await drawIcon(canvas, icon);
    const kept = await readFile(join(inject("folder"), icon.file));
    const difference = await canvas.evaluate(
      async (pictures) => {
        const [one, other] = await Promise.all(
          pictures.map(async (picture) => {
            const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${picture}`)).blob());
            const context = new OffscreenCanvas(image.width, image.height).getContext("2d");
            context?.drawImage(image, 0, 0);
            return context?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray();
          }),
        );
        if (!one || !other || one.length !== other.length) return Number.POSITIVE_INFINITY;
        return one.reduce((sum, value, index) => sum + Math.abs(value - (other[index] ?? 0)), 0) / one.length;
      },
      [drawn.toString("base64"), kept.toString("base64")],
    );
    // Of 255: another browser may smooth the edges a little differently.
    expect(difference, icon.file).toBeLessThan(1);
  }
  await canvas.close();
});

test("the browser finds nothing against installing it", async () => {
  const { path, args } = browserCommand();
  // A private window, which tests otherwise use, cannot install anything.
  const context = await chromium.launchPersistentContext("", { executablePath: path, args });
  try {
    const page = await context.newPage();
    await page.goto(address("/bending/"), { waitUntil: "load" });
    const session = await context.newCDPSession(page);
    const { errors, url } = await session.send("Page.getAppManifest");
    expect(url).toBe(address("/manifest.webmanifest"));
    expect(errors).toEqual([]);
    const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
    expect(installabilityErrors).toEqual([]);
  } finally {
    await context.close();
  }
});

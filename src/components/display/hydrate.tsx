import { hydrate, render } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import { keepOffline, type NewVersion } from "../../offline/register.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import { foreignLanguage } from "../../texts/page-language.ts";
import { hasDeviceShop, watchDeviceShop } from "../shop/device.ts";
import { Display, type Facts, type Given } from "./Display.tsx";
import { readSettings, type Settings, settingsShelf } from "./settings.ts";

/** Brings the display to life. */

const host = document.querySelector<HTMLElement>("[data-display]");
const given: Given = JSON.parse(document.querySelector("[data-display-given]")?.textContent ?? "{}");

function kept(): string | null {
  try {
    return localStorage.getItem(settingsShelf);
  } catch {
    return null;
  }
}

function keep(next: Settings): void {
  try {
    localStorage.setItem(settingsShelf, JSON.stringify(next));
  } catch {
    // Storage is off: the setting holds until the page is loaded again.
  }
}

const read = readSettings(kept(), location.search);
let { settings } = read;
if (read.changed) keep(settings);
// A setting is taken once: what is changed on the screen later is not overruled when the page is loaded again.
if (location.search !== "") history.replaceState(null, "", location.pathname);

let language: Language = english;
let facts: Facts | undefined;
let newVersion: NewVersion | undefined;
/** Touched since everything was last forgotten: until then a new version would lose what is typed. */
let inUse = false;

function page() {
  return (
    <Display
      language={language}
      given={given}
      settings={settings}
      facts={facts}
      refused={read.refused}
      loadCalculate={async () => {
        const [{ Calculate }, whole] = await Promise.all([import("./Calculate.tsx"), foreignLanguage("screenCalculators")]);
        if (whole) {
          language = whole;
          show();
        }
        return Calculate;
      }}
      keep={(next) => {
        settings = next;
        keep(next);
        show();
      }}
      atRest={() => {
        inUse = false;
        void newVersion?.use();
      }}
    />
  );
}

function show(): void {
  if (host) render(page(), host);
}

/** Waits between attempts to fetch the rest of the page [ms]: a server on the same machine may start after the browser. */
const retryAfter = 5000;

const factsAfter = 10_000;
let asked = false;

async function loadFacts(): Promise<void> {
  if (asked) return;
  asked = true;
  try {
    const [data, live] = await Promise.all([import("virtual:calculator-data"), import("./live.tsx")]);
    // No calculation reads a source: all that is shown of one is its name.
    const own = data.default as unknown as Catalogue;
    const look = async () => {
      if (!hasDeviceShop()) {
        facts = { catalogue: own, live };
      } else {
        const { deviceShop, deviceStore } = await import("../shop/shelf.ts");
        const { shop, changed, unusable } = deviceShop(deviceStore(), own);
        facts = { catalogue: { ...own, shop }, changed, unusable, live };
      }
      show();
    };
    await look();
    watchDeviceShop(() => void look());
  } catch {
    asked = false;
    setTimeout(() => void loadFacts(), retryAfter);
  }
}

if (host) {
  language = (await foreignLanguage("screen")) ?? english;
  hydrate(page(), host);
  host.dataset.live = "";
  // The screen is there at once; what it knows of the shop follows with the first touch, or before the cards.
  const timer = setTimeout(() => void loadFacts(), factsAfter);
  for (const kind of ["pointerdown", "keydown"] as const)
    addEventListener(
      kind,
      () => {
        clearTimeout(timer);
        void loadFacts();
      },
      { once: true, capture: true },
    );
  for (const kind of ["pointerdown", "keydown"] as const)
    document.addEventListener(
      kind,
      () => {
        inUse = true;
      },
      true,
    );
  keepOffline((version) => {
    newVersion = version;
    if (!inUse) void version.use();
  });
}

import { saveFile } from "../components/plan/save-file.ts";
import { device } from "../texts/en/device.ts";
import { pageTexts } from "../texts/page-language.ts";
import { chooseCopy, clearCopy, type DeviceCopy, findCopy, isReachable, isRefused, lookForNewer } from "./device-copy.ts";

/** Brings the page about this device to life. */

const texts = await pageTexts(device);

function part<Kind extends HTMLElement>(name: string): Kind {
  const found = document.querySelector<Kind>(`[data-device="${name}"]`);
  if (!found) throw new Error(`The page has no part “${name}”`);
  return found;
}

const size = (bytes: number) => (bytes < 1e6 ? `${(bytes / 1000).toFixed(1)} kB` : `${(bytes / 1e6).toFixed(1)} MB`);

function line(text: string): HTMLElement {
  const made = document.createElement("p");
  made.textContent = text;
  return made;
}

function said(copy: DeviceCopy): string[] {
  if (copy.state !== "complete") return [texts[copy.state]];
  const when = new Date(copy.kept).toLocaleString(document.documentElement.lang, { dateStyle: "long", timeStyle: "short" });
  return [
    texts.complete(copy.files, size(copy.bytes), when),
    texts.version(copy.version),
    ...(copy.waiting ? [texts.waiting] : []),
  ];
}

async function room(): Promise<string[]> {
  const { usage, quota } = (await navigator.storage?.estimate?.()) ?? {};
  return usage === undefined || quota === undefined ? [] : [texts.room(size(usage), size(quota))];
}

/** The copy is about to be deleted, and the page loaded again after that: what was found before may be true no more. */
let isClearing = false;

function startClearing(word: string): void {
  isClearing = true;
  part("copy").dataset.state = "clearing";
  part("word").textContent = word;
}

async function showCopy(): Promise<void> {
  const copy = await findCopy();
  const lines = [...said(copy), ...(copy.state === "fetching" ? [] : await room().catch(() => []))];
  if (isClearing) return;
  const shown = lines.join("\n");
  // A text that stands there already is not said again by a screen reader.
  if (shown !== part("copy").dataset.shown) part("copy").replaceChildren(...lines.map(line));
  part("copy").dataset.shown = shown;
  part("copy").dataset.state = copy.state;
  part("look").hidden = copy.state !== "complete";
  part("again").hidden = copy.state === "unsupported" || copy.state === "refused";
  part("refuse").hidden = part("again").hidden;
  part("want").hidden = copy.state !== "refused";
}

async function fetchAgain(): Promise<void> {
  startClearing(texts.clearing);
  await clearCopy();
  location.reload();
}

part("look").addEventListener("click", async () => {
  part("word").textContent = texts.looking;
  const newer = await lookForNewer();
  // A newer one says so itself, when it has been fetched.
  part("word").textContent = newer === undefined ? texts.noNetwork : newer ? "" : texts.newest;
});
part("again").addEventListener("click", async () => {
  startClearing(texts.looking);
  if (await isReachable()) return fetchAgain();
  isClearing = false;
  part("word").textContent = texts.unreachable;
  part("anyway").hidden = false;
  await showCopy();
});
part("anyway").addEventListener("click", fetchAgain);
part("refuse").addEventListener("click", async () => {
  chooseCopy(false);
  await fetchAgain();
});
part("want").addEventListener("click", () => {
  chooseCopy(true);
  location.reload();
});

/** What this site keeps in the browser's storage, by name. */
function keptHere(): [key: string, text: string][] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith("flat-to-formed"))
      .sort()
      .map((key) => [key, localStorage.getItem(key) ?? ""]);
  } catch {
    return [];
  }
}

function button(text: string, act: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "button";
  made.textContent = text;
  made.addEventListener("click", act);
  return made;
}

function keptLine(key: string, text: string): HTMLLIElement {
  const made = document.createElement("li");
  const name = texts.names[key] ?? key;
  made.append(`${name}, ${size(new Blob([text]).size)}`);
  return made;
}

function unreadableLine(key: string, text: string): HTMLLIElement {
  const made = keptLine(key, text);
  const buttons = document.createElement("div");
  buttons.className = "buttons";
  buttons.append(
    button(texts.save(key), () => saveFile(`${key}.txt`, "text/plain", text)),
    button(texts.remove(key), () => {
      localStorage.removeItem(key);
      showKept();
    }),
  );
  made.append(buttons);
  return made;
}

function showKept(): void {
  const all = keptHere();
  const isUnreadable = ([key]: [string, string]) => key.includes(".unreadable");
  const good = all.filter((each) => !isUnreadable(each));
  const bad = all.filter(isUnreadable);
  part("kept").replaceChildren(...good.map(([key, text]) => keptLine(key, text)));
  part("nothing").hidden = good.length > 0;
  part("unreadable").hidden = bad.length === 0;
  part("unreadable-list").replaceChildren(...bad.map(([key, text]) => unreadableLine(key, text)));
}

/** How often the page looks how far the copy is [ms]. */
const lookAgain = 1000;

/** Shows how the fetching goes on while the page is open, until the copy is complete. */
function follow(): void {
  if (!("serviceWorker" in navigator) || isRefused()) return;
  const timer = setInterval(async () => {
    await showCopy();
    if (part("copy").dataset.state === "complete") clearInterval(timer);
  }, lookAgain);
}

showKept();
addEventListener("storage", showKept);
void showCopy().then(follow);

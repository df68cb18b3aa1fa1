import { createServer } from "node:http";
import { headersFor, policy, policyFor } from "../../scripts/build/policy.ts";
import { attribute, builtPages, elements } from "./built.ts";
import { address, expect, test } from "./harness.ts";

const pages = await builtPages();

/** Says how an attribute or element of a built page would break the policy. */
function breach(element: ReturnType<typeof elements>[number]): string[] {
  const found = element.attrs.flatMap(({ name, value }) => {
    if (name === "style" || name.startsWith("on")) return [`${name} attribute`];
    if (/^\s*javascript:/i.test(value)) return [`${name} with a script`];
    if (["src", "srcset", "poster"].includes(name) && /^(?:https?:)?\/\//.test(value)) return [`${name} of another host`];
    return [];
  });
  const isData = /json/.test(attribute(element, "type") ?? "");
  if (element.tagName === "style") found.push("inline style sheet");
  if (element.tagName === "script" && attribute(element, "src") === undefined && !isData) found.push("inline script");
  if (["iframe", "object", "embed", "base"].includes(element.tagName)) found.push(`<${element.tagName}>`);
  // Nothing is fetched from the address of the same page in another language.
  const isLoaded = element.tagName === "link" && attribute(element, "rel") !== "alternate";
  if (isLoaded && /^(?:https?:)?\/\//.test(attribute(element, "href") ?? "")) found.push("link to another host");
  return found.map((what) => `${what} on <${element.tagName}>`);
}

test("every page carries the policy before anything it applies to, and nothing that breaks it", () => {
  for (const { path, html } of pages) {
    const all = elements(html);
    const place = all.findIndex((element) => attribute(element, "http-equiv") === "Content-Security-Policy");
    expect(attribute(all[place] ?? ({ attrs: [] } as never), "content"), path).toBe(policy);
    expect(all.findIndex(({ tagName }) => ["script", "link", "style", "img"].includes(tagName))).toBeGreaterThan(place);
    expect(all.flatMap(breach), path).toEqual([]);
  }
});

test("the pages made for frames, and only those, may be framed", () => {
  for (const { path, html } of pages) {
    const made = elements(html).some(
      ({ tagName, attrs }) => tagName === "html" && attrs.some(({ value }) => /\b(?:embedded|framed)\b/.test(value)),
    );
    expect(!policyFor(path.slice(1)).includes("frame-ancestors"), path).toBe(made);
  }
});

test("the server sends every header of the definition with every page", async ({ open }) => {
  const page = await open("/");
  for (const { path } of pages) {
    const answer = await page.request.get(address(path));
    for (const [name, value] of Object.entries(headersFor(path.slice(1))))
      expect(answer.headers()[name.toLowerCase()], `${name} of ${path}`).toBe(value);
  }
});

test("another site can frame a calculator and hears its height, and can frame no other page", async ({ open }) => {
  const frame = (path: string) => `<iframe src="${address(path)}" width="600" height="400"></iframe>`;
  const course = createServer((_, response) => {
    response.setHeader("Content-Type", "text/html");
    response.end(`<link rel="icon" href="data:,"><title>Course</title>${["/embed/bend-length/", "/bending/", "/plan/"].map(frame).join("")}
      <script>heard = []; addEventListener("message", ({ data }) => heard.push(data));</script>`);
  });
  await new Promise<void>((done) => course.listen(0, "127.0.0.1", done));
  try {
    const { port } = course.address() as { port: number };
    const page = await open("/", { expectProblems: /request to another host|frame-ancestors|ERR_BLOCKED_BY_RESPONSE/ });
    await page.goto(`http://127.0.0.1:${port}/`);
    await page.frameLocator("iframe >> nth=0").locator("[data-calculator]").hover();
    await page.frameLocator("iframe >> nth=0").locator("[data-calculator][data-live]").waitFor();
    const heard = () => page.evaluate(() => (globalThis as unknown as { heard: { type: string; height: number }[] }).heard);
    await expect.poll(async () => (await heard()).some(({ type, height }) => /height/.test(type) && height > 100)).toBe(true);
    const shown = page
      .frames()
      .slice(1)
      .map((each) => each.url());
    expect(shown).toEqual([address("/embed/bend-length/"), "chrome-error://chromewebdata/", "chrome-error://chromewebdata/"]);
  } finally {
    course.closeAllConnections();
    course.close();
  }
});

test("the headers hold on pages that come from the offline copy", async ({ open }) => {
  const page = await open("/", { serviceWorker: true });
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.context().setOffline(true);
  const sent = (await page.goto(address("/plan/")))?.headers() ?? {};
  for (const [name, value] of Object.entries(headersFor("plan/"))) expect(sent[name.toLowerCase()], name).toBe(value);
});

/** What an attacker's text, or a careless change, could try on a page; none of it may work, and all of it must be noticed. */
test("the content security policy stops inline scripts, inline styles and markup from text", async ({ open }) => {
  const page = await open("/", {
    expectProblems: /policy: (?:style-src|require-trusted-types)|Content Security Policy|Trusted(?:HTML|Script)/,
  });
  const noticed: string[] = [];
  page.on("console", (message) => noticed.push(message.text()));
  const worked = await page.evaluate(() => {
    const attempts: Record<string, () => boolean> = {
      "markup from text": () => {
        const place = document.createElement("div");
        place.innerHTML = "<b>x</b>";
        return place.childNodes.length > 0;
      },
      "inline script": () => {
        const script = document.createElement("script");
        script.append("document.documentElement.id = 'ran'");
        document.head.append(script);
        return document.documentElement.id === "ran";
      },
      "inline style": () => {
        const place = document.createElement("p");
        place.setAttribute("style", "position:absolute");
        document.body.append(place);
        return getComputedStyle(place).position === "absolute";
      },
    };
    return Object.entries(attempts).flatMap(([name, attempt]) => {
      try {
        return attempt() ? [name] : [];
      } catch {
        return [];
      }
    });
  });
  expect(worked).toEqual([]);
  for (const directive of ["require-trusted-types-for", "style-src"])
    await expect
      .poll(() => noticed.filter((text) => text.startsWith(`policy: ${directive}`)).length, { message: directive })
      .toBeGreaterThan(0);
});

test("the search's worker is the only kind of script that can be started by address, and only from this site", async ({
  open,
}) => {
  const page = await open("/", { expectProblems: /is no script of this site|TrustedScriptURL|Content Security Policy|policy: / });
  await page.locator("[data-search] input").fill("bend");
  await page.locator(".search-link").first().waitFor();
  const refusal = await page.evaluate(() => {
    try {
      new Worker("https://elsewhere.invalid/worker.js");
      return "started";
    } catch (error) {
      return String(error);
    }
  });
  expect(refusal).toMatch(/is no script of this site/);
});

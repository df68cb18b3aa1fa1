import { expect, test } from "./harness.ts";

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

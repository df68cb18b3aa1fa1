/**
 * Pages for the scale measurement: as long as a page of the handbook, with its kinds of content, and no two alike. What they say
 * makes no sense and is never published.
 */

/** Words that occur in the handbook, so that the search index gets its usual mixture of common and rare ones. */
const words =
  "sheet bend blank leg line datum edge scribe hole punch die shear blade rake gap burr grain roll seam lap spot weld tip force time metal steel angle radius nose finger leaf bed swing springback allowance deduction neutral thickness width length gauge measure mark cut notch corner relief mitre hem curl cone tube rivet pitch edge distance strip trial caliper square rule height".split(
    " ",
  );

/** A small generator of numbers that gives the same pages every time (Numerical Recipes’ constants, from memory). */
function sequence(seed: number): (below: number) => number {
  let state = (seed * 2654435761) >>> 0;
  return (below) => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

function sentence(next: (below: number) => number, page: number): string {
  const count = 8 + next(12);
  const text = Array.from({ length: count }, () => words[next(words.length)]);
  // A word of its own on every page, which the search has to find among all the others.
  if (next(6) === 0) text.push(`word${page}x${next(40)}`);
  const [first = "", ...rest] = text;
  return `${first.charAt(0).toUpperCase()}${first.slice(1)} ${rest.join(" ")}.`;
}

function paragraph(next: (below: number) => number, page: number): string {
  return Array.from({ length: 4 + next(3) }, () => sentence(next, page)).join(" ");
}

const formula = (next: (below: number) => number) =>
  `$$\n\\ell_{${next(90)}} = \\frac{\\pi}{180}\\,\\alpha\\,\\left(r + k\\,t\\right) + ${next(900)}\\sqrt{\\frac{a^2 + ${next(90)}}{b_{${next(9)}}}}\n$$`;

function table(next: (below: number) => number): string {
  const row = (cells: readonly (string | number)[]) => `| ${cells.join(" | ")} |`;
  return [
    row(["metal", "t", "r", "force"]),
    row(["---", "---", "---", "---"]),
    ...Array.from({ length: 8 }, () => row([words[next(words.length)] ?? "", next(60) / 10, next(90) / 10, next(900)])),
  ].join("\n");
}

/** @param id - the calculator that stands in the page */
export function generatedPage(page: number, id: string): string {
  const next = sequence(page + 1);
  const sections = Array.from({ length: 10 }, (_, section) =>
    [
      `## Part ${section + 1} of page ${page}`,
      paragraph(next, page),
      formula(next),
      paragraph(next, page),
      ...(section === 4 ? [table(next)] : []),
      ...(section === 6 ? [`<Calculator id="${id}" />`] : []),
    ].join("\n\n"),
  );
  return `---\ntitle: Generated page ${page}\nsummary: A page that only shows how long many pages take.\norder: ${100 + page}\ntechnique: bending\n---\n\n${sections.join("\n\n")}\n`;
}

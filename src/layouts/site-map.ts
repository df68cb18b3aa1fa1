import { existsSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "../catalogue/load.ts";

export interface SitePage {
  readonly path: string;
  readonly title: string;
  /** What one finds there, in one sentence. */
  readonly about: string;
}

/** The six techniques of the handbook, in the order the work goes. */
export const techniques: readonly SitePage[] = [
  {
    path: "/marking/",
    title: "Marking out",
    about: "Getting lines and centres from a drawing onto the sheet, from one datum edge.",
  },
  {
    path: "/cutting/",
    title: "Cutting",
    about: "Shears, snips and saws: which one, how much force, and how the corners are notched.",
  },
  {
    path: "/punching/",
    title: "Punching",
    about: "Holes with punch and die: force, clearance, and how near to an edge or a bend.",
  },
  {
    path: "/bending/",
    title: "Bending",
    about: "How long the blank must be, where the line goes, and how far past the angle to swing.",
  },
  { path: "/rolling/", title: "Rolling", about: "Tubes and cones: the blank, the setting of the rolls, the flat ends." },
  { path: "/joining/", title: "Joining", about: "Spot welds, rivets and folded seams: how many, how far apart, how strong." },
];

/** Longer subjects of a technique, in reading order. */
const below: readonly SitePage[] = [
  {
    path: "/bending/practice-pieces/",
    title: "Practice pieces",
    about: "Measure a few bent strips, and every blank after them comes nearer to size.",
  },
  {
    path: "/bending/folded-edges/",
    title: "Folded edges",
    about: "Closed, open, teardrop and double: what each takes up, and in which order it is made.",
  },
  {
    path: "/bending/angle-and-springback/",
    title: "Angle and springback",
    about: "Why the bend opens again, and how far past the angle the leaf must swing.",
  },
  { path: "/bending/order/", title: "Order of bends", about: "Which bend comes first, and which one gets trapped." },
];

/** What one uses in the shop rather than reads. */
export const tools: readonly SitePage[] = [
  {
    path: "/plan/",
    title: "Plan a part",
    about: "From a drawing to a blank with every scribe line, hole and check, on one sheet of paper.",
  },
  { path: "/shop/", title: "This shop", about: "The machines, stock and measured bends that the answers are held against." },
];

export const reference: readonly SitePage[] = [
  {
    path: "/tables/calculators/",
    title: "All calculators",
    about: "Every calculator with its inputs, answers, embed link and command line.",
  },
  { path: "/checked/", title: "Checked values", about: "Every published value beside what this handbook computes." },
  { path: "/sources/", title: "Sources", about: "Where each formula and number was read, or that it is from memory." },
  { path: "/safety/", title: "Safety", about: "All standing cautions in one place." },
  { path: "/glossary/", title: "Glossary", about: "Trade terms in plain words." },
];

/** Whether a page has been written. Read from the folders of pages, so that the site never links to what is not there. */
export function isWritten({ path }: SitePage): boolean {
  return ["src/pages", "src/content/techniques"].some((folder) => {
    const page = join(projectFolder(), folder, path);
    const files = ["astro", "mdx"].flatMap((ext) => [join(page, `index.${ext}`), `${page.replace(/[\\/]$/, "")}.${ext}`]);
    return files.some(existsSync);
  });
}

/** Written pages below a page, e.g. below `/bending/`. */
export function pagesBelow(path: string): readonly SitePage[] {
  return below.filter((page) => page.path.startsWith(path) && isWritten(page));
}

/** All written pages of the handbook in reading order. */
export function readingOrder(): readonly SitePage[] {
  return techniques.flatMap((technique) => [technique, ...pagesBelow(technique.path)]).filter(isWritten);
}

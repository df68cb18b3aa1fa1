import { getCollection } from "astro:content";
import { pageIn } from "../site/page-in.ts";

/** What the site is to hold, and which of it is there. Links lead only to what is there. */
export interface SitePage {
  readonly path: string;
  readonly title: string;
  /** What one finds there, in one sentence. */
  readonly about: string;
}

/** The six techniques of the handbook, in the order the work goes. */
export const techniques: readonly SitePage[] = [
  { path: "/marking/", title: "Marking out", about: "Get lines and centres from a drawing onto the sheet, from one datum edge." },
  {
    path: "/cutting/",
    title: "Cutting",
    about: "Shears, snips and saws: which one, how much force, and how corners are notched.",
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

/** A short technique beside the six. */
export const furnace: SitePage = {
  path: "/furnace/",
  title: "Furnace",
  about: "Soften metal that earlier work has hardened, before a bend that would crack it.",
};
const inOrder = [...techniques, furnace];

/** What one uses in the shop rather than reads. */
const tools: readonly SitePage[] = [
  {
    path: "/plan/",
    title: "Plan a part",
    about: "From a drawing to a blank with every scribe line, hole and check, on one sheet of paper.",
  },
  {
    path: "/sheet/",
    title: "Cut plan",
    about: "Many blanks out of stock sheets and offcuts: as few sheets as possible, every stop setting in order.",
  },
  { path: "/shop/", title: "This shop", about: "The machines, stock and measured bends that the answers are held against." },
];

const reference: readonly SitePage[] = [
  { path: "/tables/", title: "Tables", about: "Gauges, metals, radii, welds, rivets, tolerances: every number with its source." },
  {
    path: "/tables/calculators/",
    title: "Calculators",
    about: "Every calculator with its inputs, answers, embed link and command line.",
  },
  { path: "/checked/", title: "Checked values", about: "Every published value beside what this handbook computes." },
  { path: "/sources/", title: "Sources", about: "Where each formula and number was read, or that it is from memory." },
  { path: "/safety/", title: "Safety", about: "All standing cautions in one place." },
  { path: "/glossary/", title: "Glossary", about: "Trade terms in plain words." },
  {
    path: "/assign/",
    title: "Assignments",
    about: "For instructors: questions with own numbers for every student, as a link, on paper or as a question bank.",
  },
  {
    path: "/display/",
    title: "Shop display",
    about: "For a touch screen on the wall: limits, cautions and one number of each machine, in large letters.",
  },
];

/** The pages below `/tables/`, in the order of its list. */
export const tables: readonly SitePage[] = [
  {
    path: "/tables/gauges/",
    title: "Gauge numbers",
    about: "What a gauge number is in inches and millimetres, in every list side by side.",
  },
  {
    path: "/tables/materials/",
    title: "Metals",
    about: "Density, stiffness and strengths of every metal, with the band each value lies in.",
  },
  {
    path: "/tables/smallest-radii/",
    title: "Smallest radii",
    about: "How sharp a bend may be before it cracks, by metal and thickness.",
  },
  {
    path: "/tables/spot-settings/",
    title: "Spot settings",
    about: "Force, time and current to start from when spot welding, by thickness.",
  },
  {
    path: "/tables/hole-circles/",
    title: "Hole circle table",
    about: "Centres and chords of evenly spaced holes, and a list of coordinates to copy.",
  },
  {
    path: "/tables/rivets/",
    title: "Rivet sizes",
    about: "Sizes of solid rivets with their drills, least pitch and edge distance.",
  },
  {
    path: "/tables/fractions/",
    title: "Inch fractions",
    about: "Every sixty-fourth of an inch in decimal inches and in millimetres.",
  },
  {
    path: "/tables/general-tolerances/",
    title: "General tolerances",
    about: "What ± a size has when the drawing says only “ISO 2768-m”.",
  },
  {
    path: "/tables/thickness-tolerances/",
    title: "Thickness tolerances",
    about: "How far real sheet may be from the thickness it was sold as.",
  },
];

const hasFile = ({ path }: SitePage) => pageIn("src/pages", path);

/** All written pages of the handbook in reading order: each technique, then the pages below it. */
export async function handbook(): Promise<SitePage[]> {
  const place = (technique: string) => inOrder.findIndex(({ path }) => path === `/${technique}/`);
  const entries = await getCollection("techniques");
  entries.sort((a, b) => place(a.data.technique) - place(b.data.technique) || a.data.order - b.data.order);
  return entries.map(({ id, data }) => ({ path: `/${id}/`, title: data.title, about: data.summary }));
}

export interface SiteMap {
  /** Written pages of the techniques, the first page of each. */
  readonly techniques: readonly SitePage[];
  readonly tools: readonly SitePage[];
  readonly reference: readonly SitePage[];
}

/** What is there to be linked to. */
export async function siteMap(): Promise<SiteMap> {
  const written = new Set((await handbook()).map(({ path }) => path));
  return {
    techniques: inOrder.filter(({ path }) => written.has(path)),
    tools: tools.filter(hasFile),
    reference: reference.filter(hasFile),
  };
}

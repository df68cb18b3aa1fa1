import { getCollection } from "astro:content";
import { pageIn } from "../site/page-in.ts";
import { languageOf } from "../texts/at-build.ts";
import { siteMap as pageTexts } from "../texts/en/site-map.ts";

/** What the site is to hold, and which of it is there. Links lead only to what is there. */
export interface SitePage {
  readonly path: string;
  readonly title: string;
  /** What one finds there, in one sentence. */
  readonly about: string;
}

type PagePath = keyof typeof pageTexts;

const page = (path: PagePath): SitePage => ({ path, ...pageTexts[path] });

/** What a page is called, in the language of the page that is being made. */
export function titleOf(made: Pick<URL, "pathname">, path: PagePath): string {
  return languageOf(made).say(pageTexts[path].title);
}

/** The six techniques of the handbook, in the order the work goes. */
export const techniques: readonly SitePage[] = [
  page("/marking/"),
  page("/cutting/"),
  page("/punching/"),
  page("/bending/"),
  page("/rolling/"),
  page("/joining/"),
];

/** A short technique beside the six. */
export const furnace = page("/furnace/");
const inOrder = [...techniques, furnace];

/** What one uses in the shop rather than reads. */
const tools: readonly SitePage[] = [page("/plan/"), page("/sheet/"), page("/shop/")];

const reference: readonly SitePage[] = [
  page("/tables/"),
  page("/tables/calculators/"),
  page("/checked/"),
  page("/sources/"),
  page("/safety/"),
  page("/glossary/"),
  page("/assign/"),
  page("/links/"),
  page("/device/"),
  page("/display/"),
];

/** The pages below `/tables/`, in the order of its list. */
export const tables: readonly SitePage[] = [
  page("/tables/gauges/"),
  page("/tables/materials/"),
  page("/tables/smallest-radii/"),
  page("/tables/spot-settings/"),
  page("/tables/hole-circles/"),
  page("/tables/rivets/"),
  page("/tables/fractions/"),
  page("/tables/general-tolerances/"),
  page("/tables/thickness-tolerances/"),
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

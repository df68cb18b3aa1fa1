/**
 * Address of a page or file of this site, under whatever path the site is published.
 * @param path - from the root of the site, e.g. `/bending/`; may carry a query and a fragment
 */
export function url(path: string): string {
  if (!path.startsWith("/") || path.startsWith("//")) throw new Error(`“${path}” is no path from the root of the site`);
  return `${import.meta.env.BASE_URL.replace(/\/$/, "")}${path}`;
}

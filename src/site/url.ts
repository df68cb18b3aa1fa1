/**
 * Address of a page or file of this site, under whatever path the site is published.
 * @param path - from the root of the site, e.g. `/bending/`; may carry a query and a fragment
 */
export function url(path: string): string {
  if (!path.startsWith("/") || path.startsWith("//")) throw new Error(`“${path}” is no path from the root of the site`);
  return `${import.meta.env.BASE_URL.replace(/\/$/, "")}${path}`;
}

/** The path of a page from the root of the site, from its path at the host: the other way round. */
export function sitePath(pathname: string): string {
  const base = import.meta.env.BASE_URL.replace(/\/$/, "");
  return base !== "" && pathname.startsWith(`${base}/`) ? pathname.slice(base.length) : pathname;
}

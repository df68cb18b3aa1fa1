/** What the search box answers. */
export const search = {
  searching: "Searching",
  found: (count: number, shown: number) => {
    if (count === 0) return "Nothing found";
    const pages = `${count} ${count === 1 ? "page" : "pages"} found`;
    return count > shown ? `${pages}, the best ${shown} shown` : pages;
  },
  failed: "The search could not be loaded. Connect to the network and type again.",
};

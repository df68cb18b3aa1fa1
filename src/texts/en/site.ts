/** What the site is called where a device lists it among its programs. */
export const site = {
  name: "Flat to Formed",
  shortName: "Flat to Formed",
  about: "A handbook for a teaching sheet-metal shop whose explanations calculate.",
};

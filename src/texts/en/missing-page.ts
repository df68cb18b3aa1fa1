/** The page one gets for an address that leads nowhere. */
export const missingPage = {
  title: "No such page",
  description: "This address leads nowhere in the handbook.",
  heading: "There is no page at this address",
  text: "It may be mistyped, or the page has moved. Every page is in the list at the foot, and the search finds them by their words.",
  first: "To the first page",
};

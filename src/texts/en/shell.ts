import type { Sentence } from "../sentence.ts";

/** What stands around every page: head, menu, foot, the search box, the switches. */
export const shell = {
  /** Name of this language in itself. */
  language: "English",
  otherLanguages: "This page in another language",
  /** Behind a link that leads to a page in English only. */
  inEnglish: "",

  skip: "Skip to the content",
  menu: "Menu",
  close: "Close",
  mainMenu: "Main",
  look: "Look",
  looks: { device: "as this device", light: "light", dark: "dark", contrast: "high contrast" },
  search: "Search",
  allPages: "All pages",
  /** What the pages promise, with links. */
  promise: {
    title: "What these pages promise:",
    parts: [
      "the arithmetic of the ",
      { link: "sources", to: "/sources/" },
      " they name, ",
      { link: "checked against printed values", to: "/checked/" },
      ", with its limits said. They do not know your machine or your sheet. The machine’s manual and rating plate, the rules of your shop and its trained staff come first: see the ",
      { link: "cautions", to: "/safety/" },
      ".",
    ] as Sentence,
  },

  onThisPage: "On this page",
  sources: "Sources",
  moreOnThis: "More on this",
  nextPages: "Next pages",
  before: (title: string) => `Before this: ${title}`,
  after: (title: string) => `After this: ${title}`,
};

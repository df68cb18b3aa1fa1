/** The page the site opens with. */
export const home = {
  site: "Flat to Formed",
  description:
    "A handbook for a teaching sheet-metal shop whose explanations calculate: blanks, scribe lines and settings from your own numbers.",
  title: "From flat sheet to formed part",
  lead: "A handbook for a teaching sheet-metal shop. It explains how the work is done, and its explanations calculate: put in your own numbers and read off the blank, the lines to scribe and the settings, each with its ± and where it comes from.",
  readAbout: (technique: string) => `Read about ${technique.toLowerCase()}`,
  opening: "A flat blank, its two sides swung up step by step until it is a channel",

  making: "What are you making?",
  nearestShape: "Start from the shape that is nearest, then put in the sizes of your drawing.",

  manyBlanks: "Many blanks, or an offcut to use up?",

  techniques: "The six techniques",
  notWritten: "Not written yet.",
  beingWritten:
    "This handbook is being written. What has a link is finished and checked; the rest is named so that you know it is still missing.",

  numbers: "One number, quickly",

  shop: "This shop",
  inventedShop: (name: string) =>
    `Answers are held against the machines and sheets of one shop. The one in this copy is invented: ${name}. An instructor puts the real one into a single file.`,
  ratedFor: (brake: string) => `${brake}, rated for`,
  fingers: "Fingers",
  fingersFrom: (count: number, from: string, to: string) => `${count}, from ${from} to ${to}`,
  shortestLeg: "Shortest leg",
  bendsMeasured: "Bends measured here",
  stock: "Sheets in stock",
  sizes: (count: number) => `${count} sizes`,
  more: "More about this shop",
  instructors: "For instructors",
  instructorsAbout:
    "Set questions that every student answers with numbers of their own, and see who is done. Nothing is sent anywhere.",
  instructorsLink: "Make an assignment",
};

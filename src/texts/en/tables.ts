import type { Sentence } from "../sentence.ts";

const readALength = { link: "Read a length", to: "/marking/#length-reader" };

/** The pages of the tables. What each is called stands in the site map. */
export const tables = {
  description:
    "The reference tables of the handbook: gauges, metals, radii, spot settings, hole circles, rivets, fractions and tolerances.",
  lead: "The numbers behind the calculators. Each one says where it was read, or that it is from memory.",
  about: (all: number, rows: number) =>
    `Every table can be sorted by a column, cut down to the rows you need, copied into a spreadsheet, and saved as a file. ${all} tables with ${rows} rows in all.`,
  calculatorsAbout: "What each calculator asks for and answers, for course pages and the command line.",
  files: "Files",
  filesAbout:
    "Comma-separated text after RFC 4180 in UTF-8. The first line holds the heads with their units, the last column the source of each row. Numbers are at full precision.",
  up: "Where this is",
  all: "All tables",

  gauges: {
    about: [
      "A gauge number is not a thickness. It is a line in a list, and the lists differ: number 16 is one thickness in plain steel, another in galvanised steel and a third in aluminium. Always say which list. Better still, measure the sheet and order it by its thickness. To turn one length into every list at once, use ",
      readALength,
      ".",
    ] as Sentence,
    list: "list",
    lists: "What each list is for",
    use: (what: string) => `For ${what}.`,
    rule: (rule: string) => ` Rule: ${rule}.`,
    usedFor: (metals: readonly string[]) => ` Used here for ${metals.join(", ")}.`,
  },
  materials: {
    about:
      "These are the numbers that the calculators start from. Real sheet differs from coil to coil, and where a band is given, it may lie anywhere in it. A mill certificate beats every number here: type its values into the calculator. Many values are still from memory, and each says so.",
    more: [
      "How sharp each metal may be bent is in ",
      { link: "smallest radii", to: "/tables/smallest-radii/" },
      ", how thick sheet sold by number is in ",
      { link: "gauge numbers", to: "/tables/gauges/" },
      ".",
    ] as Sentence,
  },
  smallestRadii: [
    "A bend that is too sharp cracks on the outside. How sharp is too sharp depends on the metal, its temper, its thickness and the rolling direction. Two published tables cover steel and aluminium; for other metals there is only a band. Bend a piece of scrap first: a rough, orange-peel skin says that the limit is near. The ",
    { link: "calculator", to: "/embed/smallest-radius/" },
    " picks the right cell for you.",
  ] as Sentence,
  spotSettings: {
    about: [
      "Clean sheet, good fit-up, the right tip face, then these values to start from. Weld a coupon of the same sheet and peel it apart: a good spot tears a button out of one sheet. The thinner sheet decides, and the thicker one may be three times as thick at most. The ",
      { link: "calculator", to: "/embed/spot-setting/" },
      " also knows zinc-coated steel, this shop’s welder, and what cannot be welded.",
    ] as Sentence,
    cautions: [
      "Sparks fly, electrodes crush fingers, and zinc gives off a fume that makes ill. The welder’s manual, the rules of your shop and its trained staff come first: see the ",
      { link: "cautions", to: "/safety/#joining" },
      ".",
    ] as Sentence,
  },
  holeCircles: {
    about: [
      "Measure every centre from your two datum edges. That is better than stepping round with dividers: each hole has its own error, and none hands it on to the next. ",
      { link: "Choose the number of holes and the diameter", to: "#hole-circle" },
      " to get the list of centres, or multiply the numbers of the tables by hand. How the circle gets onto the sheet: ",
      { link: "Hole circles, step by step", to: "/marking/hole-circles/" },
      ".",
    ] as Sentence,
    copy: "Copy the coordinates",
  },
  rivets: [
    "Take the first size that is at least three times as wide as the thicker sheet is thick. A solid rivet should stick out one and a half diameters before it is driven. How many it takes for a load, and how long they must be, is worked out by ",
    { link: "Rivet joint", to: "/embed/rivet-joint/" },
    ".",
  ] as Sentence,
  fractions: [
    "An inch is 25.4 mm exactly, so a sixty-fourth is 0.396875 mm. To find only what a certain rule can show, look for “16ths” or “32ths” in the rows. For any other length use ",
    readALength,
    ".",
  ] as Sentence,
  generalTolerances:
    "Most sizes on a drawing carry no ± of their own. Then the title block names a class, for instance ISO 2768-m, and these tables say what it means. For formed sheet the class is mostly medium or coarse. A copy of the standard prints other values for class c below 6 mm; the ones here agree with the other copy that was read.",
  thicknessTolerances: {
    about:
      "Sheet sold as 1.2 mm may be thinner or thicker by what its standard allows, and a blank worked out for 1.2 mm is then a little off. Measure the sheet with a micrometer, away from the edge, and calculate with what you measure. The width is that of the sheet as it was rolled, not of your blank.",
    edges:
      "Watch the edges of the rows: most of these standards put 1.20 mm into the row that ends there, one into the row that begins there. The heads say which.",
    standards: "Standards",
  },

  calculators: {
    description: "Every calculator of the handbook: what goes in, what comes out, how to embed it and how to call it.",
    lead: "Every calculator with what goes in and what comes out, for course pages, the command line and checking.",
    address: [
      "A calculator keeps its values in the address, one ",
      { code: "id.key=value" },
      " each, so a link is the file. Write a value as you would say it: ",
      { code: "1.2mm" },
      ", ",
      { code: "3/64in" },
      ", ",
      { code: "18ga" },
      ", ",
      { code: "45ksi" },
      ". A bare number is in the unit of the range given here. What is left out takes its usual value.",
    ] as Sentence,
    metalValues: [
      "Calculators about metal also take other values for the metal, for one answer: ",
      { code: "yield" },
      ", ",
      { code: "tensileStrength" },
      ", ",
      { code: "shearStrength" },
      ", ",
      { code: "elasticModulus" },
      " (N/mm²), ",
      { code: "density" },
      " (kg/m³) and ",
      { code: "areaReduction" },
      " (%).",
    ] as Sentence,
    inputs: "Goes in",
    outputs: "Comes out",
    key: "Key",
    what: "What",
    allowed: "Allowed",
    usual: "Usual",
    unit: "Unit",
    materialId: "id of a material",
    characters: (most: number) => `up to ${most} characters`,
    rows: (least: number, most: number, rows: string, form: string) => `${least} to ${most} ${rows}, ${form}`,
    asNumbers: "as JSON [60, 25]",
    asObjects: (keys: readonly string[]) => `as JSON objects with ${keys.join(", ")}`,
    empty: (meaning: string) => `empty: ${meaning}`,
    list: (keys: readonly string[]) => `list of ${keys.join(", ")}`,
    text: "text",
    number: "number",
    explainedOn: "Explained on",
    notWritten: "a page that is not written yet",
    alone: "Alone, to open or to embed",
    commandLine: "Command line",
    framing: "In a course page",
    framingHow: [
      "Put the address of the calculator alone, with any values, into a frame. It tells the page around it how tall it is by a message ",
      { code: '{ type: "flat-to-formed:height", id, height }' },
      ", sent at the start and whenever the height changes; ",
      { code: "height" },
      " is in CSS pixels. This lets the frame follow:",
    ] as Sentence,
  },
};

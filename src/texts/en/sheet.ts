/** The page that cuts blanks out of sheets. */

const times = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const sheet = {
  title: "Cut plan",
  heading: "Cut plan: blanks out of sheets",
  description:
    "Many blanks out of stock sheets and offcuts by cuts a shear can make: as few sheets as possible, with every stop setting in order.",
  lead: "Say what is to be cut out of what. The plan uses as little sheet as it can, says how near that is to the best there is, and lists every setting of the back stop in order. Everything you enter is in the address of this page: a link is the file.",
  noScript: "Scripts are off, so the fields do nothing: this is a worked example.",
  failed: "The form could not be loaded. Load the page again; this plan is a worked example.",

  howTitle: "How a shear cuts a sheet",
  how: [
    {
      term: "Edge to edge",
      text: "A squaring shear cuts from one edge of a plate to the other and cannot stop in the middle, so every stroke makes two rectangles of one. A drawing in which pieces interlock like bricks cannot be cut that way, however well it fills the sheet. No plan here has such a place.",
    },
    {
      term: "Back stop",
      text: "What is measured goes against the stop behind the blade and falls there; what you hold stays in front. All strokes at one setting are made before the stop is moved: fewer settings, fewer slips, and pieces that are all alike.",
    },
    {
      term: "Rolling direction",
      text: "A sheet is rolled along its length, and cracks sooner when a sharp bend runs along that direction. A piece with such a bend must lie one way; all others may be turned, which saves sheet.",
    },
    {
      term: "Trim",
      text: "Edges that were knocked in transport, or are not square, come off first. Trim that is not needed costs sheet and strokes.",
    },
    {
      term: "Nothing is lost in the cut",
      text: "A shear takes no width away, unlike a saw. A stop that is off by half a millimetre is off in every piece: measure the first one.",
    },
  ],

  continueWith: (name: string) => `Go on with “${name}”, the last list on this device`,
  addFromLast: (name: string, count: number) =>
    `Add the ${times(count, "piece", "pieces")} of “${name}”, the last list on this device`,

  groups: { goal: "What it is for", stock: "Sheets", pieces: "Pieces" },
  stockLabel: "From this shop’s stock",
  takeStock: "Take as the sheet",
  addStock: "Add to the other sheets",
  shelfTitle: "Offcuts kept on this device",
  shelfNone: "None yet. Offcuts of a plan can be kept below it.",
  shelfUse: "Use in this plan",
  shelfUsed: "in this plan",
  otherMetal: "another metal or thickness",
  removeOffcut: (name: string) => `Remove “${name}” from this device`,
  storageOff: "Nothing can be kept: storage is switched off or full.",
  storageNewer: "A newer version of these pages keeps the offcuts; load this page again.",
  storageUnreadable: (key: string) =>
    `The offcuts kept here could not be read. They were not deleted: they are in this browser under “${key}”.`,

  pasteTitle: "Paste a list",
  pasteLabel: "Lines from a spreadsheet or CSV file",
  pasteHelp:
    "Name, width, length, number, rolling direction (along, across), worth: one piece a line, cells between tabs, semicolons or commas. With a line of headings the columns may come in any order; units may stand in the heading or beside the number.",
  pasteReplace: "Take these pieces instead",
  pasteAdd: "Add to the pieces",
  pasteNothing: "There is no line to read.",
  pasteTaken: (count: number, bad: number) =>
    bad === 0
      ? `${times(count, "line", "lines")} taken.`
      : `${times(count, "line", "lines")} taken; ${times(bad, "line", "lines")} below could not be read and stay here.`,

  print: "Print the plan",
  copyLink: "Copy link to this plan",
  stop: "Stop, keep the best so far",
  goOn: "Plan again",

  staleGood: "Plan for the last good values. ",
  staleNone: "No plan yet. ",
  staleOne: "One field needs another value: ",
  staleMany: (count: number) => `${count} fields need another value: `,
  planning: "Planning",
  notYet: "no plan yet",
  doing: {
    "laying out": "laying out",
    "trying all": "trying every way",
    pricing: "weighing patterns against each other",
    rounding: "making whole sheets of patterns",
    repacking: "packing groups of sheets anew",
    "comparing cuts": "comparing cuts",
    weighing: "weighing scarce pieces",
  } as Readonly<Record<string, string>>,
  bestSoFar: (found: string, bound: string, gap: string) =>
    `Best so far ${found}; no plan can beat ${bound}; within ${gap} of that bound.`,
  stopped: "Stopped: this is the best that was found until then.",
  usedUp: "This is the best of many tries. ",

  proved: {
    sheets: (count: number) => `Proved best: no cuts from edge to edge do with fewer than ${times(count, "sheet", "sheets")}.`,
    "sheet-area": (area: string) => `Proved best: no cuts from edge to edge do with less than ${area} of these sheets.`,
    "piece-area": (area: string) => `Proved best: no cuts from edge to edge get more than ${area} out of one sheet.`,
    worth: (worth: string) => `Proved best: no cuts from edge to edge get more worth out of one sheet than ${worth}.`,
  },
  within: {
    sheets: (gap: string, bound: string) => `Within ${gap} of the bound: every plan needs at least ${bound}.`,
    "sheet-area": (gap: string, bound: string) =>
      `Within ${gap} of the bound: every plan needs at least ${bound} of these sheets.`,
    "piece-area": (gap: string, bound: string) => `Within ${gap} of the bound: no plan gets more than ${bound} out of one sheet.`,
    worth: (gap: string, bound: string) => `Within ${gap} of the bound: no plan is worth more than ${bound}.`,
  },

  planOf: (name: string) => `Cutting plan of ${name}`,
  noName: "Cutting plan without a name",
  material: "Material",
  thickness: "Thickness",
  shop: "Shop",
  cutBy: "Cut by",
  date: "Date",
  sheetCount: (count: number) => times(count, "sheet", "sheets"),
  sheetsAnswer: "Sheets",
  usedAnswer: "Used",
  settingsAnswer: "Stop is set",
  settingsTimes: (count: number) => times(count, "time", "times"),
  strokes: (count: number) => times(count, "stroke", "strokes"),
  massAnswer: "Mass of the sheets",

  sheetName: (index: number) => `Size ${index + 1}`,
  mainSheet: "sheet",
  sheetNumber: (first: number, last: number) => (first === last ? `Sheet ${first}` : `Sheets ${first} to ${last}, cut alike`),
  outOf: (name: string, size: string) => (name === "" ? size : `${name}, ${size}`),
  drawingTitle: (sheets: string, size: string, pieces: number, strokes: number) =>
    `${sheets}, ${size}: ${times(pieces, "piece", "pieces")}, ${times(strokes, "stroke", "strokes")}`,
  rolling: "rolling direction",
  drawingCaption: (unit: string) =>
    `Letters are the pieces of the list, numbers on the lines are the steps below, hatched is left over; ${unit}.`,
  strokesUnnumbered: "Lines too short for a number are in the list of every stroke.",

  piecesTitle: "Pieces",
  piecesCaption: (unit: string) => `Width × length, ${unit}`,
  piecesHead: {
    letter: "Piece",
    name: "Name",
    size: "Size",
    wanted: "Wanted",
    cut: "Cut",
    grain: "Rolling direction",
    mass: "Mass of one",
  },
  anyNumber: "any number",
  grain: { free: "either way", along: "along its length", across: "along its width" },
  unnamed: (index: number) => `piece ${index + 1}`,

  stepsTitle: (sheets: string) => `${sheets}: settings in order`,
  stepsCaption: (unit: string) => `Back stop and sizes in ${unit}; plates bear the numbers they fall with`,
  stepsHead: {
    step: "Step",
    stop: "Stop",
    strokes: "Strokes",
    put: "Put in",
    off: "Falls behind the blade",
    held: "Stays in your hands",
  },
  stopStays: "stays at",
  toLine: (size: string) => `scribe a line at ${size}`,
  theSheet: "the sheet",
  plate: (ids: string) => `plate ${ids}`,
  plates: (count: number, ids: string) => `${count} plates, ${ids}, in turn`,
  platesPlain: (count: number, ids: string) => `${count} plates, ${ids}`,
  to: "to",
  toStep: (step: number) => `to step ${step}`,
  offcut: (ids: string) => `offcut ${ids}`,
  offcuts: (count: number, ids: string) => `${count} offcuts, ${ids}`,
  trimStrip: (count: number) => (count === 1 ? "trim" : `${count} strips of trim`),
  ofEach: (count: number) => `${count} ×`,
  faults: {
    "longer-than-shear": "longer than the shear: cut it another way",
    "too-small-to-hold": "too short for the hold-downs: use snips, never hold it by hand",
  },

  everyStroke: (count: number) => `Every stroke (${count}) and where everything lies`,
  strokesCaption: (unit: string) => `Sizes width × length, ${unit}; ends as in the drawing`,
  strokesHead: {
    stroke: "Stroke",
    put: "Put in",
    putSize: "Its size",
    stop: "Stop",
    end: "End to the stop",
    blade: "Along the blade",
    off: "Falls",
    offSize: "Size of what falls",
    held: "Stays",
    heldSize: "Size of what stays",
    note: "Note",
  },
  ends: { width: { start: "bottom", end: "top" }, length: { start: "left", end: "right" } },
  line: "line",
  placesCaption: (unit: string) => `Corner at the left and bottom of the drawing: along the length, across the width; ${unit}`,
  placesHead: { part: "Part", size: "Width × length", along: "Along", across: "Across", turned: "Lies" },
  turned: "turned",
  straight: "straight",

  restTitle: "What is left over",
  restCaption: (unit: string) => `Width × length, ${unit}; the length runs along the rolling direction`,
  restHead: { part: "Offcut", count: "Number", size: "Size", mass: "Mass of one", keep: "Keep" },
  restNone: "Nothing that can be cut again.",
  scrap: (count: number, least: string) =>
    `${times(count, "strip", "strips")} with a side below ${least} that the hold-downs need: scrap.`,
  keep: "Keep as stock on this device",
  kept: "kept on this device",
  keptName: (job: string, id: string) => `${job} ${id}`,
  takeUsed: "These are cut: take the used offcuts off this device",

  cautionsTitle: "Before you start",

  fromPlan: "Cut these blanks out of stock sheets, with others or alone",
};

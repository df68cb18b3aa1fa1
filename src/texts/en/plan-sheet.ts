const count = (number: number, one: string, more: string) => `${number} ${number === 1 ? one : more}`;

/** The plan itself: what it says besides numbers and the sentences of the library, on screen and on paper. */
export const planSheet = {
  planOf: (name: string) => `Plan of ${name}`,
  codeOf: "Code of this plan’s address, to scan with a phone",
  noCode: "The address of this plan is too long for a code: pass it on as a part file.",
  unit: { mm: "mm", inch: "in", fraction: "in" },
  unitInWords: { mm: "mm", inch: "inches", fraction: "inches" },

  block: {
    kind: "Kind",
    material: "Material",
    thickness: "Thickness",
    quantity: "Quantity",
    measured: "Sizes measured",
    seam: "Seam",
    shop: "Shop",
    name: "Name",
    date: "Date",
  },
  kinds: { tube: "rolled tube", cone: "rolled cone", partOfTube: "part of a rolled tube" },
  seams: { butt: "butted", lap: "lap", grooved: "grooved", standing: "standing" },
  none: "none",
  blanks: {
    folded: "Blank, west to east × south to north",
    tube: "Blank, round the tube × along its axis",
    cone: "Piece to cut the blank from, west to east × south to north",
  },
  massOfOne: "Mass of one",

  seen: { read: "", memory: " (from memory)", practice: "" },
  check: (value: string, least: boolean, limit: string, holds: boolean) =>
    `${value}, ${least ? "at least" : "at most"} ${limit}: ${holds ? "holds" : "does not hold"}.`,
  allHold: (checks: number) => `All ${checks} checks hold.`,
  someBroken: (broken: number, checks: number, labels: readonly string[]) =>
    `${broken} of ${checks} checks do not hold: ${labels.map((label) => label.toLowerCase()).join("; ")}.`,
  checks: "Checks",
  nothingAdjusted: "Nothing is adjusted for you: a check that does not hold is yours to decide.",
  held: (checks: number) => count(checks, "check holds", "checks hold"),
  steps: "In this order",
  beforeYouStart: "Before you start",
  tickEach: ": read each on the safety page, then tick it",

  drawing: {
    flat: (name: string, width: string, depth: string) => `Flat layout of ${name}: ${width} by ${depth}`,
    caption: (unit: string, edges: readonly string[]) =>
      `The blank, front face up; ${unit} from the ${edges.join(" and the ")} ${edges.length === 1 ? "edge, the datum" : "edges, the datums"}. The line inside each bend is its sight line.`,
    tabs: (end: string) => `tabs ${end}`,
    bent: (name: string, panels: readonly string[]) => `${name}, bent: ${panels.join(", ")}`,
    section: "The finished part, seen along its bends.",
    sectionFrom: {
      y: "The finished part, seen along its bends from the west.",
      x: "The finished part, seen along its bends from the south.",
    },
    afterBend: (bend: string) => `The part in section after bend ${bend}`,
    blank: (name: string, width: string, depth: string) => `Blank of ${name}: ${width} by ${depth}`,
    sector: (name: string, outer: string, inner: string, angle: string) =>
      `Blank of ${name}, the sector of a ring: outer radius ${outer}, inner radius ${inner}, ${angle}`,
    rolledCaption: (unit: string) => `The blank, the later inside up, sizes in ${unit}. Edge A is west, B east.`,
    brightLines: "Bright lines belong to the seam.",
    chord: (length: string) => `chord ${length}`,
    centreFromSouth: (length: string) => `O is ${length} from the south edge`,
    over: (angle: string) => `over ${angle}`,
    finished: (name: string) => `${name}, finished: seen along its axis and from the side`,
    finishedCone: "The finished part, seen from its small end and from the side, diameters outside.",
    finishedTube: (measured: string) => `The finished part, seen along its axis and from the side, measured ${measured}.`,
  },

  printTemplate: "Print template 1:1",
  signOff: "Sign-off sheet: machines, cautions, questions",
  downloadFlat: "Download flat drawing (SVG, true mm)",

  cuts: {
    title: "At the shear",
    blanks: (blanks: number, width: string, depth: string, unit: string) =>
      `${count(blanks, "blank", "blanks")} ${width} × ${depth} ${unit}`,
    fromStock: (sheets: number, width: string, length: string) =>
      ` from ${sheets === 1 ? "a stock sheet" : `${sheets} stock sheets`} ${width} × ${length}`,
    noStock: "; no sheet of this shop’s stock is right, so the stop is set as for one that is just large enough",
    grain: { x: ", rolling direction west to east", y: ", rolling direction south to north" },
    diagonals: (length: string) => `. For square corners both diagonals ${length}.`,
    burr: "Take the burr off every edge; mark the datum edges.",
    sector: "Then cut the sector out of it: its straight edges on the shear, the arcs with snips or the band saw.",
    caption: (unit: string) => `Back stop, ${unit} from the blade, in cutting order`,
    heads: ["Setting", "Stop", "Cut", "Along the blade"],
    scribe: (size: string) => `scribe a line at ${size}`,
    strip: (times: number) => (times === 1 ? "a strip off the sheet" : `${times} strips off the sheet`),
    rest: (times: number): string => (times === 1 ? "the rest off; keep the piece" : "the rest off each; keep the pieces"),
    blank: (times: number) => (times === 1 ? "the blank off the strip" : `${times} blanks off the strips`),
    practice: (times: number) => count(times, "practice strip", "practice strips"),
    tooLong: (length: string) => `${length}, longer than the shear: cut it another way`,
  },

  practice: {
    title: "Practice pieces first",
    strips: (pieces: number, length: string, width: string, angle: string, radius: string, bends: readonly string[]) =>
      `${pieces} strips, ${length} × ${width}, bent across the middle to ${angle} at a radius of ${radius}, for ${bends.join(", ")}.`,
    enter: "Write down what you measure and enter it: the plan then fits this brake and this sheet.",
    caption: "What they measure",
    heads: (unit: string) => ["Piece", `Flat before, ${unit}`, "Leg A", "Leg B"],
    trialTitle: "Trial strips first",
    trialCaption: (length: string, width: string, unit: string) =>
      `Strips ${length} × ${width} of the same sheet: rise, inside radius wanted, and measured lying free; ${unit}`,
    trialHeads: ["Strip", "Rise", "Radius", "Measured"],
    any: "any",
  },

  scribe: {
    title: "Scribe list",
    caption: (unit: string) => `Set once, run along the edge named, go on to the next; ${unit}`,
    rolledCaption: (unit: string) => `In marking order, on the face that becomes the inside; ${unit}`,
    heads: { line: "Line", face: "Face", from: "From", what: "What" },
    readings: ["mm", "inch", "nearest 1/64 in (off by mm)"],
    back: "Lines on the back are scribed with the sheet turned over about the datum edge they are measured from, from that same edge.",
    sector: (angle: string) => `Sector: ${angle} between the seam lines. Its chord finds the angle better than a protractor.`,
  },

  holes: {
    title: "Holes on the flat",
    caption: (unit: string) => `Centres, ${unit} from the west and the south edge of the blank`,
    coneCaption: (unit: string) => `Centres, ${unit} from the west and the south edge of the rectangle`,
    heads: { hole: "Hole", fromWest: "From west", fromSouth: "From south", size: "Size", panel: "Panel", by: "By" },
    turned: (angle: string) => `, turned ${angle}`,
    die: (die: string) => `punch, die ${die}`,
  },

  punching: {
    title: "Holes and notches, while it is flat",
    beforeRolling:
      "Before rolling: the punch and the drill press do not reach into the finished part, and the places are marked on the flat.",
    centrePunch: "Centre-punch where lines cross; take the burr off afterwards.",
    caption: (unit: string) => `In this order, sizes in ${unit}`,
    heads: ["Step", "Make", "Size", "With"],
    punch: (die: string, percent: number) => `punch, die ${die}; ${percent} % of its force`,
    drill: "drill",
    drillAndSaw: "drill its ends or corners, saw or file between",
    notPunched: {
      "no-punch": "no such punch here",
      force: "too much force for the punch",
      throat: "beyond the throat of the punch",
    },
    cornerCutter: "corner cutter",
    toTheLines: "snips or band saw to the lines",
    notCut: {
      size: "too large for the corner cutter",
      thickness: "too thick for the corner cutter",
      shape: "more than a square corner",
    },
    thenRelief: (size: string) => `; then the square relief, ${size}`,
    holes: (numbers: readonly string[]) => `${numbers.length === 1 ? "hole" : "holes"} ${numbers.join(", ")}`,
    reliefs: (number: number) => count(number, "relief hole", "relief holes"),
    notches: (number: number) => count(number, "notch", "notches"),
    everyCorner: (what: string) => `${what}, one at every corner`,
    bothGuides: (size: string) => `both guides ${size}`,
    guides: (across: string, along: string) => `guides ${across} from west or east, ${along} from south or north`,
  },

  corners: {
    title: "Corners",
    caption: (unit: string) => `Guides from the edges of the blank, centres from its west and south edge, ${unit}`,
    heads: ["Corner", "Guide from west or east", "Guide from south or north", "Bends cross at", "Relief"],
  },

  bends: {
    title: "Bends",
    caption: (unit: string) => `On the blank, ${unit} from the edge named`,
    heads: {
      bend: "Bend",
      from: "From",
      tangents: "Tangent lines",
      sight: "Sight line",
      angle: "Angle",
      way: "Way",
      swing: "Swing to",
      radius: "Inside radius",
      deduction: "Deduction",
    },
    springsBackFlat: "springs back flat",
  },

  order: {
    title: "Order of the bends",
    none: "No order of the bends works on this brake.",
    tabsByHand: (tabs: readonly string[]) =>
      `Before the first, bend the tabs by hand, over the edge of a block or with folding pliers: ${tabs.join(", ")}.`,
    turnOver: "turn it over; ",
    turned: { no: "", "end for end": "turn it end for end; ", quarter: "turn it a quarter; " },
    faceUp: (face: string) => `${face} face up, `,
    onLeaf: (end: string) => `${end} end on the leaf`,
    nose: (distance: string, from: string) => ` Nose to the sight line ${distance} from ${from}.`,
    swing: (angle: string) => ` Swing to ${angle}.`,
    rowStays: "The row of fingers may stay.",
    setFingers: (fingers: string, place: string) => `Set the fingers ${fingers}${place}.`,
    sameFingers: "The same fingers stay.",
    places: { row: "", set: "", beside: ", beside the side that stands", between: ", between the sides that stand" },
    goesIn: {
      front: "",
      sideways: " Slide it in from the end.",
      "with fingers": " Put the fingers into the piece, then both into the beam.",
    },
    comesOut: {
      front: "",
      sideways: " Slide it out at the end.",
      "with fingers": " Take the fingers out together with the piece.",
    },
  },

  rolls: {
    title: "At the rolls",
    wholeLength: "Both screws alike",
    atEnd: (end: string) => `At the ${end}`,
    setting: (where: string, held: string, radius: string, flat: string) =>
      `${where}: held at ${held} for ${radius} inside; flat ends about ${flat}.`,
    caption: (unit: string) => `From flat contact; inside radius after the pass; ${unit}`,
    pass: "Pass",
    heads: { turns: "Turns", rise: "Rise", radius: "Radius" },
    headAt: (head: string, end: string) => `${head}, ${end}`,
  },

  joints: {
    tabs: "Joining the tabs",
    seam: "Joining the seam",
    notWelded: (why: string) => `This metal is not spot welded here: ${why} Rivet it.`,
    noSchedule: "No schedule for this thickness was read: ask your instructor.",
    spotCaption: "Where to start at the spot welder; test coupons of the same two sheets decide",
    spotHeads: ["Joints", "Tip face", "Force", "Current", "Time", "Button, at least", "Coupon passed"],
    spots: (number: number) => count(number, "spot", "spots"),
    beyond: " (beyond this welder)",
    between: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
    rivetCaption: "Drill through both layers together, take the burr off between them, then rivet",
    rivetHeads: ["Joints", "Rivet", "Drill", "Grip", "Solid rivet, length"],
    rivets: (number: number) => count(number, "rivet", "rivets"),
    onto: (tab: string, side: string, number: number) => `${tab} onto ${side}: ${number}`,
    folding: "Folding the seam",
    foldCaption: (seam: string, size: string, high: boolean, unit: string) =>
      `A ${seam} seam, finished ${size} ${high ? "high" : "wide"}; ${unit}, seen from the later inside`,
    foldHeads: ["Fold", "From edge", "Distance", "Way"],
  },

  sizes: {
    title: "Finished sizes",
    caption: (unit: string) => `In ${unit}; ± for k = 2 of marking, setting, bend data and thickness`,
    heads: ["Panel", "Size", "±", "Measured"],
    rolledCaption: (unit: string) => `± with k = 2; ${unit}`,
    rolledHeads: ["Size", "Wanted", "±", "Measured"],
    mayComeBackFlat: "may come back flat",
    marking: (method: string, error: string) => `Marking with ${method.toLowerCase()}: ±${error} a line.`,
    nose: (error: string) => `Setting the nose to a line by eye: ±${error}, common practice.`,
    rolledFrom: "The ± is from marking, seam, springback and thickness together.",
    template: "How round the part is, the template tells.",
  },
};

/** Words in the figures of the cutting pages, by figure. */
export const figuresCutting = {
  boxBlank: {
    title: (width: number, depth: number, side: number, flatWidth: string, flatDepth: string, guide: string) =>
      `Blank of an open box ${width} by ${depth} mm outside with sides ${side} mm high: ${flatWidth} by ${flatDepth} mm, with a square of ${guide} mm cut out of each corner`,
    cutOut: "cut out",
    bend: "bend",
  },
  cornerGuides: {
    title: (guide: string) =>
      `Corner cutter from above: the edges of the blank lie against two guides, each ${guide} mm from a blade; both blades cut at once`,
    waste: "waste",
    guideForOneEdge: "guide for one edge",
    guideForTheOther: "guide for the other",
    blades: "blades",
    blank: "blank",
  },
  cornerRelief: {
    title: (relief: string) =>
      `The corner of the blank enlarged, without and with a relief hole of ${relief} mm: the two bend zones cross in the corner, and the hole takes the crossing away`,
    hole: (relief: string) => [`hole ${relief}, where the`, "inner lines cross"],
    zonesCross: ["the zones cross: it", "bulges or tears"],
  },
  cornerUp: {
    title: (gap: number, clear: string) =>
      `A box corner from above: each side stops ${gap} mm short of the outside face of the other, so the corner stands open by ${clear} mm`,
    openBy: (clear: string) => `open by ${clear}`,
    baseBeginsHere: ["the base begins here,", "at the end of the bend"],
    side: "side, standing up",
  },
  edgeZones: {
    title:
      "The two edges of one shear cut: the piece on the table is rolled over at its upper face and has its burr below; the piece that falls has it the other way round",
    rollover: "rollover",
    burnish: "burnish",
    fracture: "fracture",
    burr: "burr",
    staysOnTheTable: ["stays on the table:", "burr below"],
    fallsBehind: ["falls behind:", "burr on top"],
  },
  gapSizes: {
    title: (thickness: number, low: string, high: string) =>
      `Gap between shear blades: too small, right and too large; for ${thickness} mm sheet the rule gives ${low} to ${high} mm`,
    tooSmall: ["too small: the", "cracks miss"],
    right: ["right: the", "cracks meet"],
    tooLarge: ["too large: bent", "over, high burr"],
  },
  guardReach: {
    title: (guardOpening: number, asked: number, here: number) =>
      `Height of the opening against its distance from the blade: an opening of ${guardOpening} mm must be ${asked} mm away; on this shop's shear it is ${here} mm`,
    thisShop: (guardOpening: string, here: string) => [`this shop: ${guardOpening} high,`, `${here} from the blade`],
    tooNear: ["too near: a hand", "gets through"],
    farEnough: "far enough",
    heightOfTheOpening: "height of the opening, mm",
    distanceFromTheBlade: "distance from the blade, mm",
  },
  rakeAndForce: {
    title: (whole: string, length: number, thickness: number, rake: number, raked: string, atOnce: string) =>
      `Parallel blades need ${whole} for a cut of ${length} mm in ${thickness} mm steel; a blade raked by ${rake} degrees needs ${raked}, because only ${atOnce} mm are cut at once`,
    parallel: (whole: string) => `parallel: all of it at once, ${whole}`,
    raked: (raked: string) => `raked: only the triangle, ${raked}`,
    alreadyCut: "already cut",
  },
  sawSetup: {
    title:
      "Band saw from the side: the upper guide stands just above the work, the sheet lies on a scrap board on the table and is pushed with a block, hands well to the side of the band",
    guide: ["guide, just above", "the work"],
    sheetOnScrapBoard: ["sheet on a", "scrap board"],
    block: "block",
    wheelDoorShut: "wheel door shut",
    table: "table",
    band: "band",
  },
  shearParts: {
    title:
      "Side view of a foot shear: the sheet lies on the table under the finger guard and the hold-down, the upper blade comes down just behind the lower one, the back stop stands behind",
    upperBlade: "upper blade",
    holdDown: "hold-down",
    fingerGuard: "finger guard",
    sheet: "sheet",
    backStop: "back stop",
    lowerBlade: "lower blade",
    table: "table",
    offcutDrops: "offcut drops",
    treadle: "treadle",
  },
  shearWays: {
    title:
      "Three ways to cut on a shear, from above: a scribed line laid on the lower blade, the sheet pushed to the back stop, the sheet drawn to a stop on the scale of the table",
    behindTheShear: "behind the shear",
    line: "line",
    kept: "kept",
    rest: "rest",
    waste: "waste",
    ways: {
      line: ["to a line:", "kept in front"],
      stop: ["to the stop:", "kept behind"],
      scale: ["to the scale:", "kept in front"],
    },
  },
  snipsBites: {
    title: (beside: string) =>
      `Cutting with snips ${beside} mm beside the line: with the blades stopped before they close the edge is smooth, closed fully each bite leaves a jag`,
    stoppedBeforeTheyClose: "stopped before they close",
    closedAtEveryBite: "closed at every bite",
    line: "line: file down to it",
    jag: "jag, like a needle",
  },
  snipsKinds: {
    title:
      "Snips from above: the left pair cuts straight and to the left, the straight pair cuts straight lines and wide curves, the right pair cuts straight and to the right",
    left: ["left pair"],
    straight: ["straight pair"],
    right: ["right pair"],
  },
  squareCuts: {
    title:
      "Order of cuts for a square blank: trim a long side as datum edge, trim one end with that edge against the side fence, cut to width with it against the stop, cut to length with the square end against the stop",
    steps: [
      ["1  trim a long side:", "the datum edge"],
      ["2  datum to the fence,", "trim one end"],
      ["3  datum to the stop,", "cut to width"],
      ["4  square end to the", "stop, cut to length"],
    ],
  },
  stockMass: {
    title: (lightest: string, heaviest: string, oneLifter: number) =>
      `Mass of whole sheets in this shop: from ${lightest} to ${heaviest} kg, against ${oneLifter} kg for one person in the best posture`,
    mass: (mass: string) => `${mass} kg`,
    oneLifter: (oneLifter: number) => `${oneLifter} kg`,
  },
  stripFaults: {
    title:
      "Three faults of a sheared strip: bow, curved up along its length; camber, curved sideways in its own plane; twist, turned about its length",
    bow: "bow",
    fromTheSide: "from the side",
    camber: "camber",
    fromAbove: "from above",
    twist: "twist",
    slanting: "slanting",
  },
  teethInCut: {
    title: (teethPerInch: number, thickness: number, squareOn: string, slanting: string, flattestFeed: number) =>
      `A band of ${teethPerInch} teeth an inch in ${thickness} mm sheet: ${squareOn} teeth are in the cut when the sheet lies square to it, ${slanting} when the blade runs at ${flattestFeed} degrees to its face`,
    squareOn: (squareOn: string) => ["square on:", `${squareOn} teeth, it hooks`],
    slanting: (slanting: string) => ["slanting:", `${slanting} teeth`],
  },
};

/** Words in the figures of the joining pages, by figure. */
export const figuresJoining = {
  buttonResults: {
    title:
      "Four results of a peel test: a whole button measured across two ways at right angles; a button that is too small; a clean break between the sheets; a hole blown through",
    wholeButton: ["whole button,", "large enough:", "passes"],
    smallerThan: (least: number) => ["smaller than", `${least}√t: too cold`],
    cleanBreak: ["clean break:", "no weld"],
    blownOut: ["blown out:", "too hot, too", "little force"],
    meanWidth: "d = half of d1 + d2, read at right angles",
  },
  coupon: {
    title: (length: number, width: number, lap: number, pitch: string) =>
      `Test coupon from above: two strips ${length} by ${width} mm that lap by ${lap} mm, with two spots ${pitch} mm apart`,
    lap: (lap: number) => `lap ${lap}`,
    firstSpot: ["first spot"],
    secondSpot: ["second spot:", "this one counts"],
    sizesIn: "sizes in mm",
  },
  drivenHeads: {
    title:
      "Four driven rivets in section: a sound head; a head that is too small because the shank was short or not struck enough; a leaning head; a gap between the sheets that filled with rivet",
    sound: (headWidth: number, headHeight: number) => ["sound:", `${headWidth} D wide,`, `${headHeight} D high`],
    tooSmall: (leastHeadWidth: number, leastHeadHeight: number) => [
      "too small:",
      `< ${leastHeadWidth} D or`,
      `< ${leastHeadHeight} D`,
    ],
    leaning: ["leaning:", "struck at", "a slant"],
    gap: ["gap: sheets", "not drawn", "together"],
  },
  fitUp: {
    title:
      "Fit-up: sheets that lie together weld well; over a gap the tips spend their force on bending the sheet; a burr or dirt carries the current in one point and spits",
    close: ["close, clean:", "force on the joint"],
    gap: ["gap: force is lost", "in bending"],
    burr: ["burr, rust, dirt:", "one point, it spits"],
  },
  groovedSteps: {
    title:
      "A grooved seam in three steps: one edge folded up and one down; the hooks pulled into each other; the seam set down over a bar with a grooving tool",
    foldTheHooks: "1  fold the hooks, one up, one down",
    hookThemTogether: "2  hook them together, pull tight",
    setItDown: "3  set it down",
    groovingTool: ["grooving", "tool"],
    barOrStake: "bar or stake",
  },
  heatPlaces: {
    title:
      "Section through two tips and two sheets, with the temperature beside it: cool in the water-cooled tips, hottest where the two sheets touch",
    waterCoolsTheTip: ["water cools", "the tip"],
    tipOnSheet: "tip on sheet",
    sheetOnSheet: "sheet on sheet",
    temperature: "temperature →",
    water: "water",
  },
  jointKinds: {
    title: "Four joints in section: a spot weld, a rivet, a grooved seam and a standing seam",
    spotWeld: ["spot weld: a lens", "of melted metal"],
    rivet: ["rivet: a pin with", "a head each side"],
    groovedSeam: ["grooved seam: two", "hooks, set down flat"],
    standingSeam: ["standing seam:", "a folded rib"],
  },
  jointLoads: {
    title:
      "Three loads on a joint: along the sheets, where it is strong; straight apart, where it is weaker; peeling it open from the edge, where it is weakest",
    alongTheSheets: ["along the sheets:", "strong"],
    straightApart: ["straight apart:", "weaker"],
    peeledOpen: ["peeled open:", "weakest"],
  },
  pairRatio: {
    title:
      "Three pairs of sheets between tips: alike, one three times the other, one five times the other; the hot lens sits in the middle of the pile and leaves the joint of an unlike pair",
    alike: ["1 : 1, nugget", "on the joint"],
    oneToThree: ["1 : 3, only just:", "it grows in the", "middle of the pile"],
    oneToFive: ["1 : 5: it never", "reaches the", "thin sheet"],
  },
  peelTest: {
    title:
      "Peel test: one sheet of the coupon stands in the vice, the other is bent away; then it is rolled off with a slotted rod until the weld tears out",
    oneSheetVice: ["1  one sheet in the", "vice, bend the", "other out"],
    rollOffSlotted: ["2  roll it off", "with a slotted rod", "or pliers"],
  },
  pressWindow: {
    title: (pressScatter: number) =>
      `Weld times allowed for each thickness as bars, and across each the spread of a finger of ${pressScatter} seconds either way: it covers far more than the bar`,
    thickness: "thickness",
    weldTime: "weld time, s",
    allowedByTheTable: "allowed by the table",
    fingerAimsMiddle: "a finger that aims at its middle",
  },
  pullRivet: {
    title:
      "A pull rivet in section: pushed into the hole from one side; its stem pulled, so that the far end spreads; the stem snapped off",
    pushOneSide: ["1  push it in", "from one side"],
    pull: ["2  pull: the bead", "spreads the end"],
    stemSnapsOff: ["3  the stem snaps", "off: catch it"],
  },
  rivetFailures: {
    title:
      "Four failures of a rivet joint: the rivet cut through; the hole stretched; the sheet torn out to the edge; the sheet torn across between the holes",
    rivetCut: ["rivet cut:", "too thin or", "too few"],
    holeStretched: ["hole stretch-", "ed: sheet", "too thin"],
    tornToTheEdge: ["torn to the", "edge: e too", "small"],
    tornAcross: ["torn across:", "p too small"],
  },
  rivetOrder: {
    title: (order: string) =>
      `Order of seven rivets in a row, from the left: ${order}; first both ends, then the middle, then between`,
    holdSheetsPlace: "1 to 3 hold the sheets in place for the rest",
  },
  rivetPlaces: {
    title: (pitch: string, edge: string, rows: string) =>
      `Two zigzag rows of rivets in a lap from above: pitch ${pitch}, ${edge} to the edge, rows ${rows} apart`,
    least: (pitch: string, edge: string) => `least: pitch ${pitch}, edge ${edge}`,
  },
  rivetSizes: {
    title: (inches: string, sheet: number, standsOut: number, width: string, height: string) =>
      `A rivet of ${inches} in two sheets of ${sheet} mm: before driving its shank stands out by ${standsOut} diameters, after driving a head ${width} mm wide and ${height} mm high holds the sheets`,
    before: "before",
    driven: "driven",
    rivet: (inches: string) => `${inches} rivet, sizes in mm`,
  },
  seamBlank: {
    title: (width: number, sideA: string, allowance: string) =>
      `Flat of a tube for a grooved seam ${width} mm wide: ${sideA} mm added on each edge, the fold ${width} mm from the raw edge, ${allowance} mm in all`,
    roundTheTube: "round the tube",
    body: "body",
    bright: ["bright: fold lines, one up, one down", "dashed: what the body alone would need"],
    sizesIn: "sizes in mm",
  },
  seamNotch: {
    title:
      "Flat with a folded edge along the top and seam edges left and right: the upper corners are cut away, the lower ones snipped at a slant",
    edgeFoldedLater: "edge folded later",
    body: "body",
    seam: "seam",
    takenOut: "taken out: four layers would meet here",
    snipped: "snipped, so that no point stands out",
  },
  seamSections: {
    title: "Three seams in section: a lap of width W; a grooved seam of width W, set down; a standing seam of height W",
    lap: "lap",
    grooved: "grooved",
    standing: "standing",
  },
  shunting: {
    title:
      "Section of two sheets with a finished spot on the left and tips on the right: part of the current runs through the finished spot instead of the new one",
    pitch: "pitch p",
    firstSpot: ["first spot:", "a way around"],
    secondSpotGets: ["second spot", "gets the rest"],
  },
  spotPlaces: {
    title: (pitch: string, edge: string, lap: string) =>
      `Lap of two sheets of 1 mm from above with a row of spots: pitch ${pitch}, ${edge} to each edge, lap ${lap} mm`,
    lap: (lap: string) => `lap ${lap}`,
    widestPitch: (widestPitch: number) => `p up to ${widestPitch} d`,
    widestEdge: (widestEdge: number) => `e up to ${widestEdge} d`,
  },
  spotShapes: {
    title:
      "Joints for spot welding in section: a plain lap; two flanges back to back with room for the tips; a spot so near to an upright leg that the tip touches it",
    lap: ["lap"],
    flanges: ["flanges: room for", "the body of the tip"],
    tooNearToLeg: ["too near to a leg:", "the tip welds it", "from the side"],
  },
  standingSteps: {
    title: (height: string, sideA: string, sideB: string) =>
      `A standing seam ${height} mm high in three steps: edges of ${sideA} and ${sideB} mm turned up, the longer folded over the shorter, both folded over together`,
    turnBothEdgesUp: ["1  turn both", "edges up"],
    foldLongerOne: ["2  fold the longer", "one over"],
    foldBothDown: ["3  fold both", "down"],
    sizesIn: "sizes in mm",
  },
  tipShapes: {
    title:
      "Four pairs of tips on two sheets: dressed to the right face; mushroomed, so that the current spreads; out of line; tilted, so that they press on an edge",
    face: "face",
    dressed: ["dressed", ""],
    mushroomed: ["mushroomed:", "weld too cold"],
    outOfLine: ["out of line:", "weld slants"],
    tilted: ["tilted: dents", "and spits"],
  },
  weldCycle: {
    title: (shortest: string, longest: string) =>
      `Force and current over time: the force comes first and goes last; the current flows for ${shortest} to ${longest} seconds in 1 mm steel`,
    force: "force",
    current: "current",
    squeeze: "squeeze",
    weld: "weld",
    hold: "hold",
    letGo: "let go",
    mayEndInHere: ["may end", "in here"],
    steel: "1 mm steel; squeeze and hold not to scale",
  },
  weldStages: {
    title:
      "Four stages of a spot weld in section: squeeze, weld, hold, let go; a lens of molten metal grows where the sheets touch",
    squeeze: ["1  squeeze:", "force, no", "current"],
    weld: ["2  weld:", "current heats", "the joint"],
    hold: ["3  hold:", "still pressed,", "it sets"],
    letGo: ["4  let go:", "a nugget", "joins both"],
  },
  welderParts: {
    title:
      "Side view of a pedestal spot welder: two arms reach out of the frame and press two sheets between their tips; a pedal closes them, a switch starts the current",
    throat: "throat",
    switch: ["switch: starts and", "ends the current"],
    upperArm: "upper arm",
    lowerArm: "lower arm",
    tip: "tip",
    sheets: "sheets",
    transformer: ["transformer:", "low voltage,", "large current"],
    pedal: ["pedal: closes", "the tips"],
  },
};

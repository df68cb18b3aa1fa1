/** Words in the figures of the marking pages, by figure. */
export const figuresMarking = {
  caliperScribe: {
    title: (setting: number, tilt: number, far: string) =>
      `A caliper set to ${setting} mm with one jaw against the edge and the other scribing; tilted by ${tilt} degrees the line comes ${far} mm from the edge`,
    beamLevel: "beam level",
    fixedJaw: ["fixed", "jaw"],
    setTo: (setting: number) => `set to ${setting}`,
    tilted: (setting: number, tilt: number) => `set to ${setting}, tilted by ${tilt}°`,
  },
  coatScratch: {
    title:
      "Section of zinc-coated sheet: a scribed line cuts through the zinc into the steel, a pencil line lies on top of the zinc",
    scribed: "scribed: bare steel",
    drawn: "drawn: zinc whole",
    zinc: "zinc",
    steel: "steel",
    notToScale: "not to scale",
  },
  datumEdges: {
    title:
      "A plate with two datum edges, left and below; the places of all holes are measured from these two edges and none from another hole",
    datumEdge: "datum edge",
    secondDatumEdge: "second datum edge, square to the first",
  },
  diagonals: {
    title: (lean: string) =>
      `Two blanks that are not square: one leans, and its diagonals differ by 1 mm when it is ${lean} mm out; one narrows to one end, and its diagonals are equal`,
    shiftedBy: (lean: string) => `shifted by ${lean}`,
    equal: "equal",
    leans: ["leans: the diagonals", "tell it"],
    narrows: ["narrows: only the", "sides tell it"],
  },
  dividerWalk: {
    title: (tooWide: number, short: string) =>
      `Stepping eight holes round a circle with dividers set ${tooWide} mm too wide leaves the last space ${short} mm too narrow`,
    dividers: "dividers",
    lastSpaceTooNarrow: (short: string) => ["last space", `${short} too`, "narrow"],
    thinCircles: ["thin circles: where", "they should be"],
    errorDrawnTimes: (enlarged: number) => `error drawn ${enlarged} times too large`,
  },
  errorGrowth: {
    title: (perLine: number, worst: string, likely: string) =>
      `Error of the last of several lines, each good to ${perLine} mm: end to end it grows to ${worst} mm at worst and ${likely} mm likely at eight lines, from one edge it stays ${perLine} mm`,
    worst: "end to end, at worst",
    likely: "end to end, likely",
    allFromOneEdge: "all from one edge",
    numberOfLines: "number of lines",
    lastLineOffBy: "last line off by ± mm",
  },
  fewerLines: {
    title:
      "Eight holes on a circle: with the first hole on the axis five lines are scribed from each edge, turned by half a step only four",
    firstHoleAt: (angle: string, lines: number) => [`first hole at ${angle}°:`, `${lines} lines each way`],
  },
  heightGauge: {
    title:
      "On a surface plate a sheet stands on its datum edge, held against a square block; the height gauge beside it scribes a line at a height above the plate",
    heightSet: "height set",
    sheet: "sheet",
    squareBlock: "square block",
    scriber: "scriber",
    slide: "slide",
    surfacePlate: "surface plate",
    datumEdge: "datum edge",
  },
  paperTemplate: {
    title:
      "A paper template glued to a sheet: its two datum lines lie on the datum edges, a printed bar of 100 mm proves the scale, every centre is pricked through the paper",
    bar: "100 mm",
    paper: "paper",
    sheet: "sheet",
    prickThrough: "prick through",
    datumLinesDatum: "datum lines on datum edges",
  },
  parallax: {
    title: (slant: number, error: string) =>
      `Looking at the division of a rule at ${slant} degrees from upright shifts the mark on the sheet by ${error} mm for a rule 1 mm thick`,
    rule: ["rule, 1 mm thick"],
    lookStraightDown: ["look", "straight down"],
    lookAtSlant: "look at a slant",
    sheet: "sheet",
  },
  punchSteps: {
    title:
      "Marking a centre: lean the prick punch to see and feel the crossing of the lines, stand it up and tap lightly, check, then deepen with a centre punch of 90 degrees",
    lean: ["1  lean, and find", "the crossing"],
    upright: ["2  stand it up,", "tap lightly"],
    deepen: ["3  look, then", "centre-punch"],
  },
  rightAngle: {
    title:
      "Right angles without a square: sides of 300 and 400 mm whose ends are 500 mm apart, and two equal arcs from points at equal distances on either side of the corner",
    sides: "3, 4 and 5",
    dividers: "dividers",
  },
  scribeLean: {
    title:
      "A scriber held upright stands off from the rule; leaning outwards its point runs in the corner; it also leans the way it is drawn",
    rule: "rule",
    line: "line",
    upright: ["upright: beside", "the rule"],
    leaningOut: ["leaning out:", "in the corner"],
    fromTheSide: ["from the side:", "it trails"],
  },
  sixAndTwelve: {
    title: "The radius of a circle steps round it exactly six times; bisecting one of the six arcs gives twelve holes",
    six: "six: step the radius",
    twelve: "twelve: halve one arc",
  },
  squareTurned: {
    title:
      "A square tried by turning it over at one point of a straight edge: if the two lines part, half of the gap is the error of the square",
    firstLine: "first line",
    secondLine: ["second line,", "turned over"],
    gapAt: (gap: number, reach: number, degrees: string) => `gap ${gap} at ${reach} mm: out by ${degrees}°`,
  },
  squareUse: {
    title:
      "A combination square with its head against the datum edge: along the blade it marks a line square to the edge, with its end and a sliding scriber a line parallel to it",
    scriber: "scriber",
    squareToTheEdge: "square to the edge",
    parallelToIt: "parallel to it",
    datumEdge: "datum edge",
  },
};

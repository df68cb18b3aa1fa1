/** Words in the figures of the punching pages, by figure. */
export const figuresPunching = {
  burrSide: {
    title:
      "Two bends whose sheared edge has a burr: with the burr on the inside of the bend, and with the burr on the outside, where a crack starts",
    burrInside: ["burr inside:", "it is squeezed"],
    burrOutside: ["burr outside: a", "crack starts there"],
  },
  clearances: {
    title:
      "The edge of a hole by the clearance: a tight die tears twice and leaves two bright bands, a right one leaves a bright band and a small burr, a loose one leaves a large rounded edge and a long burr",
    tight: ["too tight:", "torn twice, two", "bright bands"],
    right: ["right:", "one bright band,", "small burr"],
    loose: ["too loose:", "drawn in deep,", "long burr"],
  },
  cutStages: {
    title:
      "Three sections through punch, sheet and die: the punch draws the edge in, cuts into the sheet until cracks start at both edges, and the slug breaks off and drops",
    punch: "punch",
    die: "die",
    drawnIn: ["the edge is", "drawn in"],
    cut: ["cut bright,", "cracks start"],
    broken: ["the rest breaks,", "the slug falls"],
  },
  forceCurve: {
    title: (diameter: number, thickness: number, force: string, sheared: string) =>
      `Force over depth of the punch for a hole of ${diameter} mm in ${thickness} mm steel: a flat punch needs ${force} over a short way, one ground with shear ${sheared} over a longer way, with the same work`,
    force: "force, kN",
    depthOfThePunch: "depth of the punch, mm",
    flatPunch: (force: string) => [`flat punch, ${force}`, "(dashed: a real one)"],
    withShear: "with shear,",
  },
  holeEdge: {
    title:
      "Section through the edge of a punched hole with its four zones, drawn-in edge, bright band, broken face and burr, and below it the slug with the same zones upside down",
    drawnInEdge: "drawn-in edge",
    brightBand: ["bright band:", "the size of the punch"],
    brokenFace: ["broken face: wider,", "up to c on each side"],
    burr: "burr",
    sheet: ["sheet,", "punched", "from above"],
    slug: ["slug: the same", "upside down"],
    sizeDie: ["the size", "of the die"],
  },
  holeNearBend: {
    title:
      "A hole close to a bend from above: round before bending, drawn out towards the bend afterwards, while a hole further away stays round",
    bent: ["bent: the near hole", "is drawn out of round"],
    punchedInTheFlat: ["punched in the flat,", "the bend marked"],
    bend: "bend",
  },
  holePlaces: {
    title:
      "A leg and two holes from above and in section: the least distance from the hole to the inside face of the leg, to the next hole and to the edge, each from the edge of the hole",
    whereTheBendEnds: "where the bend ends",
    leg: ["leg,", "up"],
    toScale: (thickness: number, radius: number, diameter: number) =>
      `to scale, T = ${thickness} mm, R = ${radius} mm, hole ${diameter} mm`,
  },
  legInTheWay: {
    title:
      "Two sections through punch and die with a bent sheet: a leg standing up meets the holder of the punch, a leg hanging down meets the holder of the die",
    legUp: ["leg up: the holder", "comes down on it"],
    legDown: ["leg down: the die’s", "holder is in its way"],
  },
  lookDown: {
    title:
      "The centre mark at the crossing of two scribed lines with a circle of the size of the hole, and from the side the tip of the punch above the mark",
    mark: "mark",
    fromAbove: ["from above: lines, mark", "and a circle to see by"],
    tip: "tip",
    punch: "punch",
    fromTheSide: ["from the side: the tip", "drops into the mark"],
  },
  partHoles: {
    title:
      "A punch on the edge of the sheet cuts on one side only and is pushed aside; a long opening is punched as a row, every second hole first and the ones between afterwards",
    halfHolePushes: ["half a hole pushes", "the punch aside"],
    row: ["a row: first every", "second, then between"],
  },
  punchParts: {
    title: "Side view of a hand punch: lever and ram above, punch, stripper, sheet and die in line, and a deep frame behind",
    lever: "lever",
    ram: "ram",
    punch: "punch",
    stripper: "stripper",
    sheet: "sheet",
    die: ["die, with", "its letter"],
    slugFallsHere: "slug falls here",
    frame: "frame",
    throat: "throat",
  },
  shearedFaces: {
    title: "Three punches above the sheet: a flat face, a face with one slope, and a face with two slopes like a roof",
    flat: ["flat: all at", "once, most force"],
    oneSlope: ["one slope: less,", "but pushed aside"],
    twoSlopes: ["two slopes: less,", "and balanced"],
  },
  stripping: {
    title:
      "The punch on its way back: the stripper holds the sheet down and the punch slides out; without a stripper the sheet rides up on the punch and tilts",
    stripperHoldsSheet: ["the stripper holds", "the sheet down"],
    withoutSheetRides: ["without it the sheet", "rides up and tilts"],
    stripper: "stripper",
  },
  throatReach: {
    title: (width: number, depth: number, throat: number) =>
      `A sheet of ${width} by ${depth} mm from above: holes within ${throat} mm of any edge can be punched, the field in the middle is out of reach`,
    outOfReach: "out of reach: drill",
    fromThisEdge: "from this edge",
    orFromThisOne: "or from this one",
    eachEdgeMiddle: "each from its edge to the middle of the punch",
  },
};

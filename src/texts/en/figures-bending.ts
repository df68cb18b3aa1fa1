/** Words in the figures of the bending page, by figure. */
export const figuresBending = {
  brakeParts: {
    title: "Side view of a hand folding brake: sheet between bed and finger, leaf in front, counterweight behind",
    lever: "clamp lever",
    beam: "clamp beam",
    finger: ["finger,", "one of many"],
    nose: "nose",
    backStop: "back stop",
    sheet: "sheet",
    leaf: "leaf",
    hinge: ["hinge line of", "the leaf"],
    handle: "handle",
    bed: "bed",
    counterweight: ["counter-", "weight"],
  },
  fibres: {
    title:
      "A strip with evenly scribed lines, flat and bent: the lines spread outside, close up inside and keep their distance along the neutral line",
    used: "length the bend uses (allowance)",
    radius: "inside radius R",
    stretched: "stretched",
    squeezed: "squeezed",
    neutral: ["neutral line", "keeps its", "length"],
  },
  angleNames: {
    title: "Three bends, turned through 30, 90 and 135 degrees; the corners left inside are 150, 90 and 45 degrees",
    turned: (angle: number) => `turned ${angle}°`,
    inside: (angle: number) => `inside ${angle}°`,
  },
  setback: {
    title: "Angle section: outside legs run to the apex, the setback reaches from the apex back to each tangent line",
    symbol: "SB",
    leg: "outside leg",
    apex: "apex",
    tangent: "tangent line",
  },
  flatStrip: {
    title: (blank: string, sight: string, first: string, second: string) =>
      `Flat blank ${blank} mm long; sight line at ${sight} mm; tangent lines at ${first} and ${second} mm from the datum edge`,
    datum: "datum edge",
    long: "long leg, clamped",
    short: ["short leg,", "on the leaf"],
    zone: (size: string) => `bend zone ${size}`,
    tangent: ["tangent", "line"],
    sight: "sight line",
    units: "millimetres from the datum edge",
  },
  sightLine: {
    title:
      "Sheet clamped under the finger, from above and from the side: the sight line lies straight below the front of the nose, one radius in front of the tangent line",
    fingerAbove: ["finger,", "from above"],
    onLeaf: ["sheet on", "the leaf"],
    tangent: "tangent line",
    sight: "sight line",
    finger: "finger",
    bed: "bed",
    leaf: "leaf",
    hinge: "hinge line",
  },
  nose: {
    title:
      "Nose of the finger enlarged: leg turned up 90 degrees against the leaf, finger set back from the hinge line by the thickness",
    setback: "setback of the finger",
    hinge: "hinge line",
    radius: ["nose radius =", "inside radius R"],
    finger: "finger",
    bed: "bed",
    leaf: "leaf",
  },
  swing: {
    title:
      "Three steps of a bend: clamped on the sight line; leaf swung past 90 degrees; leaf down and clamp open, the leg springs back to 90 degrees",
    steps: [
      ["clamp on the", "sight line"],
      ["swing past", "the angle"],
      ["lower the leaf,", "open, measure"],
    ],
  },
  bendOrder: {
    title: "Channel, Z, hat and J sections, each bend numbered in the order it is made",
    channel: "channel",
    z: "Z section",
    hat: "hat section",
    j: "J, with a closed edge",
  },
  grain: {
    title: "Rolling direction of a sheet and three blanks: bend line across it is best, slanted is next, along it cracks first",
    across: ["across:", "best"],
    slanted: ["slanted:", "bends both ways"],
    along: ["along:", "cracks first"],
    direction: "← rolling direction of the sheet →",
  },
  outerStretch: {
    title:
      "The outer face of a bend stretches 50 percent at a radius of half the thickness, 33 percent at one thickness, 20 at two and 11 at four",
    ratio: "inside radius ÷ thickness",
    stretch: "stretch of the outer face",
  },
  unevenBend: {
    title: "Legs of two uneven bends seen along the bend: one is open in the middle, the other changes from end to end",
    open: ["open in the middle", "machine gives way"],
    tapered: ["tapered", "finger setback uneven"],
    places: ["left", "middle", "right"],
    ends: "ends",
  },
};

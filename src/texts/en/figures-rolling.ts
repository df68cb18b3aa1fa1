/** Words in the figures of the rolling pages, by figure. */
export const figuresRolling = {
  chordHeight: {
    title: (chord: number, height: number, radius: number) =>
      `An arc with a straightedge of ${chord} mm across it; in the middle the arc stands ${height} mm off the straightedge, which makes a radius of ${radius} mm`,
    chord: (chord: number) => `c = ${chord} mm`,
    height: (height: number) => `s = ${height} mm`,
    radius: (radius: number) => `R = c²/(8 s) + s/2 = ${radius} mm`,
  },
  coneInRolls: {
    title:
      "The blank of a cone between the rolls from above: the rear roll is nearer to the front rolls at the narrow end, and the blank turns about its narrow end as it passes through",
    frontRolls: ["front", "rolls"],
    rearRoll: "rear roll, aslant",
    narrowEnd: ["narrow end:", "held back"],
  },
  coneLayout: {
    title:
      "A frustum of a cone from the side with its two diameters and its height, and its blank, a sector of a ring with an outer and an inner radius",
  },
  drawnIn: {
    title:
      "Rolls from the side: the gap in front of the two front rolls closes as they turn and draws in whatever touches it; hands hold the sheet far back",
    drawsIn: ["draws in:", "no hand here"],
    andHere: "and here",
    hand: ["hand: back", "here, flat"],
    letGoBefore: "let go before the end reaches the rolls",
  },
  endCures: {
    title:
      "Three cures for flat ends: the end bent over a bar beforehand, the end set a little way past the pinch and lifted round the upper roll, and extra length left flat and cut off",
    bendEndOver: ["bend the end", "over a bar first"],
    orLiftRound: ["or lift it round", "the upper roll"],
    orLeaveLength: ["or leave length", "and cut it off"],
  },
  flatEnds: {
    title: (flat: number) =>
      `The tube of the example in section: its two ends stay flat for about ${flat} mm each and stand out from the circle`,
    radius: (radius: number) => `R ${radius} mm`,
    whereSeamShould: ["where the seam", "should be"],
  },
  radiusLeft: {
    title:
      "Inside radius left after springback over the radius held between the rolls, for 1 mm sheet of three metals: the curves bend upwards, until the sheet comes back flat",
    dashed: ["dashed: no", "springback"],
    radiusLeft: "radius left, mm",
    radiusHeldBetween: "radius held between the rolls, mm",
    metals: { "steel-cr": "steel", "stainless-304": "stainless", "al-3003-h14": "aluminium" },
  },
  rollFront: {
    title:
      "Slip rolls from the front: two rolls between side frames, a crank, two screws in front that press the lower roll up, two screws behind that raise the rear roll, and a release at one end of the upper roll",
    upperRoll: "upper roll",
    lowerRoll: "lower roll",
    screwsRearRoll: "screws of the rear roll",
    screwsLowerRoll: "screws of the lower roll",
    crank: "crank",
    release: "release",
    groovesForWire: ["grooves", "for wire"],
  },
  rollParts: {
    title:
      "Side view of slip rolls: two front rolls pinch the sheet, the rear roll behind them is raised and curves it upwards round the upper front roll",
    upperFrontRoll: ["upper", "front roll"],
    lowerFrontRoll: ["lower", "front roll"],
    rearRoll: "rear roll",
    sheet: "sheet",
    pinch: "pinch",
  },
  rollPasses: {
    title:
      "Three of the passes of the example: with each one the rear roll stands higher and the sheet leaves the rolls with a smaller radius",
    pass: (pass: number | null, radius: number) => [`pass ${pass}`, `R ${radius} mm`],
  },
  tubeSeams: {
    title: "Three tubes in section by their seam: butted edges, a lap of two thicknesses, and a folded seam of four",
  },
  unevenScrews: {
    title:
      "Four tubes seen at their seam: parallel edges; a gap that grows towards one end; edges shifted along the tube; a gap in the middle",
    alike: ["screws alike:", "seam parallel"],
    unlike: ["screws not alike:", "seam opens"],
    crooked: ["fed crooked:", "ends do not meet"],
    giving: ["rolls give way:", "gapes in the middle"],
  },
};

/** Words in the drawings of calculators, by drawing; what several of them say stands first. */
export const drawings = {
  sizesInMm: "sizes in mm",
  sizesInInches: "sizes in inches",
  thickerSheet: "sheet drawn thicker",
  fromFlat: "from flat",
  blankFromAbove: "the blank, from above",
  bend: "bend",
  eachBend: "each bend",
  rating: "rating",
  ofRating: (share: string) => `${share} of it`,
  /** Between the numbers of a list. */
  between: ", ",
  finger: "finger",
  bed: "bed",
  leaf: "leaf",

  bendLength: {
    title: "The bent strip and its blank",
    text: (legs: string, angle: string, radius: string, blank: string, units: string) =>
      `A strip with outside legs of ${legs}, each bend turned ${angle} from flat about an inside radius of ${radius}, and below it the blank, ${blank} long; ${units}.`,
  },
  brakeLoad: {
    title: "The load on the brake",
    text: (thickness: string, length: string, share: string, units: string) =>
      `Sheet ${thickness} thick and ${length} long clamped between bed and finger while the leaf swings up; it takes ${share} of the rating; ${units}.`,
    side: "side view, not to scale",
    along: (thickness: string, length: string) => `T ${thickness}, ${length} along the bend`,
  },
  smallestRadius: {
    title: "The sharpest bend for this sheet",
    text: (thickness: string, radius: string, units: string) =>
      `A section of a square bend in sheet ${thickness} thick with an inside radius of ${radius}, drawn to scale; its outer face is stretched; ${units}.`,
    toScale: (units: string) => `to scale, ${units}`,
    stretched: "stretched",
  },
  practicePieces: {
    title: "What is measured on a practice piece",
    means: (count: number) => `means of ${count} pieces, `,
    and: " and ",
    text: (flat: string, angle: string, legs: string, units: string) =>
      `Flat length ${flat}; after turning ${angle} from flat, outside legs ${legs}; ${units}.`,
    flat: (size: string) => `flat = ${size}`,
  },
  springback: {
    title: "Swung to the end, and let go",
    text: (swing: string, tool: string, over: string, angle: string, radius: string, units: string) =>
      `The leaf is swung to ${swing} from flat about a tool of radius ${tool}; let go, the strip opens by ${over} to ${angle} with an inside radius of ${radius}; ${units}.`,
    held: "dashed: held at the end of the swing",
    free: "solid: let go",
    swing: "swing",
    endsAt: "ends at",
  },
  foldedEdge: {
    title: "The folded edge and its lines on the flat",
    and: " and ",
    text: (width: string, lines: string, units: string) =>
      `In section, an edge folded to ${width} wide; below it the flat seen from above, with the middle of each fold at ${lines} from the raw edge; ${units}.`,
    flat: "the flat, from above; middle of each fold from the raw edge",
  },
  fingerSet: {
    title: "Fingers in the box",
    text: (width: string, fingers: string, total: string, left: string, units: string) =>
      `Between sides ${width} apart stand fingers of ${fingers}, together ${total}, with ${left} left; ${units}.`,
    front: (units: string) => `from the front, ${units}`,
    beam: "clamp beam",
    sum: (total: string, left: string) => `fingers ${total}, left over ${left}`,
  },
};

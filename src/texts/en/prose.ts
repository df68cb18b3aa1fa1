/** Words of the components that pages in Markdown are written with. */
export const prose = {
  allCautions: "All cautions in one place",
  fromMemory: "from memory",
  faults: { see: "What you see", why: "Why", remedy: "What to do", do: "Do" },
  formulaRange: (from: string, to: string, above: boolean) => `${above ? "above" : "from"} ${from} to ${to}`,
  settingOut: {
    caption: "Lines of the bracket, from the datum edge",
    line: "Line",
    how: "How it comes about",
    rows: {
      blank: { line: "Far edge, sheared", why: "sum of the legs less the deduction" },
      first: { line: "First tangent line", why: "long leg less the setback" },
      sight: { line: "Sight line", why: "one radius further; at 90° also the long leg less T" },
      second: { line: "Second tangent line", why: "first tangent line plus the allowance" },
    },
  },
  sizeDoubt: {
    caption: "What the ± of the 25 mm leg is made of, in mm",
    cause: "Cause",
    handbook: "handbook’s number",
    own: "this shop’s pieces",
    together: "All together",
    causes: {
      bendData: "Bend deduction",
      marking: "Scribed lines",
      setting: "Nose set to the line by eye",
      thickness: "Thickness of the sheet",
    },
  },
  studentTable: {
    caption: "Student’s t for 95.45 %, and what the ± of the mean becomes",
    pieces: "Pieces",
    around: "± for a spread s",
  },
  seen: {
    read: "read there",
    memory: "from memory, still to be looked up",
    practice: "no document",
  },
};

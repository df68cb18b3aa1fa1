const sheets = (count: number) => `${count} ${count === 1 ? "sheet" : "sheets"}`;
const rows = (count: number) => `${count} ${count === 1 ? "row" : "rows"}`;
const columns = (count: number) => `${count} ${count === 1 ? "column" : "columns"}`;

/** The template of a blank at full size; fetched when it is opened. */
export const planTemplate = {
  title: (name: string) => `Template, full size: ${name}`,
  withoutName: "part without a name",
  howToPrint: (paper: string) =>
    `Print it on ${paper} at 100 %, without “fit to page”, and hold a rule against the 100 mm bar of every sheet before you glue.`,
  blank: (width: string, depth: string, used: number, down: number, across: number, emptyLeftOut: boolean) =>
    `The blank is ${width} × ${depth}: ${sheets(used)}, ${rows(down)} of ${columns(across)}${emptyLeftOut ? ", empty ones left out" : ""}.`,
  paperMoves:
    "Paper moves with damp and glue by some tenths of a millimetre (common practice). Prick the hole centres and the ends of the lines through it, and scribe from the datum edges what must be better than that.",
  linesOnBack: "Sight lines of bends down belong on the back.",
  paper: "Paper",
  print: (count: number) => `Print ${sheets(count)}`,
  back: "Back to the plan",
  overview: (down: number, across: number) => `How ${down} × ${across} sheets lie on the part`,

  place: (row: number, down: number, column: number, across: number) => `row ${row} of ${down}, column ${column} of ${across}`,
  sheet: (name: string, place: string) => `Template of ${name}, ${place}`,
  cut: "Cut along the dashed lines; join outline to outline.",
  glue: "Glue it on, outline to edge.",
  bar: (length: number) => `This bar is ${length} mm. If it is not, print at 100 %, not fitted.`,
};

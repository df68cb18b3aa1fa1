import { type Catalogue, toleranceClasses } from "../catalogue.ts";
import {
  chainError,
  chainLikelyFormula,
  chainWorstFormula,
  datumPairError,
  type LineError,
  lineCount,
  pairLikelyFormula,
  pairWorstFormula,
} from "../marking/line-error.ts";
import { type MarkingChoice, markingChoices } from "../marking/methods.ts";
import { mm, say } from "../quantity/phrase.ts";
import { linearTolerance } from "../stock/general-tolerance.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";

const layouts = {
  "one-edge": "all from one edge, the datum",
  "end-to-end": "end to end, each from the line before",
} as const;
type Layout = keyof typeof layouts;

const length = { quantity: "length", fineness: "setting" } as const;

/** Error of the last line from the edge, and of the distance between neighbours. */
function errorsOf(layout: Layout, one: number, count: number): { last: LineError; neighbours: LineError } {
  return layout === "one-edge"
    ? { last: { worst: one, likely: one }, neighbours: datumPairError({ perLine: one }) }
    : { last: chainError({ perLine: one, count }), neighbours: { worst: one, likely: one } };
}

function methodOf({ markingMethods }: Catalogue, id: MarkingChoice) {
  const method = markingMethods[id];
  if (!method) throw new Error(`marking.yaml has no ${id}; it has ${Object.keys(markingMethods).join(", ")}`);
  return method;
}

const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export default worksheet({
  id: "line-position",
  title: "Where a row of lines ends up",
  summary: "How far the last of several scribed lines may be off, marked from one edge or end to end.",
  page: "/marking/",
  inputs: {
    method: { kind: "choice", label: "Lines are marked with", choices: markingChoices, default: "caliper-scribe" },
    distance: {
      ...length,
      kind: "quantity",
      label: "Distance between lines",
      symbol: "p",
      min: 0,
      aboveMin: true,
      max: 2000,
      default: "15mm",
      help: "From each line to the next, and from the edge to the first.",
    },
    count: { ...lineCount, kind: "quantity", default: "8" },
    layout: { kind: "choice", label: "Measured", choices: layouts, default: "one-edge" },
  },
  outputs: {
    lastLikely: {
      ...length,
      kind: "quantity",
      label: "Last line off by, likely",
      symbol: "±",
      help: "95 of 100 stay within it, as long as each line errs by chance.",
    },
    lastWorst: {
      ...length,
      kind: "quantity",
      label: "Last line off by, at worst",
      symbol: "±",
      help: "Every line errs by its whole ± and the same way.",
    },
    perLine: {
      ...length,
      kind: "quantity",
      label: "One line off by",
      symbol: "±",
      help: "By this method, two standard deviations.",
    },
  },
  main: "lastLikely",
  formulas: [chainWorstFormula, chainLikelyFormula, pairWorstFormula, pairLikelyFormula],
  validity: [
    "The edge itself must be straight; a wavy or burred datum edge adds its own error to every line.",
    "“Likely” holds for errors that fall either way by chance. A worn rule end or a caliper that reads wrong pushes every line the same way: then “at worst” is the one to count on.",
    "The error of one line depends on the hand as much as on the tool. Scribe ten lines, measure them, and put your own number in the shop’s list of marking methods.",
  ],
  cautions: ["scriber-points", "sharp-edges", "eyes"],
  sources: [
    "jcgm-100",
    "iso-2768-1",
    "common-practice",
    "virginia-cte-machining",
    "army-od1621",
    "modern-metalworking-2004",
    "school-measuring-text",
  ],

  compute({ method: id, distance, count, layout }, catalogue) {
    const method = methodOf(catalogue, id);
    const perLine = method.error;
    const { last, neighbours } = errorsOf(layout, perLine, count);
    const farthest = count * distance;

    const remarks: Remark[] = [
      {
        level: method.seen === "read" ? "note" : "caution",
        field: "method",
        phrase: say`${mm(perLine)} a line: ${method.basis}${method.seen === "read" ? "" : ". No document was found that states it"}.`,
        source: method.source,
      },
    ];
    const reach = layout === "one-edge" ? farthest : distance;
    if (method.reach !== undefined && reach > method.reach)
      remarks.push({
        level: "caution",
        field: "distance",
        phrase: say`${
          layout === "one-edge" ? say`The last line is ${mm(reach)} from the edge` : say`Each step is ${mm(reach)}`
        }; this tool in its usual size gets no further than ${mm(method.reach)}. Take a longer one${
          layout === "one-edge" ? ", or mark a second datum line once, with care, and go on from there" : ""
        }.`,
      });
    if (layout === "end-to-end" && count > 1)
      remarks.push({
        level: "caution",
        field: "layout",
        phrase: say`From one edge the same last line would be off by ${mm(perLine)} at most. Mark end to end only where neighbours matter and the total does not.`,
      });
    if (layout === "one-edge" && count > 1)
      remarks.push({
        level: "note",
        phrase: say`Between two lines both errors count: their distance is likely within ${mm(neighbours.likely)}, at worst within ${mm(neighbours.worst)}, whichever two you take.`,
        source: "jcgm-100",
      });

    const working: Step[] =
      layout === "end-to-end"
        ? [
            { formula: chainWorstFormula, values: { perLine, count, worst: last.worst } },
            { formula: chainLikelyFormula, values: { perLine, count, likely: last.likely } },
          ]
        : [
            { formula: pairWorstFormula, values: { perLine, worst: neighbours.worst } },
            { formula: pairLikelyFormula, values: { perLine, likely: neighbours.likely } },
          ];

    const bothLayouts: AnswerTable = {
      caption: "The same lines, measured both ways",
      columns: [
        { label: "Measured" },
        { label: "Last line, likely ±", ...length },
        { label: "Last line, at worst ±", ...length },
        { label: "Between neighbours, likely ±", ...length },
        { label: "Between neighbours, at worst ±", ...length },
      ],
      rows: (Object.keys(layouts) as Layout[]).map((each) => {
        const other = errorsOf(each, perLine, count);
        return {
          cells: [layouts[each], other.last.likely, other.last.worst, other.neighbours.likely, other.neighbours.worst],
          chosen: each === layout,
        };
      }),
    };
    const byMethod: AnswerTable = {
      caption: "The same lines, marked with another tool",
      columns: [
        { label: "Marked with" },
        { label: "One line ±", ...length },
        { label: "Last line, likely ±", ...length },
        { label: "Last line, at worst ±", ...length },
      ],
      rows: (Object.keys(markingChoices) as MarkingChoice[]).map((each) => {
        const { error, source, seen } = methodOf(catalogue, each);
        const other = errorsOf(layout, error, count);
        return {
          cells: [sentence(markingChoices[each]), error, other.last.likely, other.last.worst],
          chosen: each === id,
          source,
          ...(seen === "read" ? {} : { note: seen === "memory" ? "from memory" : "common practice" }),
        };
      }),
    };
    const classes = toleranceClasses.flatMap((name) => {
      const tolerance = linearTolerance(catalogue.generalTolerances, name, farthest);
      return tolerance === undefined ? [] : [{ name, tolerance }];
    });
    const allowed: AnswerTable = {
      caption: "What a drawing that names only a tolerance class allows the last line",
      columns: [{ label: "Class" }, { label: "Allowed ±", ...length }, { label: "Kept" }],
      rows: classes.map(({ name, tolerance }) => ({
        cells: [
          `ISO 2768-${name}`,
          tolerance,
          last.worst <= tolerance ? "yes, even at worst" : last.likely <= tolerance ? "likely" : "no",
        ],
        source: catalogue.generalTolerances.linear.source,
      })),
    };

    return {
      outputs: { perLine, lastWorst: last.worst, lastLikely: last.likely },
      remarks,
      working,
      tables: [bothLayouts, byMethod, ...(classes.length > 0 ? [allowed] : [])],
      sources: [...new Set(["jcgm-100", method.source, ...(classes.length > 0 ? ["iso-2768-1"] : [])])],
    };
  },
});

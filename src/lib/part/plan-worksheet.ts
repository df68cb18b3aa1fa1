import { bendAllowanceFormula } from "../bending/bend-allowance.ts";
import { dinAllowanceFormula, dinFactorFormula } from "../bending/din-6935.ts";
import { faaAllowanceFormula, groupAllowanceFormula } from "../bending/handbook-allowances.ts";
import { allowanceBy } from "../bending/methods.ts";
import { apexSetbackFormula, bendDeductionFormula, setback, tangentSetbackFormula } from "../bending/setback.ts";
import * as symbols from "../bending/symbols.ts";
import type { Formula } from "../formula.ts";
import type { Inputs, ListInput } from "../inputs.ts";
import { amount, say } from "../quantity/phrase.ts";
import type { Quantity } from "../quantity/units.ts";
import { type Answer, type QuantityOutput, type Remark, type Step, worksheet } from "../worksheet.ts";
import type { Check } from "./check.ts";
import { matters } from "./fields-that-matter.ts";
import { bendsOf, type FlatBend, type FlatHole, type FlatLayout } from "./flatten.ts";
import { type PartValues, partInputs, type Side, sideNames } from "./form.ts";
import type { Axis } from "./model.ts";
import { type Plan, planCautions, planPart } from "./plan.ts";
import type { PunchStep } from "./punch-list.ts";
import { planRolled, type RolledPlan, rolledCautions } from "./rolled/plan.ts";

/**
 * A plan as one calculator: the fields of the part go in, numbers of the plan come out. Assignments ask questions about a
 * whole part through it. It has no page of its own; the plan's is where it is explained.
 *
 * Keys of outputs are part of addresses: `north.1.sightLine` is the sight line of the first bend on the north side,
 * `hole.2.x` the place of the second hole. What a part does not have is not known: null.
 */

/** A list whose cells say which list they are in: a question states them one under the other. */
function labelled<L extends ListInput>(list: L, labels: { readonly [C in keyof L["columns"] & string]: string }): L {
  const columns = Object.entries(list.columns).map(([key, cell]) => [
    key,
    { ...cell, label: labels[key as keyof typeof labels] },
  ]);
  return { ...list, columns: Object.fromEntries(columns) };
}

const legs = (side: Side) => {
  const [first = "", ...rest] = side;
  return labelled(partInputs[side], {
    leg: `${first.toUpperCase()}${rest.join("")} leg`,
    angle: `Angle turned through at ${side} leg`,
    way: `Way of ${side} leg`,
    radius: `Inside radius at ${side} leg`,
  });
};

const inputs = {
  ...partInputs,
  south: legs("south"),
  north: legs("north"),
  west: legs("west"),
  east: legs("east"),
  edges: labelled(partInputs.edges, {
    side: "Side of folded edge",
    kind: "Kind of folded edge",
    width: "Finished width of folded edge",
    gap: "Gap inside folded edge",
    way: "Way of folded edge",
  }),
  holes: labelled(partInputs.holes, {
    panel: "Panel of hole",
    x: "x along the panel, of hole",
    y: "y outwards on the panel, of hole",
    diameter: "Diameter of hole",
  }),
  cutouts: labelled(partInputs.cutouts, {
    panel: "Panel of cut-out",
    shape: "Shape of cut-out",
    x: "x along the panel, of cut-out",
    y: "y outwards on the panel, of cut-out",
    width: "Width along, of cut-out",
    height: "Height outwards, of cut-out",
    turn: "Turned, cut-out",
  }),
  circles: labelled(partInputs.circles, {
    panel: "Panel of hole circle",
    x: "x along the panel, of the middle of hole circle",
    y: "y outwards on the panel, of the middle of hole circle",
    around: "Diameter through the centres of hole circle",
    count: "Holes in hole circle",
    start: "First hole at, hole circle",
    diameter: "Diameter of the holes in hole circle",
  }),
  attachments: labelled(partInputs.attachments, {
    panel: "Panel of spot",
    x: "x along the panel, of spot",
    y: "y outwards on the panel, of spot",
    metal: "Metal welded on at spot",
    thickness: "Thickness welded on at spot",
  }),
} satisfies Inputs;

/** Holes that can be asked for, counted as the plan counts them: round ones, cut-outs, then those of hole circles. */
const askedHoles = 40;

const axisOf = (side: string): Axis => (side === "north" || side === "south" ? "y" : "x");
const datumOf: Readonly<Record<Axis, string>> = { x: "west edge", y: "south edge" };

const quantity = (of: Quantity, label: string, more: Partial<QuantityOutput> = {}): QuantityOutput => ({
  kind: "quantity",
  quantity: of,
  label,
  ...more,
});
const setting = (label: string, more: Partial<QuantityOutput> = {}) =>
  quantity("length", label, { fineness: "setting", ...more });

function bendOutputs(id: string, side: Side): Record<string, QuantityOutput> {
  const from = `from the ${datumOf[axisOf(side)]}`;
  return {
    [`${id}.sightLine`]: setting(`Sight line of bend ${id}, ${from}`),
    [`${id}.line`]: setting(`Middle of the bend zone ${id}, ${from}`),
    [`${id}.swingAngle`]: quantity("angle", `Swing for bend ${id}, with springback`),
    [`${id}.deduction`]: setting(`Bend deduction at ${id}`, { symbol: symbols.deductionSymbol.symbol }),
    [`${id}.allowance`]: setting(`Bend allowance at ${id}`, { symbol: symbols.allowance.symbol }),
  };
}

function bendValues({ id, sightLine, line, deduction, allowance }: FlatBend, swing: number | null) {
  return {
    [`${id}.sightLine`]: sightLine,
    [`${id}.line`]: line,
    [`${id}.swingAngle`]: swing,
    [`${id}.deduction`]: deduction,
    [`${id}.allowance`]: allowance,
  };
}

const everyBend = sideNames.flatMap((side) =>
  Array.from({ length: partInputs[side].maxRows }, (_, index) => ({ side, id: `${side}.${index + 1}` })),
);

/** A double folded edge has two lines, any other one. */
const foldLine = (side: string, turn: number) => `${side}.edge.${turn}`;

const outputs: Readonly<Record<string, QuantityOutput>> = {
  blankWidth: setting("Width of the blank, west to east"),
  blankDepth: setting("Depth of the blank, south to north"),
  mass: quantity("mass", "Mass of the blank, holes and notches out"),
  bends: quantity("count", "Number of bends, folded edges and tabs not counted"),
  punchForce: quantity("force", "Largest force on the punch"),
  rise: setting("Rise of the rear roll for the last pass"),
  outerRadius: setting("Outer radius of the sector"),
  innerRadius: setting("Inner radius of the sector"),
  sectorAngle: quantity("angle", "Angle of the sector between the seam lines"),
  ...Object.assign({}, ...everyBend.map(({ id, side }) => bendOutputs(id, side))),
  ...Object.fromEntries(
    sideNames.flatMap((side) =>
      [1, 2].map((turn) => [
        foldLine(side, turn),
        setting(`Fold line ${turn} of the ${side} edge, from the ${datumOf[axisOf(side)]}`),
      ]),
    ),
  ),
  ...Object.fromEntries(
    Array.from({ length: askedHoles }, (_, index) => index + 1).flatMap((number) =>
      (["x", "y"] as const).map((axis) => [
        `hole.${number}.${axis}`,
        setting(`Centre of hole ${number} on the blank, from the ${datumOf[axis]}`),
      ]),
    ),
  ),
};

const length = (symbol: string, label: string) =>
  ({ label, symbol, tex: String.raw`\textstyle\sum \mathrm{${symbol}}`, quantity: "length", fineness: "setting" }) as const;

/** Source: FAA-H-8083-31 ch. 4, developed width = flats + bend allowances; edges folded over add their own. */
const developedFormula: Formula = {
  id: "developed-length",
  name: "Developed length",
  result: "developed",
  expression: String.raw`\v{flats} + \v{allowances} + \v{edges}`,
  symbols: {
    flats: length("flats", "Sum of the flats: each size less the setbacks of the bends at it"),
    allowances: length("BA", "Sum of the bend allowances"),
    edges: length("edges", "What the folded edges add"),
    developed: { label: "Developed length", symbol: "L", tex: "L", quantity: "length", fineness: "setting" },
  },
};

/** Setback, allowance and deduction of every kind of bend once, then the sums along each chain. */
function workingOf({ part, chains }: FlatLayout): { working: Step[]; sources: string[] } {
  const working: Step[] = [];
  const sources = new Set<string>();
  const done = new Set<string>();
  for (const { angle, radius, allowance, deduction } of chains.flatMap(({ bends }) => bends)) {
    const kind = `${angle} ${radius}`;
    if (done.has(kind)) continue;
    done.add(kind);
    const bend = { angle, radius, thickness: part.thickness };
    const legTo = symbols.usualLegEnd(angle);
    const sb = setback({ ...bend, legTo });
    const by = allowanceBy(part.bendData.choice, bend, legTo);
    sources.add(legTo === "apex" ? "faa-ac-43-13-1b" : "din-6935").add(by.source);
    working.push(
      { formula: legTo === "apex" ? apexSetbackFormula : tangentSetbackFormula, values: { ...bend, setback: sb } },
      ...by.steps,
      { formula: bendDeductionFormula, values: { setback: sb, allowance, deduction } },
    );
  }
  for (const { panels, bends, startEdge, endEdge, along } of chains) {
    if (bends.length === 0 && !startEdge && !endEdge) continue;
    sources.add("faa-h-8083-31");
    working.push({
      formula: developedFormula,
      values: {
        flats: panels.reduce((sum, { from, to }) => sum + to - from, 0),
        allowances: bends.reduce((sum, { allowance }) => sum + allowance, 0),
        edges: (startEdge?.allowance ?? 0) + (endEdge?.allowance ?? 0),
        developed: along,
      },
    });
  }
  return { working, sources: [...sources] };
}

/** A rule that the part breaks: it can still be planned, so it is said beside the answer. */
function broken({ label, value, limit, side, quantity: of, why }: Check): Remark {
  const most = side === "least" ? "at least" : "at most";
  return {
    level: "caution",
    phrase: say`${label}: ${amount(value, of, "setting")}, ${most} ${amount(limit, of, "setting")}. ${why}`,
  };
}

type Numbers = Readonly<Record<string, number | null>>;

const nothing: Numbers = Object.fromEntries(Object.keys(outputs).map((key) => [key, null]));

/** What both kinds of plan have. */
function common({ blank, punching }: Pick<Plan, "blank" | "punching">, holes: readonly FlatHole[]): Numbers {
  const forces = punching.flatMap((step: PunchStep) =>
    step.kind !== "notch" && step.tool.by === "punch" ? [step.tool.force] : [],
  );
  return {
    blankWidth: blank.width,
    blankDepth: blank.depth,
    mass: blank.mass,
    punchForce: forces.length > 0 ? Math.max(...forces) : null,
    ...Object.assign(
      {},
      ...holes.slice(0, askedHoles).map(({ number, flatX, flatY }) => ({
        [`hole.${number}.x`]: flatX,
        [`hole.${number}.y`]: flatY,
      })),
    ),
  };
}

const remarksOf = ({ checks, remarks }: Pick<Plan, "checks" | "remarks">): Remark[] => [
  ...remarks,
  ...checks.filter(({ ok }) => !ok).map(broken),
];

function folded(plan: Plan): Answer<typeof outputs> {
  const { layout } = plan;
  const swings = new Map(plan.bends.map(({ id, swing }) => [id, swing]));
  const bends = bendsOf(layout);
  const edges = layout.chains.flatMap(({ edgeLines }) => edgeLines);
  return {
    outputs: {
      ...nothing,
      ...common(plan, layout.holes),
      bends: bends.length,
      ...Object.assign({}, ...bends.map((bend) => bendValues(bend, swings.get(bend.id) ?? null))),
      ...Object.fromEntries(edges.map(({ edge, line, turn }) => [foldLine(edge.side, turn), line])),
    },
    remarks: remarksOf(plan),
    ...workingOf(layout),
  };
}

function rolled(plan: RolledPlan): Answer<typeof outputs> {
  const { sector, holes } = plan.sheet;
  const [first] = plan.rolling.settings;
  return {
    outputs: {
      ...nothing,
      ...common(plan, holes),
      bends: 0,
      // A cone has a rise at each end, so it has no one rise.
      rise: plan.rolling.settings.length === 1 && first ? first.rise : null,
      outerRadius: sector?.outerRadius ?? null,
      innerRadius: sector?.innerRadius ?? null,
      sectorAngle: sector?.angle ?? null,
    },
    remarks: remarksOf(plan),
    working: [],
    sources: [],
  };
}

const keys = Object.keys(partInputs) as (keyof typeof partInputs)[];

/** Fields that change nothing of what can be asked. */
const unasked: ReadonlySet<string> = new Set(["marking", "quantity", "attachments", "seamJoint", "tabJoint"]);

export default worksheet({
  id: "plan",
  title: "Plan of a part",
  summary: "The flat blank of a part: how large it is, where its lines are scribed and how far each bend is swung.",
  page: "/plan/",
  inputs,
  outputs,
  main: "blankDepth",
  shownWhen: Object.fromEntries(keys.map((key) => [key, (raw) => !unasked.has(key) && matters(key, raw)])),
  formulas: [
    apexSetbackFormula,
    tangentSetbackFormula,
    bendAllowanceFormula,
    faaAllowanceFormula,
    groupAllowanceFormula,
    dinFactorFormula,
    dinAllowanceFormula,
    bendDeductionFormula,
    developedFormula,
  ],
  validity: [
    "Parts folded from one sheet, rolled tubes and rolled cones.",
    "Distances on the blank are from its south and west edges, the face up that lies on top on the bench.",
  ],
  cautions: [...new Set([...planCautions, ...rolledCautions])],
  sources: ["faa-h-8083-31", "faa-ac-43-13-1b", "navedtra-14119", "machinerys-handbook-31", "din-6935", "practice-pieces"],

  /** @throws InputError naming the field of the part that gives no plan */
  compute(values: PartValues, catalogue) {
    return values.kind === "folded" ? folded(planPart(values, catalogue)) : rolled(planRolled(values, catalogue));
  },
});

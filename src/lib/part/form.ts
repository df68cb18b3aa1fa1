import { methodInputs } from "../bending/method-inputs.ts";
import * as symbols from "../bending/symbols.ts";
import type { Inputs, QuantityInput, Values } from "../inputs.ts";
import { seamWidth } from "../joining/seams.ts";
import { markingChoices } from "../marking/methods.ts";
import { coneHeight, largeDiameter, smallDiameter } from "../rolling/cone-blank.ts";
import { arcAngle, tubeDiameter } from "../rolling/rolled-blank.ts";
import { materialInput } from "../stock/material.ts";
import { rolledSeams } from "./rolled/seams.ts";

/**
 * A part as a form: every field of the part file with its label, range and default. The page, the address, the part file
 * and the command line all read this table, through the same reader as the calculators.
 */

const size = {
  kind: "quantity",
  quantity: "length",
  min: 0,
  aboveMin: true,
  max: 5000,
} as const satisfies Partial<QuantityInput>;
const place = { kind: "quantity", quantity: "length", min: 0, max: 5000 } as const satisfies Partial<QuantityInput>;

export const sideNames = ["north", "south", "east", "west"] as const;
export type Side = (typeof sideNames)[number];

export const ways = {
  up: "up, towards the face that is on top on the bench",
  down: "down, towards the face that lies on the bench",
} as const;
export type Way = keyof typeof ways;

const legColumns = {
  leg: { ...size, label: "Leg" },
  angle: { ...symbols.bendAngle, kind: "quantity", min: 1, max: 175, aboveMin: false, default: "90deg" },
  way: { kind: "choice", label: "Way", choices: { up: "up", down: "down" }, default: "up" },
  radius: { ...symbols.insideRadius, kind: "quantity", max: 500, whenEmpty: "the part's radius" },
} as const;

/** What keeps two bends from tearing where they meet. */
export const reliefs = {
  hole: "a hole where the bends cross",
  notch: "a square notch where the bends cross",
  none: "none",
} as const;
export type ReliefKind = keyof typeof reliefs;

/** What may be welded to a part, by kinds that weld alike; each stands for one metal of the list. */
export const attachedMetals = {
  steel: "steel",
  galvanised: "galvanised steel",
  stainless: "stainless steel",
  aluminium: "aluminium",
  copper: "copper or brass",
} as const;

const holePlaces =
  "On the base, x runs from the west edge and y from the south edge. On a leg, x runs along its bend and y from that bend outwards. Measured as the sizes are. On a tube or cone, which have the one panel “base”, x runs round the part from the seam, in the middle of the thickness, and y along the axis; on a cone from its large end.";

/** What is made of the sheet. */
export const partKinds = {
  folded: "folded: a base with legs",
  tube: "rolled tube, or part of one",
  cone: "rolled cone",
} as const;
export type PartKind = keyof typeof partKinds;

function legs(side: Side) {
  return {
    kind: "list",
    label: `Legs on the ${side} side`,
    rowName: "legs",
    columns: legColumns,
    minRows: 0,
    maxRows: 12,
    default: [],
    help: "From the base outwards; each row is one bend and the leg beyond it.",
  } as const;
}

export const partInputs = {
  kind: { kind: "choice", label: "Kind of part", choices: partKinds, default: "folded" },
  name: { kind: "text", label: "Name of the part", maxLength: 80, default: "Bracket" },
  material: materialInput,
  thickness: {
    ...symbols.thickness,
    kind: "quantity",
    default: "1.2mm",
    help: "Measured, or the nominal thickness of the sheet.",
  },
  radius: {
    ...symbols.insideRadius,
    kind: "quantity",
    max: 500,
    default: "1.6mm",
    help: "Inside radius of the bends, usually the nose radius of the fingers.",
  },
  measured: {
    kind: "choice",
    label: "Sizes are measured",
    choices: { outside: "outside, over the metal", inside: "inside, between the faces" },
    default: "outside",
  },
  width: { ...size, label: "Base width, west to east", default: "60mm" },
  depth: { ...size, label: "Base depth, south to north", default: "40mm" },
  diameter: { ...tubeDiameter, kind: "quantity", default: "150mm" },
  length: { ...size, label: "Length along the axis", min: 1, aboveMin: false, default: "200mm" },
  arc: { ...arcAngle, kind: "quantity", default: "360deg", help: "360° for a full tube." },
  largeDiameter: { ...largeDiameter, kind: "quantity", default: "200mm", help: "At mid-thickness." },
  smallDiameter: {
    ...smallDiameter,
    kind: "quantity",
    default: "120mm",
    help: "At mid-thickness; 0 for a cone that ends in a point.",
  },
  height: { ...coneHeight, kind: "quantity", default: "150mm", help: "Along the axis, at mid-thickness." },
  seam: { kind: "choice", label: "Seam", choices: rolledSeams, default: "butt" },
  seamWidth: {
    ...seamWidth,
    kind: "quantity",
    default: "12mm",
    help: "Of a lap: how far one edge lies over the other. Of a standing seam: its height.",
  },
  seamJoint: {
    kind: "choice",
    label: "The lap is joined by",
    choices: { spots: "spot welds", rivets: "rivets" },
    default: "spots",
  },
  south: legs("south"),
  north: legs("north"),
  west: legs("west"),
  east: legs("east"),
  edges: {
    kind: "list",
    label: "Folded edges",
    rowName: "folded edges",
    columns: {
      side: {
        kind: "choice",
        label: "Side",
        choices: { north: "north", south: "south", east: "east", west: "west" },
        default: "north",
      },
      kind: { kind: "choice", label: "Kind", choices: symbols.foldedEdgeKinds, default: "closed" },
      width: { ...size, label: "Finished width", max: 200, default: "6mm" },
      gap: { ...place, label: "Gap inside", max: 50, whenEmpty: "none" },
      way: { kind: "choice", label: "Way", choices: { up: "up", down: "down" }, default: "up" },
    },
    minRows: 0,
    maxRows: 4,
    default: [],
    help: "On the outermost leg of a side, or on the base where the side has no leg. Up folds it onto the face that is on top on the bench: inside, on a leg turned up.",
  },
  cornerGap: {
    ...place,
    fineness: "setting",
    label: "Gap at the corners",
    max: 50,
    default: "0.3mm",
    help: "Between the end of a side and the inside face of its neighbour, where two sides are turned the same way.",
  },
  relief: {
    kind: "choice",
    label: "Relief at the corners",
    choices: reliefs,
    default: "hole",
  },
  tabs: {
    kind: "choice",
    label: "Tabs at the corners",
    choices: {
      none: "none",
      "north-south": "on the north and south sides, inside the others",
      "east-west": "on the east and west sides, inside the others",
    },
    default: "none",
    help: "A tab is bent round the corner and joined to the neighbouring side.",
  },
  tabWidth: { ...size, label: "Width of a tab, outside", max: 200, default: "12mm" },
  tabJoint: {
    kind: "choice",
    label: "Tabs are joined by",
    choices: { spots: "spot welds", rivets: "rivets" },
    default: "spots",
  },
  holes: {
    kind: "list",
    label: "Holes",
    rowName: "holes",
    columns: {
      panel: { kind: "text", label: "Panel", maxLength: 12, default: "base" },
      x: { ...place, label: "x, along" },
      y: { ...place, label: "y, outwards" },
      diameter: { ...size, label: "Diameter", min: 0.1, max: 500 },
    },
    minRows: 0,
    maxRows: 200,
    default: [],
    help: holePlaces,
  },
  cutouts: {
    kind: "list",
    label: "Square, rectangular and slotted holes",
    rowName: "such holes",
    columns: {
      panel: { kind: "text", label: "Panel", maxLength: 12, default: "base" },
      shape: {
        kind: "choice",
        label: "Shape",
        choices: { square: "square", rectangle: "rectangle", slot: "slot" },
        default: "rectangle",
      },
      x: { ...place, label: "x, along" },
      y: { ...place, label: "y, outwards" },
      width: { ...size, label: "Width, along", min: 0.1, max: 500 },
      height: { ...size, label: "Height, outwards", min: 0.1, max: 500, whenEmpty: "as wide" },
      turn: { kind: "quantity", quantity: "angle", label: "Turned", min: 0, max: 180, default: "0deg" },
    },
    minRows: 0,
    maxRows: 100,
    default: [],
    help: `The place is that of the middle. ${holePlaces}`,
  },
  circles: {
    kind: "list",
    label: "Hole circles",
    rowName: "hole circles",
    columns: {
      panel: { kind: "text", label: "Panel", maxLength: 12, default: "base" },
      x: { ...place, label: "x of the middle" },
      y: { ...place, label: "y of the middle" },
      around: { ...size, label: "Circle through the centres", min: 1, max: 2000 },
      count: { kind: "quantity", quantity: "count", label: "Holes", min: 2, max: 72 },
      start: { kind: "quantity", quantity: "angle", label: "First hole at", min: 0, max: 360, default: "0deg" },
      diameter: { ...size, label: "Diameter", min: 0.1, max: 500 },
    },
    minRows: 0,
    maxRows: 12,
    default: [],
    help: "Angles from the x direction, anticlockwise.",
  },
  attachments: {
    kind: "list",
    label: "Pieces spot-welded to it",
    rowName: "pieces",
    columns: {
      panel: { kind: "text", label: "Panel", maxLength: 12, default: "base" },
      x: { ...place, label: "x, along" },
      y: { ...place, label: "y, outwards" },
      metal: { kind: "choice", label: "Its metal", choices: attachedMetals, whenEmpty: "the part's own" },
      thickness: { ...symbols.thickness, kind: "quantity", label: "Its thickness", whenEmpty: "the part's own" },
    },
    minRows: 0,
    maxRows: 24,
    default: [],
    help: `One row for each spot: where it is, and what lies on the sheet there. ${holePlaces}`,
  },
  bendData: { ...methodInputs.method, label: "Bend data" },
  kFactor: methodInputs.kFactor,
  hardness: methodInputs.hardness,
  measuredDeduction: {
    ...symbols.deductionSymbol,
    kind: "quantity",
    min: -100,
    max: 1000,
    label: "Measured bend deduction",
    whenEmpty: "this shop's own, where it fits",
  },
  measuredUncertainty: {
    kind: "quantity",
    quantity: "length",
    fineness: "setting",
    label: "± of that deduction (k = 2)",
    min: 0,
    max: 50,
    whenEmpty: "not known",
  },
  measuredPieces: {
    kind: "quantity",
    quantity: "count",
    label: "Practice pieces measured",
    min: 1,
    max: 200,
    whenEmpty: "not stated",
  },
  measuredThickness: {
    ...symbols.thickness,
    kind: "quantity",
    label: "Measured on thickness",
    whenEmpty: "the part's thickness",
  },
  measuredRadius: { ...symbols.insideRadius, kind: "quantity", label: "Measured on radius", whenEmpty: "the part's radius" },
  measuredAngle: {
    ...symbols.bendAngle,
    kind: "quantity",
    label: "Measured at angle",
    min: 1,
    aboveMin: false,
    whenEmpty: "90°",
  },
  measuredLegTo: {
    kind: "choice",
    label: "Practice legs measured to",
    choices: symbols.legEnds,
    whenEmpty: "the apex up to 90°, the outermost point above",
  },
  marking: {
    kind: "choice",
    label: "Lines are marked with",
    choices: markingChoices,
    default: "caliper-scribe",
  },
  quantity: { kind: "quantity", quantity: "count", label: "Number of parts", min: 1, max: 10_000, default: "1" },
} as const satisfies Inputs;

export type PartValues = Values<typeof partInputs>;

import type { QuantityInput } from "../inputs.ts";
import { type grains, pieceCount, pieceSize, sheetSize, trimSize } from "./model.ts";

/** Fields that the calculator and the page have in common. */

/** Smaller blanks are not cut on a shear, and thousands of them would fit a sheet [mm]; common practice. */
const smallestBlank = 5;

const grainWords = {
  free: "either way",
  along: "along its length",
  across: "across, along its width",
} as const satisfies Record<(typeof grains)[number], string>;

export const sheetFields = {
  sheetWidth: {
    ...sheetSize,
    kind: "quantity",
    label: "Width of the sheet",
    default: "1250mm",
    help: "Across the rolling direction.",
  },
  sheetLength: {
    ...sheetSize,
    kind: "quantity",
    label: "Length of the sheet",
    default: "2500mm",
    help: "Along the rolling direction.",
  },
  trim: {
    ...trimSize,
    kind: "quantity",
    label: "Trim",
    default: "0mm",
    help: "Cut off every edge first, where the sheet’s own edges are damaged or not square; 0 for none.",
  },
} as const satisfies Record<string, QuantityInput>;

export const goalField = {
  kind: "choice",
  label: "Goal",
  choices: { "fewest-sheets": "all pieces, fewest sheets", "fill-one-sheet": "fill one sheet" },
  default: "fewest-sheets",
} as const;

export const pieceColumns = {
  name: { kind: "text", label: "Name", maxLength: 60, default: "" },
  width: { ...pieceSize, kind: "quantity", label: "Width", min: smallestBlank },
  length: { ...pieceSize, kind: "quantity", label: "Length", min: smallestBlank },
  count: { ...pieceCount, kind: "quantity", label: "Number", whenEmpty: "any number, where one sheet is filled" },
  grain: { kind: "choice", label: "Rolling direction", choices: grainWords, default: "free" },
} as const;

export const piecesField = {
  kind: "list",
  label: "Pieces",
  rowName: "pieces",
  columns: pieceColumns,
  minRows: 1,
  maxRows: 60,
  default: [
    { name: "tray", width: "226mm", length: "276mm", count: "30", grain: "free" },
    { name: "lid", width: "182mm", length: "232mm", count: "12", grain: "free" },
  ],
  help: "Sizes of the flat blanks. Where a bend must run across the rolling direction, say which way it has to go.",
} as const;

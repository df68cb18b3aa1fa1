import { thickness } from "../bending/symbols.ts";
import type { Catalogue } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { type Inputs, type Raw, readInputs, type Values } from "../inputs.ts";
import { say } from "../quantity/phrase.ts";
import { materialInput } from "../stock/material.ts";
import { goalField, pieceColumns, piecesField, sheetFields } from "./job-inputs.ts";
import { checkJob, mostPieces, mostRows, pieceValue, type SheetJob, sheetSize } from "./model.ts";
import { shearLimits } from "./shear-reach.ts";

/**
 * A cutting job as a form: page, address and pasted lists read this table, through the same reader as the calculators.
 * One size of sheet stands in fields of its own; other sizes and offcuts are rows.
 */

const sheetCount = { kind: "quantity", quantity: "count", min: 0, max: mostPieces, whenEmpty: "as many as needed" } as const;

export const sheetInputs = {
  name: { kind: "text", label: "Name of the job", maxLength: 80, default: "Class set" },
  goal: goalField,
  material: materialInput,
  thickness: { ...thickness, kind: "quantity", whenEmpty: "mass and rating of the shear are not checked" },
  sheetWidth: sheetFields.sheetWidth,
  sheetLength: sheetFields.sheetLength,
  sheetCount: {
    ...sheetCount,
    label: "Number of such sheets",
    help: "0 where only the sheets below are to be used.",
  },
  trim: sheetFields.trim,
  others: {
    kind: "list",
    label: "Other sizes and offcuts",
    rowName: "sheets",
    columns: {
      name: { kind: "text", label: "Name", maxLength: 60, default: "" },
      width: { ...sheetSize, kind: "quantity", label: "Width" },
      length: { ...sheetSize, kind: "quantity", label: "Length" },
      count: { ...sheetCount, label: "Number" },
    },
    minRows: 0,
    maxRows: 40,
    default: [],
    help: "The length runs along the rolling direction. An offcut is there once.",
  },
  pieces: {
    ...piecesField,
    columns: {
      ...pieceColumns,
      value: {
        ...pieceValue,
        kind: "quantity",
        label: "Worth",
        whenEmpty: "its area",
      },
    },
    maxRows: mostRows,
    help: "Sizes of the flat blanks. Where a bend must run across the rolling direction, say which way it has to go. One sheet filled: a number left out means any number, and pieces are worth their area unless each has a worth of its own.",
  },
} as const satisfies Inputs;

export interface SheetRequest {
  readonly job: SheetJob;
  readonly values: Values<typeof sheetInputs>;
}

/** Field of the form that a field of the job came from. */
export function formField(field: string): string {
  const [, index, key] = /^sheets\.(\d+)\.(\w+)$/.exec(field) ?? [];
  if (field === "sheets") return "sheetCount";
  if (index === undefined || key === undefined) return field;
  return index === "0" ? `sheet${key.charAt(0).toUpperCase()}${key.slice(1)}` : `others.${Number(index) - 1}.${key}`;
}

function jobFrom(values: Values<typeof sheetInputs>, { shop: { shear } }: Catalogue): SheetJob {
  const some = <T>(key: string, value: T | undefined) => (value === undefined ? {} : { [key]: value });
  const byValue = values.goal === "fill-one-sheet" && values.pieces.some(({ value }) => value !== undefined);
  return {
    sheets: [
      { name: "", width: values.sheetWidth, length: values.sheetLength, ...some("count", values.sheetCount) },
      ...values.others.map(({ name, width, length, count }) => ({ name, width, length, ...some("count", count) })),
    ],
    trim: values.trim,
    pieces: values.pieces.map(({ name, width, length, count, grain, value }, index) => {
      if (byValue && value === undefined)
        throw new InputError(
          `pieces.${index}.value`,
          undefined,
          say`Worth must be entered for every piece, or for none: ${name === "" ? `piece ${index + 1}` : `“${name}”`} has none.`,
        );
      return { name, width, length, grain, ...some("count", count), ...(byValue ? some("value", value) : {}) };
    }),
    shear: shearLimits(shear),
  };
}

/** Reads a form into a job that can be planned, or says what is wrong at which field. */
export function sheetRequest(
  raw: Raw,
  catalogue: Catalogue,
): { readonly request?: SheetRequest; readonly problems: readonly InputError[] } {
  const { values, problems } = readInputs(sheetInputs, raw, catalogue);
  if (!values) return { problems };
  try {
    const job = jobFrom(values, catalogue);
    checkJob(job, values.goal);
    return { request: { job, values }, problems };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { problems: [new InputError(formField(error.field), error.value, error.phrase)] };
  }
}

import type { StockSheet } from "../catalogue.ts";
import { listed, mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import {
  oneLifter,
  sheetAreaFormula,
  sheetLength,
  sheetMass,
  sheetMassFormula,
  sheetThickness,
  sheetWidth,
} from "../stock/sheet-mass.ts";
import { materialThicknessTolerance } from "../stock/thickness-tolerance.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { propertyRemark } from "./parts/property-band.ts";

/** Beyond this a sheet bends and catches the wind whatever its mass [mm]; common practice. */
const longSheet = 1200;

export default worksheet({
  id: "sheet-mass",
  title: "Mass of a sheet",
  summary: "How heavy a blank or a whole sheet is, to lift it and to buy it.",
  page: "/cutting/",
  inputs: {
    material: materialInput,
    thickness: { ...sheetThickness, kind: "quantity", default: "1.2mm", help: "Measured, or nominal for a purchase." },
    width: { ...sheetWidth, kind: "quantity", default: "1000mm" },
    length: { ...sheetLength, kind: "quantity", default: "2000mm" },
    ...propertyInputs,
  },
  outputs: {
    mass: { kind: "quantity", label: "Mass", symbol: "m", quantity: "mass" },
    area: { kind: "quantity", label: "Area", symbol: "A", quantity: "area" },
  },
  main: "mass",
  formulas: [sheetAreaFormula, sheetMassFormula],
  validity: ["A plain rectangle: holes and notches are not taken off.", "As exact as the thickness and the density put in."],
  cautions: ["lifting", "sharp-edges"],
  sources: ["geometry", "niosh-lifting", "common-practice", "this-shop"],

  compute(values, catalogue) {
    const { width, length, thickness } = values;
    const material = materialWith(catalogue, values.material, values);
    const density = material.density.value;
    const size = { width, length, thickness, density };
    const mass = sheetMass(size);
    const area = width * length;

    const remarks: Remark[] = [];
    if (mass > oneLifter)
      remarks.push({
        level: "caution",
        phrase: say`More than ${oneLifter} kg, which is the most that the NIOSH lifting equation gives one person when everything is ideal. Lift it with a partner or an aid, by the rules of your shop.`,
        source: "niosh-lifting",
      });
    else if (Math.max(width, length) > longSheet)
      remarks.push({
        level: "caution",
        phrase: say`Longer than ${mm(longSheet)}: carry it with two people, however light it is. It bends in the middle and catches a draught.`,
        source: "common-practice",
      });
    remarks.push(stockRemark(catalogue.shop.stock, { material: values.material, thickness, width, length }));
    remarks.push(propertyRemark("Density", "density", material.density));

    const tolerance = materialThicknessTolerance(catalogue, material, thickness, Math.min(width, length));
    const band: AnswerTable = {
      caption: "What the permitted thickness does to it",
      columns: [
        { label: "Sheet" },
        { label: "Thickness", quantity: "length", fineness: "setting" },
        { label: "Mass", quantity: "mass" },
      ],
      rows:
        tolerance === undefined
          ? []
          : [
              { name: "Thinnest permitted", at: thickness - tolerance, chosen: false },
              { name: "As entered", at: thickness, chosen: true },
              { name: "Thickest permitted", at: thickness + tolerance, chosen: false },
            ].map(({ name, at, chosen }) => ({
              cells: [name, at, (mass * at) / thickness],
              chosen,
              source: catalogue.thicknessTolerances[material.thicknessTolerance ?? ""]?.source ?? "common-practice",
            })),
    };

    const working: Step[] = [
      { formula: sheetAreaFormula, values: { width, length, area } },
      { formula: sheetMassFormula, values: { area, thickness, density, mass } },
    ];

    return {
      outputs: { mass, area },
      remarks,
      working,
      tables: band.rows.length > 0 ? [band] : [],
      sources: ["geometry"],
    };
  },
});

/** A sheet is taken as this thickness when it differs by no more than this share. */
const sameThickness = 0.05;

/** Whether a piece can be cut from what this shop has in stock. */
function stockRemark(stock: readonly StockSheet[], piece: StockSheet): Remark {
  const ofMetal = stock.filter(({ material }) => material === piece.material);
  const sheets = ofMetal.filter(({ thickness }) => Math.abs(thickness - piece.thickness) <= sameThickness * piece.thickness);
  const source = "this-shop";
  const size = ({ width, length }: StockSheet) => say`${mm(width)} × ${mm(length)}`;
  if (sheets.length === 0) {
    const others = [...new Set(ofMetal.map(({ thickness }) => thickness))].sort((a, b) => a - b);
    const has = others.length > 0 ? say`this metal in ${listed(others.map((each) => [mm(each)]))}` : say`none of this metal`;
    return { level: "note", field: "thickness", phrase: say`Not in stock here: this shop has ${has}.`, source };
  }
  const fits = sheets.find(
    ({ width, length }) =>
      Math.max(piece.width, piece.length) <= Math.max(width, length) &&
      Math.min(piece.width, piece.length) <= Math.min(width, length),
  );
  return fits
    ? { level: "note", phrase: say`In stock here: it can be had from a sheet of ${size(fits)}.`, source }
    : { level: "note", phrase: say`Larger than the sheets in stock here, ${listed(sheets.map(size))}.`, source };
}

import type { Worksheet } from "./worksheet.ts";
import anneal from "./worksheets/anneal.ts";
import bendLength from "./worksheets/bend-length.ts";
import brakeLoad from "./worksheets/brake-load.ts";
import coneBlank from "./worksheets/cone-blank.ts";
import cornerCut from "./worksheets/corner-cut.ts";
import cutMethod from "./worksheets/cut-method.ts";
import dieFit from "./worksheets/die-fit.ts";
import fingerSet from "./worksheets/finger-set.ts";
import foldedEdge from "./worksheets/folded-edge.ts";
import holeCircle from "./worksheets/hole-circle.ts";
import holePlace from "./worksheets/hole-place.ts";
import lengthReader from "./worksheets/length-reader.ts";
import linePosition from "./worksheets/line-position.ts";
import practicePieces from "./worksheets/practice-pieces.ts";
import punchLoad from "./worksheets/punch-load.ts";
import rivetJoint from "./worksheets/rivet-joint.ts";
import rollSetting from "./worksheets/roll-setting.ts";
import rolledBlank from "./worksheets/rolled-blank.ts";
import sawBlade from "./worksheets/saw-blade.ts";
import seamAllowance from "./worksheets/seam-allowance.ts";
import shearLoad from "./worksheets/shear-load.ts";
import sheetCuts from "./worksheets/sheet-cuts.ts";
import sheetMass from "./worksheets/sheet-mass.ts";
import smallestRadius from "./worksheets/smallest-radius.ts";
import spotJoint from "./worksheets/spot-joint.ts";
import spotSetting from "./worksheets/spot-setting.ts";
import springback from "./worksheets/springback.ts";
import squareCheck from "./worksheets/square-check.ts";
import weldPair from "./worksheets/weld-pair.ts";

/** Every calculator, in the order of the handbook. */
export const worksheets: readonly Worksheet[] = [
  lengthReader,
  linePosition,
  holeCircle,
  squareCheck,
  sheetMass,
  cutMethod,
  shearLoad,
  sheetCuts,
  sawBlade,
  cornerCut,
  punchLoad,
  dieFit,
  holePlace,
  bendLength,
  practicePieces,
  smallestRadius,
  springback,
  brakeLoad,
  foldedEdge,
  fingerSet,
  rolledBlank,
  rollSetting,
  coneBlank,
  weldPair,
  spotSetting,
  spotJoint,
  rivetJoint,
  seamAllowance,
  anneal,
];

/** The worksheet with this id, if there is one. */
export function worksheetById(id: string): Worksheet | undefined {
  return worksheets.find((sheet) => sheet.id === id);
}

import { mostFingers } from "../bending/finger-set.ts";
import { materialIds, weldTimers } from "../catalogue.ts";
import type { ChoiceInput, Inputs, ListInput, MaterialInput, QuantityInput, TextInput } from "../inputs.ts";
import type { Quantity } from "../quantity/units.ts";

/**
 * What the shop's file holds, said once: the build checks the file against these tables, the form on `/shop/` is made from them,
 * and a file that is saved gets its comments from them. The keys are those of the file, in its order; a dot leads into a group.
 */

/** Counts up with every change that older files cannot be read with as they are. A file without a number is of version 1. */
export const shopVersion = 1;

/** A text that must look a certain way. */
export interface PatternText extends TextInput {
  readonly pattern: RegExp;
  /** What it must be, in words. */
  readonly must: string;
}

interface Section {
  readonly title: string;
  /** What it is, for somebody who has never seen one. */
  readonly about: string;
  readonly inputs: Inputs;
}

interface ListSection {
  readonly title: string;
  readonly about: string;
  readonly list: ListInput;
}

const quantity = (kind: Quantity, label: string, min: number, max: number, help?: string): QuantityInput => ({
  kind: "quantity",
  quantity: kind,
  ...(kind === "length" ? { fineness: "setting" as const } : {}),
  label,
  min,
  max,
  ...(help === undefined ? {} : { help }),
});
const length = (label: string, min: number, max: number, help?: string) => quantity("length", label, min, max, help);
const name: TextInput = { kind: "text", label: "Name", maxLength: 80 };

const metal: MaterialInput = { kind: "material", label: "Rated in", default: "steel-cr" };
/** Sheet that a shop like this works; gauge numbers are read in the list of the metal beside them. */
const sheet = (label: string, help?: string) => length(label, 0.3, 6, help);
const rated = (help: string) => ({
  "rating.material": { ...metal, help },
  "rating.thickness": sheet("Rated thickness"),
  "rating.length": length("Rated length", 100, 6000),
});

/** The metal of a line of a list. */
const metalOfLine: ChoiceInput = {
  kind: "choice",
  label: "Metal",
  choices: Object.fromEntries(materialIds.map((id) => [id, id])),
  default: "steel-cr",
};

const side = (label: string) => length(label, 1, 150);
const shape: ChoiceInput = {
  kind: "choice",
  label: "Shape",
  choices: { round: "round", square: "square", rectangle: "rectangle" },
  default: "round",
};
const dieLetter = (label: string): PatternText => ({
  kind: "text",
  label,
  maxLength: 2,
  pattern: /^[A-Z]{1,2}$/,
  must: "one or two capital letters",
});
const outline = {
  diameter: { ...side("Diameter"), whenEmpty: "not round" },
  width: { ...side("Width"), whenEmpty: "round" },
  height: { ...side("Height"), whenEmpty: "no rectangle" },
};
/** Which sizes each shape has; the others are left out of its line. */
export const outlineSizes: Readonly<Record<string, readonly string[]>> = {
  round: ["diameter"],
  square: ["width"],
  rectangle: ["width", "height"],
};

const rows = (columns: ListInput["columns"], rowName: string, label: string, minRows: number, maxRows = 200): ListInput => ({
  kind: "list",
  label,
  columns,
  rowName,
  minRows,
  maxRows,
  default: [],
});

/** One bend measured here; the same line in the file and in what a device keeps. */
export const bendColumns = {
  material: metalOfLine,
  thickness: sheet("Thickness"),
  radius: length("Inside radius", 0, 100),
  angle: quantity("angle", "Angle", 1, 180),
  deduction: length("Bend deduction", -50, 100),
  uncertainty: length("±", 0.001, 5),
  pieces: quantity("count", "Pieces", 1, 1000),
  date: {
    kind: "text",
    label: "Date",
    maxLength: 10,
    // The last alternative is the 29th of February of the years that have one.
    pattern:
      /^(?:\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|02-(?:0[1-9]|1\d|2[0-8]))|\d{2}(?:[02468][048]|[13579][26])-02-29)$/,
    must: "a date like 2026-09-14",
  } as PatternText,
  lot: { kind: "text", label: "Lot of the sheet", maxLength: 60, default: "" } as TextInput,
  brake: { kind: "text", label: "Brake", maxLength: 80, default: "" } as TextInput,
} satisfies ListInput["columns"];

export const shopSections = {
  brake: {
    title: "Folding brake",
    about: "The hand folding brake with removable fingers.",
    inputs: {
      name,
      ...rated("What it may bend along its whole length: copy it from the plate."),
      fingers: {
        ...rows({ finger: length("Finger", 5, 2000) }, "fingers", "Fingers", 1, mostFingers),
        plain: true,
        help: "Width of every finger there is, one entry a finger.",
      },
      fingerHeight: length("Finger height", 10, 500, "Clear height under the clamp beam, so how deep a box can be."),
      fingerLean: quantity("angle", "Finger lean", 0, 80, "How far the front of a finger leans back from upright."),
      fingerDepth: length("Finger depth", 10, 1000, "How deep the foot of a finger is, from nose to heel."),
      fingerTop: length("Finger top", 10, 1000, "From the nose straight back to the back of a finger at its top."),
      noseRadius: length("Nose radius", 0, 20, "Radius on the nose of the fingers."),
      shortestLeg: length("Shortest leg", 1, 100, "Shortest outside leg that can be turned up."),
      longestLeg: length("Longest leg", 10, 5000, "Longest outside leg that can be turned up."),
      largestSwing: quantity("angle", "Largest swing", 45, 180, "How far the leaf swings, from flat."),
      beamSetback: length("Beam setback", 0, 1000, "From the nose of the fingers straight back to the front of the clamp beam."),
      beamDepth: length("Beam depth", 10, 1000, "Of the clamp beam, from front to back."),
      beamHeight: length("Beam height", 10, 2000, "Of the clamp beam, from its underside to its top."),
      bedDepth: length(
        "Bed depth",
        10,
        2000,
        "From the hinge line to the back of the bed: what hangs down behind must clear it.",
      ),
      bedHeight: length("Bed height", 10, 2000, "From the top of the bed to its underside."),
      bedNose: length(
        "Bed nose",
        1,
        2000,
        "Height of the front edge of the bed; from there its underside slopes down to the back.",
      ),
      leafWidth: length("Leaf width", 5, 500, "Of the bar of the leaf, from the hinge line to its outer edge."),
      leafThickness: length("Leaf thickness", 1, 300, "Of the bar of the leaf."),
      clampOpening: length("Clamp opening", 1, 500, "How far the fingers lift from the bed."),
      clearance: length("Clearance", 0, 20, "Distance a bent part should keep from every tool."),
      shortestHold: length("Shortest hold", 1, 200, "Shortest flat strip the fingers hold, from the nose back."),
      bareEnd: length("Bare end", 0, 200, "How much of a bend may stick out beyond the last finger and still come out straight."),
    },
  },
  shear: {
    title: "Shear",
    about: "The foot shear.",
    inputs: {
      name,
      ...rated("What it may cut along its whole length: copy it from the plate."),
      rake: quantity("angle", "Rake", 0, 10, "Slope of the upper blade; 0 for parallel blades."),
      cuttingLength: length("Cutting length", 100, 6000, "Between the side frames."),
      shortestStop: length("Nearest stop", 0, 1000, "Nearest setting of the back stop."),
      longestStop: length("Farthest stop", 10, 3000, "Farthest setting of the back stop."),
      shortestPiece: length(
        "Shortest piece",
        1,
        500,
        "Shortest piece, from the blade towards you, that the hold-downs still grip.",
      ),
      guardOpening: length("Guard opening", 1, 120, "Height of the gap below the finger guard."),
      guardDistance: length("Guard distance", 1, 1000, "How far that gap is from the blade."),
    },
  },
  cornerCutter: {
    title: "Corner cutter",
    about: "The cutter that takes a square corner off in one stroke.",
    inputs: {
      name,
      "rating.material": metal,
      "rating.thickness": sheet("Rated thickness", "Copy it from the plate."),
      largestSide: length("Largest side", 10, 500, "Longest side of the corner it takes off."),
    },
  },
  bandSaw: {
    title: "Band saw",
    about: "The vertical band saw for metal.",
    inputs: {
      name,
      throat: length("Throat", 50, 2000, "From the blade to the frame."),
      bands: {
        ...rows({ teeth: quantity("count", "Teeth an inch", 3, 40), width: length("Width", 1, 50) }, "bands", "Bands", 1),
        help: "Every band there is: teeth an inch, and its width.",
      },
      slowest: quantity("speed", "Slowest speed", 1, 1500),
      fastest: quantity("speed", "Fastest speed", 5, 1500),
      coolant: {
        kind: "choice",
        label: "Coolant",
        choices: { yes: "yes", no: "no" },
        default: "no",
        help: "Whether it cuts with coolant.",
      } as ChoiceInput,
    },
  },
  punch: {
    title: "Punch",
    about: "The hand punch. Sizes are those stamped on the tools; a hole comes out as large as its punch.",
    inputs: {
      name,
      force: quantity("force", "Largest force", 500, 2_000_000, "Copy it from the plate."),
      throat: length("Throat", 20, 2000, "From the middle of the punch to the frame: how far from an edge a hole can be."),
      punches: {
        ...rows({ shape, ...outline, die: dieLetter("Its die") }, "punches", "Punches", 1),
        help: "One line a punch, with the letter of the die that belongs to it. A square has a width, a rectangle a width and a height.",
      },
      dies: {
        ...rows({ letter: dieLetter("Letter"), shape, ...outline }, "dies", "Dies", 1),
        help: "One line a die, with the size of its opening. Spare dies for thicker sheet are listed too.",
      },
    },
  },
  rolls: {
    title: "Rolls",
    about: "The hand slip rolls: two front rolls that pinch the sheet and a rear roll that curves it.",
    inputs: {
      name,
      ...rated("What they may roll over their whole width: copy it from the plate."),
      width: length("Width", 100, 6000),
      frontRoll: length("Front roll", 5, 500, "Diameter."),
      rearRoll: length("Rear roll", 5, 500, "Diameter."),
      spacing: length("Spacing", 5, 1000, "Level distance from the pinch line to the middle of the rear roll."),
      screwPitch: length("Screw pitch", 0.2, 20, "What one turn of a rear screw raises that end of the roll."),
      smallestDiameter: length("Smallest diameter", 5, 2000, "Smallest inside diameter by the manual."),
      risePerPass: length("Rise a pass", 0.5, 50, "Most that the rear roll is raised between two passes."),
    },
  },
  welder: {
    title: "Spot welder",
    about: "The spot welder.",
    inputs: {
      name,
      power: quantity("power", "Power", 0.5, 500, "From the plate: the power at 50 % duty."),
      largestForce: quantity("force", "Largest force", 100, 50_000, "Between the tips."),
      largestCurrent: quantity("current", "Largest current", 1, 100),
      tipFace: length("Tip face", 2, 20, "Diameter the tips are dressed to."),
      throat: length("Throat", 20, 2000, "From the tips to the frame: how far from an edge a spot can be."),
      thinnest: length("Thinnest sheet", 0.2, 6, "Mild steel it may weld, each of two sheets."),
      thickest: length("Thickest sheet", 0.3, 6),
      time: {
        kind: "choice",
        label: "What ends the weld",
        choices: Object.fromEntries(weldTimers.map((timer) => [timer, timer])),
        default: "timer",
        help: "finger-switch (it welds as long as you press) or timer.",
      } as ChoiceInput,
    },
  },
} satisfies Readonly<Record<string, Section>>;

export const shopLists = {
  furnaces: {
    title: "Furnaces",
    about: "Furnaces for annealing, one line each. Control is how many °C it strays from what was set.",
    list: rows(
      {
        name,
        hottest: quantity("temperature", "Hottest", 100, 1800),
        control: quantity("ratio", "Control, ± °C", 0.1, 100),
        width: length("Width inside", 20, 5000),
        height: length("Height inside", 20, 5000),
        depth: length("Depth inside", 20, 5000),
      },
      "furnaces",
      "Furnaces",
      0,
    ),
  },
  stock: {
    title: "Stock",
    about: "One line a sheet size.",
    list: rows(
      {
        material: metalOfLine,
        thickness: sheet("Thickness"),
        width: length("Width", 50, 3000),
        length: length("Length", 50, 6000),
      },
      "sheets",
      "Sheets in stock",
      1,
    ),
  },
  bends: {
    title: "Measured bends",
    about:
      "Bends measured here, from practice pieces. The angle is turned through from flat; the deduction is the outside legs added up, less the flat length; ± is for k = 2. The lot of the sheet and the name of the brake may be left out.",
    list: rows(bendColumns, "bends", "Measured bends", 0, 500),
  },
} satisfies Readonly<Record<string, ListSection>>;

export type SectionKey = keyof typeof shopSections;
export type ListKey = keyof typeof shopLists;

export const shopName: TextInput = { kind: "text", label: "Name of the shop", maxLength: 80 };

/** A value that must be above, or not below, another of its machine. */
export interface Order {
  readonly section: SectionKey;
  readonly lower: string;
  readonly upper: string;
  readonly mayBeEqual?: boolean;
}

export const orders: readonly Order[] = [
  { section: "brake", lower: "shortestLeg", upper: "longestLeg" },
  { section: "brake", lower: "beamSetback", upper: "fingerTop" },
  { section: "brake", lower: "fingerDepth", upper: "fingerTop", mayBeEqual: true },
  { section: "brake", lower: "bedNose", upper: "bedHeight", mayBeEqual: true },
  { section: "shear", lower: "shortestStop", upper: "longestStop" },
  { section: "bandSaw", lower: "slowest", upper: "fastest", mayBeEqual: true },
  { section: "welder", lower: "thinnest", upper: "thickest" },
];

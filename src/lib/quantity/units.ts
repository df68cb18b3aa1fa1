/**
 * The kinds of quantity the handbook knows, the unit each is kept in, and the units people may type.
 * Factors are exact by definition (inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s²)
 * or products of such definitions; none is rounded.
 */

const inch = 25.4;
const pound = 0.45359237;
const poundForce = pound * 9.80665;

export interface Unit {
  /** How the unit is printed after a number. */
  readonly text: string;
  /** base value = typed value · factor + offset */
  readonly factor: number;
  readonly offset?: number;
  /** Other spellings accepted when typed; compared without case unless `exactCase`. */
  readonly also?: readonly string[];
  readonly exactCase?: boolean;
}

export interface QuantityKind {
  readonly name: string;
  /** Key of the unit values are kept in: the first of `units`. */
  readonly base: string;
  readonly units: Readonly<Record<string, Unit>>;
  /** Decimals shown when the value is in its base unit. */
  readonly decimals: number;
  /** What to type, for messages. */
  readonly example: string;
}

export const quantityKinds = {
  length: {
    name: "length",
    base: "mm",
    decimals: 1,
    example: "1.2 mm, 0.048 in or 3/64 in",
    units: {
      mm: { text: "mm", factor: 1 },
      cm: { text: "cm", factor: 10 },
      m: { text: "m", factor: 1000 },
      in: { text: "in", factor: inch, also: ['"', "″", "”", "inch", "inches", "''"] },
      ft: { text: "ft", factor: 12 * inch, also: ["'", "′", "’", "foot", "feet"] },
    },
  },
  angle: {
    name: "angle",
    base: "deg",
    decimals: 1,
    example: "90 or 90°",
    units: {
      deg: { text: "°", factor: 1, also: ["°", "º", "degree", "degrees"] },
      rad: { text: "rad", factor: 180 / Math.PI },
    },
  },
  force: {
    name: "force",
    base: "N",
    decimals: 0,
    example: "12 kN, 800 N or 2700 lbf",
    units: {
      N: { text: "N", factor: 1 },
      kN: { text: "kN", factor: 1000 },
      lbf: { text: "lbf", factor: poundForce },
      kgf: { text: "kgf", factor: 9.80665 },
    },
  },
  stress: {
    name: "stress",
    base: "N/mm2",
    decimals: 0,
    example: "280 N/mm², 280 MPa or 40 ksi",
    units: {
      "N/mm2": { text: "N/mm²", factor: 1, also: ["N/mm²", "N/mm^2", "MPa"] },
      GPa: { text: "GPa", factor: 1000 },
      ksi: { text: "ksi", factor: (1000 * poundForce) / (inch * inch) },
      psi: { text: "psi", factor: poundForce / (inch * inch) },
    },
  },
  mass: {
    name: "mass",
    base: "kg",
    decimals: 2,
    example: "1.5 kg, 800 g or 3 lb",
    units: {
      kg: { text: "kg", factor: 1 },
      g: { text: "g", factor: 0.001 },
      lb: { text: "lb", factor: pound, also: ["lbs"] },
      oz: { text: "oz", factor: pound / 16 },
    },
  },
  density: {
    name: "density",
    base: "kg/m3",
    decimals: 0,
    example: "7850 kg/m³",
    units: {
      "kg/m3": { text: "kg/m³", factor: 1, also: ["kg/m³", "kg/m^3"] },
      "g/cm3": { text: "g/cm³", factor: 1000, also: ["g/cm³", "g/cm^3"] },
      "lb/in3": { text: "lb/in³", factor: pound / (inch / 1000) ** 3, also: ["lb/in³", "lb/in^3"] },
    },
  },
  area: {
    name: "area",
    base: "mm2",
    decimals: 0,
    example: "2500 mm²",
    units: {
      mm2: { text: "mm²", factor: 1, also: ["mm²", "mm^2"] },
      m2: { text: "m²", factor: 1e6, also: ["m²", "m^2"] },
      in2: { text: "in²", factor: inch * inch, also: ["in²", "in^2"] },
    },
  },
  time: {
    name: "time",
    base: "s",
    decimals: 2,
    example: "0.2 s or 10 cycles50",
    units: {
      s: { text: "s", factor: 1, also: ["sec", "seconds"] },
      ms: { text: "ms", factor: 0.001 },
      min: { text: "min", factor: 60 },
      h: { text: "h", factor: 3600 },
      cycles50: { text: "cycles at 50 Hz", factor: 1 / 50, also: ["cycles@50", "cycles (50 Hz)"] },
      cycles60: {
        text: "cycles at 60 Hz",
        factor: 1 / 60,
        also: ["cycles@60", "cycles (60 Hz)", "cycles", "cycle"],
      },
    },
  },
  current: {
    name: "current",
    base: "kA",
    decimals: 1,
    example: "8 kA or 8000 A",
    units: { kA: { text: "kA", factor: 1 }, A: { text: "A", factor: 0.001 } },
  },
  power: {
    name: "power",
    base: "kVA",
    decimals: 0,
    example: "16 kVA",
    units: { kVA: { text: "kVA", factor: 1 } },
  },
  temperature: {
    name: "temperature",
    base: "°C",
    decimals: 0,
    example: "650 °C or 1200 °F",
    units: {
      "°C": { text: "°C", factor: 1, also: ["C"] },
      "°F": { text: "°F", factor: 5 / 9, offset: (-32 * 5) / 9, also: ["F"] },
    },
  },
  energy: {
    name: "energy",
    base: "J",
    decimals: 1,
    example: "40 J",
    units: { J: { text: "J", factor: 1, also: ["Nm", "N·m"] } },
  },
  moment: {
    name: "moment",
    base: "N·m",
    decimals: 0,
    example: "120 N·m",
    units: {
      N·m: { text: "N·m", factor: 1, also: ["Nm", "N m"] },
      lbf·ft: { text: "lbf·ft", factor: (poundForce * 12 * inch) / 1000, also: ["lbf ft", "ft lbf"] },
    },
  },
  speed: {
    name: "speed",
    base: "m/min",
    decimals: 0,
    example: "40 m/min or 130 ft/min",
    units: { "m/min": { text: "m/min", factor: 1 }, "ft/min": { text: "ft/min", factor: (12 * inch) / 1000 } },
  },
  percent: {
    name: "percentage",
    base: "%",
    decimals: 0,
    example: "50 or 50 %",
    units: { "%": { text: "%", factor: 1 } },
  },
  ratio: { name: "number", base: "", decimals: 3, example: "0.45", units: { "": { text: "", factor: 1 } } },
  count: { name: "whole number", base: "", decimals: 0, example: "4", units: { "": { text: "", factor: 1 } } },
} as const satisfies Record<string, QuantityKind>;

export type Quantity = keyof typeof quantityKinds;

/** The description of a quantity, widened so that every kind can be read the same way. */
export function kindOf(quantity: Quantity): QuantityKind {
  return quantityKinds[quantity];
}

/** The factor table entry of a unit by its key, e.g. `unitOf("length", "in")`. @throws Error for an unknown key. */
export function unitOf(quantity: Quantity, key: string): Unit {
  const unit = kindOf(quantity).units[key];
  if (!unit) throw new Error(`No unit "${key}" for ${quantity}. Units: ${Object.keys(kindOf(quantity).units).join(", ")}`);
  return unit;
}

/** Value in the base unit, from a value in the unit named. */
export function toBase(value: number, quantity: Quantity, unitKey: string): number {
  const { factor, offset = 0 } = unitOf(quantity, unitKey);
  return value * factor + offset;
}

/** Value in the unit named, from a value in the base unit. */
export function fromBase(value: number, quantity: Quantity, unitKey: string): number {
  const { factor, offset = 0 } = unitOf(quantity, unitKey);
  return (value - offset) / factor;
}

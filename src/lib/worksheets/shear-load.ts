import { type Catalogue, materialIds } from "../catalogue.ts";
import { bladeGap, bladeGapFormula } from "../cutting/blade-gap.ts";
import { guardDistance, pressOpening } from "../cutting/guard-opening.ts";
import { parallelCapacity, parallelCapacityFormula, rakedCapacity, rakedCapacityFormula } from "../cutting/shear-capacity.ts";
import {
  engagedLength,
  engagedLengthFormula,
  parallelForce,
  parallelForceFormula,
  rakedForce,
  rakedForceBreaking,
  rakedForceByWork,
  rakedForceFormula,
} from "../cutting/shear-force.ts";
import { cutLength, rake as rakeSymbol, sheet } from "../cutting/symbols.ts";
import { InputError } from "../input-error.ts";
import { tensileShares } from "../punching/punch-force.ts";
import { penetrations } from "../punching/punch-work.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, type Step, worksheet } from "../worksheet.ts";
import { bandCases, propertyRemark } from "./parts/property-band.ts";

interface Form {
  readonly name: string;
  readonly force: number;
  readonly chosen: boolean;
  readonly source: string;
  readonly note?: string;
}

/** Shares of the thickness at which the sheet breaks through: the metal's own, or the whole list's for a metal it does not name. */
function breaking(catalogue: Catalogue, id: (typeof materialIds)[number]) {
  const own = penetrations[id];
  if (own) return { low: own.low ?? own.value, high: own.value, basis: own.basis };
  const all = Object.values(penetrations);
  return {
    low: Math.min(...all.map(({ low, value }) => low ?? value)),
    high: Math.max(...all.map(({ value }) => value)),
    basis: `no value is known for ${catalogue.materials[id].name}; the whole range of the other metals is taken`,
  };
}

const percent = (share: number) => `${Math.round(100 * share)} %`;

export default worksheet({
  id: "shear-load",
  title: "Load on the shear",
  summary: "What force cuts the sheet, how much of this shop’s shear that takes, and what gap its blades need.",
  page: "/cutting/",
  inputs: {
    material: materialInput,
    thickness: { ...sheet, kind: "quantity", default: "1.2mm", help: "Measured, not the nominal gauge." },
    length: { ...cutLength, kind: "quantity", default: "600mm" },
    rake: {
      ...rakeSymbol,
      kind: "quantity",
      min: 0,
      default: "1.5deg",
      help: "Slope of the upper blade against the lower one; 0 for parallel blades.",
    },
    ...propertyInputs,
  },
  outputs: {
    force: {
      kind: "quantity",
      label: "Force on the blade",
      symbol: "F",
      quantity: "force",
      help: "Raked: the whole triangle under the blade resists. Parallel: the whole section does.",
    },
    forceLow: { kind: "quantity", label: "Lowest of the forms", quantity: "force" },
    forceHigh: { kind: "quantity", label: "Highest of the forms", quantity: "force" },
    clearance: {
      kind: "quantity",
      label: "Gap between the blades",
      symbol: "c",
      quantity: "length",
      fineness: "setting",
      help: "Middle of one twentieth to one tenth of the thickness.",
    },
  },
  main: "force",
  formulas: [
    parallelForceFormula,
    rakedForceFormula,
    engagedLengthFormula,
    rakedCapacityFormula,
    parallelCapacityFormula,
    bladeGapFormula,
  ],
  validity: [
    "Sharp blades with the right gap. Blunt ones, friction and the force of the hold-downs come on top.",
    "The forms for a raked blade differ by half as much again; none of them was found in a handbook. Read the force as a size, not as a measurement.",
    "A plate rates one metal. Carried over here by force alone; the plate and the manual decide. Never cut wire, rod or strip iron on a shear.",
  ],
  cautions: [
    "within-rating",
    "shear-blades",
    "shear-hold-downs",
    "shear-treadle",
    "shear-offcuts",
    "sharp-edges",
    "lock-out",
    "defer-to-manual",
  ],
  sources: [
    "shear-equilibrium",
    "gustafsson-2016",
    "die-design-handbook",
    "rhode-island-notes",
    "shear-cutting-article",
    "iso-13857",
    "cfr-1910-217",
    "navedtra-14251-shear",
    "this-shop",
  ],

  compute(values, catalogue) {
    const { thickness, length, rake } = values;
    if (rake > 0 && rake < rakeSymbol.min)
      throw new InputError(
        "rake",
        rake,
        say`Rake of the blade must be 0 for parallel blades, or from ${String(rakeSymbol.min)}° to ${rakeSymbol.max}°; it is ${String(rake)}°.`,
      );
    const material = materialWith(catalogue, values.material, values);
    const strength = material.shearStrength.value;
    const cut = { thickness, shearStrength: strength };
    const whole = parallelForce({ ...cut, length });
    const { low, high, basis } = breaking(catalogue, values.material);
    const { shear } = catalogue.shop;

    // No blade needs more than parallel ones do, which matters for a cut shorter than the stretch under a raked blade.
    const atMost = (force: number) => Math.min(force, whole);
    const short = rake > 0 && rakedForce({ ...cut, rake }) > whole;
    const byWork = (penetration: number, chosen = false): Form => ({
      name: `Work of parallel blades spread along the cut, breaking at ${percent(penetration)}`,
      force: atMost(rakedForceByWork({ ...cut, rake, penetration })),
      chosen,
      source: "gustafsson-2016",
      note: "our reading of its abstract",
    });
    const forms: Form[] =
      rake > 0
        ? [
            {
              name: "Whole triangle under the blade resists",
              force: atMost(rakedForce({ ...cut, rake })),
              chosen: true,
              source: "shear-equilibrium",
            },
            {
              name: `Triangle less its broken end, breaking at ${percent(low)}`,
              force: atMost(rakedForceBreaking({ ...cut, rake, penetration: low })),
              chosen: false,
              source: "shear-equilibrium",
            },
            byWork(low),
            ...(high > low ? [byWork(high)] : []),
          ]
        : [
            { name: "Length × thickness × shear strength", force: whole, chosen: true, source: "shear-equilibrium" },
            {
              name: `${tensileShares.kalpakjian.share} × length × thickness × tensile strength`,
              force: tensileShares.kalpakjian.share * length * thickness * material.tensileStrength.value,
              chosen: false,
              source: tensileShares.kalpakjian.source,
            },
          ];
    const forces = forms.map(({ force }) => force);
    const force = forces[0] as number;
    const clearance = bladeGap(thickness);

    const ratedMaterial = catalogue.materials[shear.rating.material];
    const carried = (to: number) => {
      const plate = {
        ratedThickness: shear.rating.thickness,
        ratedStrength: ratedMaterial.shearStrength.value,
        shearStrength: to,
      };
      return { plate, raked: rakedCapacity(plate), parallel: parallelCapacity(plate) };
    };
    const { plate, raked, parallel } = carried(strength);
    const takes = shear.rake > 0 ? raked : parallel;
    const used = shear.rake > 0 ? (thickness / takes) ** 2 : (thickness / takes) * (length / shear.rating.length);

    const remarks: Remark[] = [];
    if (used > 1)
      remarks.push({
        level: "caution",
        field: "thickness",
        phrase: say`This is ${Math.round(100 * used)} % of the rating of ${shear.name}, ${mm(shear.rating.thickness)} of ${ratedMaterial.name}. In this metal it takes ${mm(takes)}. Do not cut it here.`,
        source: "this-shop",
      });
    else {
      remarks.push({
        level: "note",
        phrase: say`${Math.round(100 * used)} % of the rating of ${shear.name}; in this metal it takes ${mm(takes)} by force alone.`,
        source: "this-shop",
      });
      if (thickness > shear.rating.thickness)
        remarks.push({
          level: "caution",
          field: "thickness",
          phrase: say`The sheet is thicker than the ${mm(shear.rating.thickness)} on the plate. The force would allow it, but gap, hold-downs and stroke may not: only the manual can say.`,
          source: "this-shop",
        });
    }
    if (length > shear.cuttingLength)
      remarks.push({
        level: "caution",
        field: "length",
        phrase: say`${shear.name} cuts ${mm(shear.cuttingLength)}; this cut is ${mm(length)}.`,
        source: "this-shop",
      });
    remarks.push({
      level: "note",
      phrase: say`Its hold-downs grip pieces from ${mm(shear.shortestPiece)}, measured from the blade towards you; its back stop goes from ${mm(shear.shortestStop)} to ${mm(shear.longestStop)}. A shorter piece must not be held by hand.`,
      source: "this-shop",
    });
    if (rake !== shear.rake)
      remarks.push({
        level: "note",
        field: "rake",
        phrase: say`This shop’s shear has a rake of ${amount(shear.rake, "angle")}. The share of its rating above is worked out with that.`,
        source: "this-shop",
      });
    if (rake > 0)
      remarks.push({
        level: "note",
        phrase: say`The depth at which the sheet breaks through is remembered, not read: ${basis}. The force shown does not depend on it; the band does.`,
        source: "die-design-handbook",
      });
    if (short)
      remarks.push({
        level: "note",
        field: "length",
        phrase: say`The cut is shorter than the ${mm(engagedLength({ thickness, rake }))} that lie under such a blade, so the force of parallel blades is the most there can be.`,
        source: "shear-equilibrium",
      });
    if (rake > 2)
      remarks.push({
        level: "note",
        field: "rake",
        phrase: say`Beyond about 2° the strip twists and bends as it is cut, and the forms grow less sure.`,
        source: "gustafsson-2016",
      });
    remarks.push({
      level: "note",
      phrase: say`Gap between the blades: from ${mm(bladeGap(thickness, "low"))} to ${mm(bladeGap(thickness, "high"))} is the rule; soft metal takes the small end. On many foot shears the gap is fixed and not yours to change.`,
      source: "shear-cutting-article",
    });
    remarks.push(propertyRemark("Shear strength", "stress", material.shearStrength));

    const least = guardDistance(shear.guardOpening, "slot");
    if (shear.guardDistance < least)
      remarks.push({
        level: "caution",
        phrase: say`The guard of ${shear.name} is open ${mm(shear.guardOpening)}, ${mm(shear.guardDistance)} from the blade. ISO 13857 asks for ${mm(least)} at that height: tell your instructor before you use it.`,
        source: "iso-13857",
      });
    const press = pressOpening(shear.guardDistance);

    const comparison: AnswerTable = {
      caption: rake > 0 ? "What each form says for a raked blade" : "What each form says for parallel blades",
      columns: [{ label: "Form" }, { label: "Force", quantity: "force" }],
      rows: forms.map(({ name, force: each, chosen, source, note }) => ({
        cells: [name, each],
        chosen,
        source,
        ...(note ? { note } : {}),
      })),
    };
    const spread: AnswerTable = {
      caption: "What the spread of the shear strength does to it",
      columns: [{ label: "Sheet" }, { label: "Shear strength", quantity: "stress" }, { label: "Force", quantity: "force" }],
      rows: bandCases(material.shearStrength, { low: "Softest of this grade", high: "Strongest of this grade" }).map((each) => ({
        cells: [each.name, each.value, (force * each.value) / strength],
        chosen: each.chosen,
        source: material.shearStrength.source,
      })),
    };
    const capacities: AnswerTable = {
      caption: `What ${shear.name} takes in other metals, by force alone`,
      columns: [
        { label: "Metal" },
        { label: "Raked blade, thickness", quantity: "length", fineness: "setting" },
        { label: "Parallel blades, thickness", quantity: "length", fineness: "setting" },
      ],
      rows: materialIds.map((id) => {
        const other = carried(id === values.material ? strength : catalogue.materials[id].shearStrength.value);
        return {
          cells: [catalogue.materials[id].name, other.raked, other.parallel],
          chosen: id === values.material,
          source: "shear-equilibrium",
          ...(id === shear.rating.material && id !== values.material ? { note: "on the plate" } : {}),
        };
      }),
    };
    const guard: AnswerTable = {
      caption: `The gap below the guard of ${shear.name}`,
      columns: [
        { label: "Rule" },
        { label: "Opening here", quantity: "length", fineness: "setting" },
        { label: "Distance here", quantity: "length", fineness: "setting" },
        { label: "Distance asked for", quantity: "length", fineness: "setting" },
        { label: "Opening allowed", quantity: "length", fineness: "setting" },
      ],
      rows: [
        {
          cells: ["ISO 13857, age 14 and above, slot", shear.guardOpening, shear.guardDistance, least, null],
          source: "iso-13857",
        },
        {
          cells: ["29 CFR 1910.217 Table O-10, for presses", shear.guardOpening, shear.guardDistance, null, press ?? null],
          source: "cfr-1910-217",
          note: "from memory; for a shear it is guidance only",
        },
      ],
    };

    const working: Step[] = [
      ...(rake > 0
        ? [
            { formula: engagedLengthFormula, values: { thickness, rake, engaged: engagedLength({ thickness, rake }) } },
            ...(short ? [] : [{ formula: rakedForceFormula, values: { ...cut, rake, force } }]),
          ]
        : []),
      ...(rake === 0 || short ? [{ formula: parallelForceFormula, values: { ...cut, length, force: whole } }] : []),
      shear.rake > 0
        ? { formula: rakedCapacityFormula, values: { ...plate, capacity: raked } }
        : { formula: parallelCapacityFormula, values: { ...plate, capacity: parallel } },
      { formula: bladeGapFormula, values: { thickness, clearance } },
    ];

    return {
      outputs: { force, forceLow: Math.min(...forces), forceHigh: Math.max(...forces), clearance },
      remarks,
      working,
      tables: [comparison, ...(spread.rows.length > 1 ? [spread] : []), capacities, guard],
      sources: [...new Set([...forms.map(({ source }) => source), "shear-cutting-article", "this-shop"])],
    };
  },
});

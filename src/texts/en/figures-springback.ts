/** Words in the figures of the pages about springback and practice pieces, by figure. */
export const figuresSpringback = {
  overbendChart: {
    title:
      "Overbend for a bend of 90 degrees against radius over thickness: least for soft copper, most for stainless steel and hard aluminium",
    radiusOverThickness: "inside radius ÷ thickness",
    overbend: "overbend",
    metals: {
      "al-5052-h32": "aluminium 5052-H32",
      "stainless-304": "stainless 304",
      "steel-cr": "cold-rolled steel",
      "copper-soft": "soft copper",
    },
  },
  springBack: {
    title: (name: string, swingAngle: string, toolRadius: string) =>
      `${name}, 1 mm: held at ${swingAngle} degrees about a radius of ${toolRadius} mm, it springs back to 90 degrees and 20 mm`,
    letGo: (radius: string) => ["let go:", `R ${radius} mm`],
    held: (toolRadius: string) => ["held:", `R ${toolRadius} mm`],
    letGoAt: (angle: string) => ["let go:", `${angle}°`],
    heldAt: (swingAngle: string) => ["held:", `${swingAngle}°`],
    byTheFormula: (name: string) => `${name}, 1 mm, by the formula`,
  },
  squareCheck: {
    title: "A square inside a bend: a gap at the tip means the leg is under-bent, a gap at the heel means it is over-bent",
    underBent: ["light at the tip:", "leg under-bent"],
    right: ["no light:", "90°"],
    overBent: ["light at the heel:", "leg over-bent"],
  },
  stressStrain: {
    title:
      "Stress against stretch: a steep straight line, then a nearly level one; unloading runs back parallel to the first line and leaves a permanent stretch",
    stays: "stays",
    springs: "springs",
    yieldStrength: "yield strength Y",
    slope: "slope E",
    letGo: ["let go: back", "with slope E"],
    stress: "stress",
    stretchOfFibre: "stretch of a fibre",
  },
  jawPlacement: {
    title:
      "Measuring an outside leg with a caliper: right is from below, one jaw on the edge and the other flat on the other leg just above the bend",
    right: ["right: from below,", "flat, near the bend"],
    tilted: ["wrong: tilted,", "reads too long"],
    fromAbove: ["wrong: from above,", "reads the angle too"],
  },
  practiceStrip: {
    title:
      "Practice strip 100 mm long and 50 mm wide with its number, rolling direction, sight line in the middle and three places to measure",
    length: "L₀, about 100",
    width: "50 or more",
    number: "No. 3",
    clamped: "clamped",
    rollingDirection: "rolling direction",
    sightLine: "sight line",
    measure: ["measure L₀ and the", "legs at the same", "three places"],
  },
  spread: {
    three: "3 pieces",
    five: "5 pieces",
    row: (name: string, deduction: string, uncertainty: string) => `${name} ${deduction} ± ${uncertainty} mm`,
    title: (rows: string) => `Measured bend deductions: with three pieces ${rows}`,
    bendDeduction: "bend deduction, mm",
  },
};

import type { Material } from "../catalogue.ts";

/** Whether two sheets can be spot welded on a small machine made for steel. */
export const weldVerdicts = {
  yes: "yes",
  "with-care": "with care",
  no: "no",
} as const;
export type WeldVerdict = keyof typeof weldVerdicts;

export const otherJoints = {
  rivet: "rivets",
  "folded-seam": "a folded seam where the metal folds flat",
  solder: "soft solder",
} as const;
export type OtherJoint = keyof typeof otherJoints;

type Group = "plain-steel" | "zinc-coated" | "austenitic" | "ferritic" | "aluminium" | "copper-alloy" | "titanium";

function groupOf({ family, coated, id }: Material): Group {
  if (family === "carbon-steel") return coated ? "zinc-coated" : "plain-steel";
  if (family === "stainless") return id === "stainless-430" ? "ferritic" : "austenitic";
  return family;
}

export interface Reason {
  readonly text: string;
  readonly source: string;
}

export interface WeldPair {
  readonly verdict: WeldVerdict;
  readonly reasons: readonly Reason[];
  /** What to do in its place; also where welding is possible but needs care. */
  readonly instead: readonly OtherJoint[];
}

const practice = (text: string): Reason => ({ text, source: "common-practice" });

const refusals: Readonly<
  Partial<Record<Group, { readonly reasons: readonly Reason[]; readonly instead: readonly OtherJoint[] }>>
> = {
  aluminium: {
    reasons: [
      {
        text: "Aluminium leads heat and current away so well that a small welder for steel has neither the current nor the force for it.",
        source: "twi-aluminium",
      },
      {
        text: "Two sheets of 1 mm take 32 kA and 4 kN for 0.08 s, where steel takes 6 to 8 kA and 1.5 kN for some 0.2 s.",
        source: "mathers-2002",
      },
      { text: "Its oxide skin differs from sheet to sheet, so one weld holds and the next does not.", source: "twi-aluminium" },
    ],
    instead: ["rivet", "folded-seam"],
  },
  "copper-alloy": {
    reasons: [
      practice(
        "Copper and brass lead current as well as the copper tips do: the tips get as hot as the joint, and the sheet sticks to them.",
      ),
      practice("Brass also loses its zinc as fume where it melts."),
    ],
    instead: ["rivet", "folded-seam", "solder"],
  },
  titanium: {
    reasons: [
      practice(
        "Hot titanium soaks up air and turns brittle, and no settings for it were read: it is work for a shop that welds titanium.",
      ),
    ],
    instead: ["rivet"],
  },
};

const mixedRefusal: Readonly<Partial<Record<Group, Reason>>> = {
  aluminium: practice("Where aluminium melts together with another metal, the joint is brittle."),
  "copper-alloy": { text: "Copper and steel are a difficult pair, even on a large machine.", source: "spot-test-page" },
  titanium: practice("Where titanium melts together with another metal, the joint is brittle."),
};

const cares: Readonly<Partial<Record<Group, readonly Reason[]>>> = {
  "zinc-coated": [
    {
      text: "Zinc spreads the current: it takes 10 to 20 % more force, two or three cycles more and more current.",
      source: "twi-coated-steels",
    },
    { text: "Zinc alloys with the tips. Dress them often and keep them cool.", source: "twi-coated-steels" },
    {
      text: "The fume makes people ill: weld it only where fume is drawn off at the tips.",
      source: "aws-fact-sheet-25",
    },
  ],
  ferritic: [
    practice("The grain of this stainless steel grows where it was hot, and the weld may be brittle: peel test coupons decide."),
  ],
};

/**
 * Whether two metals can be spot welded on a small machine made for steel, and why.
 *
 * @param a - one metal
 * @param b - the other; the order does not matter
 * @returns verdict, reasons and what to do instead
 * @remarks Sources stand at each reason. That a pair can be welded says nothing of its strength: peel test coupons do.
 */
export function weldPair(a: Material, b: Material): WeldPair {
  const groups = [...new Set([groupOf(a), groupOf(b)])].sort();
  const refused = groups.filter((group) => refusals[group]);
  if (refused.length > 0) {
    const joints = refused.map((group) => refusals[group]?.instead ?? []);
    const common = (joints[0] ?? []).filter((joint) => joints.every((list) => list.includes(joint)));
    return {
      verdict: "no",
      reasons: refused.flatMap((group) => [
        ...(groups.length > 1 ? [mixedRefusal[group]].filter((reason) => reason !== undefined) : []),
        ...(refusals[group]?.reasons ?? []),
      ]),
      // Two metals that need different fluxes cannot be soldered to each other so simply.
      instead: groups.length > 1 ? common.filter((joint) => joint !== "solder") : common,
    };
  }

  const has = (group: Group) => groups.includes(group);
  const stainless = has("austenitic") || has("ferritic");
  const reasons: Reason[] = groups.flatMap((group) => cares[group] ?? []);
  if (stainless && has("zinc-coated"))
    reasons.unshift(practice("Molten zinc can crack hot stainless steel: take the zinc off round each spot, on both faces."));
  if (stainless && (has("plain-steel") || has("zinc-coated")))
    reasons.push(
      practice(
        "The stainless sheet resists the current more and gets hotter, so the weld sits towards it. Start from its settings, and expect the carbon steel to rust next to it.",
      ),
    );
  if (stainless)
    reasons.push({
      text: "Stainless steel takes less current but more than twice the force, in a shorter time, than mild steel of its thickness: look whether the machine can press that hard.",
      source: "stainless-schedule-reprint",
    });
  if (has("plain-steel"))
    reasons.push(
      { text: "Low-carbon steel is what these welders and their tables are made for.", source: "iso-14373-scope" },
      practice("Both sheets must be bare metal at the spot: take rust, mill scale, paint and oil off both faces."),
    );

  const careful = groups.length > 1 || has("zinc-coated") || has("ferritic");
  return { verdict: careful ? "with-care" : "yes", reasons, instead: careful ? ["rivet", "folded-seam"] : [] };
}

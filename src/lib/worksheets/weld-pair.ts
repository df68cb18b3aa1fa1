import type { MaterialId } from "../catalogue.ts";
import { spotConditions } from "../joining/spot-conditions.ts";
import { aluminiumSpot } from "../joining/trade-schedules.ts";
import { otherJoints, weldPair, weldVerdicts } from "../joining/weld-pair.ts";
import { amount, mm, say } from "../quantity/phrase.ts";
import { materialInput } from "../stock/material.ts";
import { type AnswerTable, type Handoff, type Remark, worksheet } from "../worksheet.ts";

/** Sheet that the two tables are compared for [mm]. */
const compared = 1;

/** What aluminium asks for beside what steel does, from the middle of each table's range. */
function againstSteel(): AnswerTable {
  const steel = spotConditions({ governing: compared, regime: "medium-force" });
  const aluminium = aluminiumSpot(compared);
  const middle = (low: number, high: number) => (low + high) / 2;
  const force = middle(steel.forceMin, steel.forceMax);
  const current = middle(steel.currentMin, steel.currentMax);
  const time = middle(steel.timeMin, steel.timeMax);
  return {
    caption: "Two sheets of 1 mm, by the published tables",
    columns: [
      { label: "Metal" },
      { label: "Current", quantity: "current" },
      { label: "Force", quantity: "force" },
      { label: "Time", quantity: "time" },
    ],
    rows: [
      { cells: ["Bare low-carbon steel", current, force, time], source: "iso-14373-table" },
      { cells: ["Aluminium", aluminium.current, aluminium.force, aluminium.time], source: "mathers-2002" },
      {
        cells: [
          "Aluminium over steel",
          `${(aluminium.current / current).toFixed(2)} times`,
          `${(aluminium.force / force).toFixed(2)} times`,
          `${(aluminium.time / time).toFixed(2)} times`,
        ],
      },
    ],
  };
}

/** Rivets go by the weaker sheet: of steel and another metal, the other one. */
function softer(a: MaterialId, b: MaterialId): MaterialId {
  return a.startsWith("steel") || a.startsWith("stainless") ? b : a;
}

export default worksheet({
  id: "weld-pair",
  title: "Can these two be spot welded?",
  summary: "Whether two metals can be spot welded on a small welder for steel, why, and what to do instead.",
  page: "/joining/",
  inputs: {
    materialA: { ...materialInput, label: "One sheet" },
    materialB: { ...materialInput, label: "The other sheet" },
  },
  outputs: {
    verdict: { kind: "choice", label: "Spot weld them?", choices: weldVerdicts },
    reasons: {
      kind: "list",
      label: "Why",
      plain: true,
      columns: { reason: { kind: "text", label: "Reason" } },
    },
    instead: {
      kind: "list",
      label: "Instead",
      plain: true,
      columns: { joint: { kind: "choice", label: "Joint", choices: otherJoints } },
    },
  },
  main: "verdict",
  formulas: [],
  validity: [
    "For a small welder made for steel, as a teaching shop has. Large machines weld aluminium and more.",
    "The metal only: thickness, surface and the machine still have to suit. See the settings of a spot weld.",
  ],
  cautions: ["weld-sparks", "zinc-fume", "arc-light", "hot-work", "defer-to-manual"],
  sources: [
    "iso-14373-scope",
    "iso-14373-table",
    "mathers-2002",
    "twi-aluminium",
    "twi-coated-steels",
    "spot-test-page",
    "stainless-schedule-reprint",
    "aws-fact-sheet-25",
    "common-practice",
  ],

  compute({ materialA, materialB }, { materials, shop }) {
    const [a, b] = [materials[materialA], materials[materialB]];
    const { verdict, reasons, instead } = weldPair(a, b);
    const remarks: Remark[] = [];
    if (verdict === "no")
      remarks.push({
        level: "caution",
        phrase: say`Do not try it on ${shop.welder.name}: it gives up to ${amount(shop.welder.largestCurrent, "current")}. A weld that seems to hold can let go at any time.`,
      });
    if (verdict === "with-care")
      remarks.push({
        level: "caution",
        phrase: say`Weld test coupons of these two sheets first and peel them.`,
      });
    if (a.id !== b.id && verdict === "no")
      remarks.push({
        level: "note",
        phrase: say`Two unlike metals that get wet eat each other at the joint. Put paint, sealant or tape between them, and rivets of the nobler metal or coated ones through them.`,
        source: "common-practice",
      });
    if (verdict !== "no")
      remarks.push({
        level: "note",
        phrase: say`${shop.welder.name} takes sheets from ${mm(shop.welder.thinnest)} to ${mm(shop.welder.thickest)} each.`,
      });
    const aluminium = a.family === "aluminium" || b.family === "aluminium";
    return {
      outputs: { verdict, reasons: reasons.map(({ text }) => text), instead },
      remarks,
      working: [],
      tables: aluminium ? [againstSteel()] : [],
      sources: [...new Set([...reasons.map(({ source }) => source), ...(aluminium ? ["iso-14373-table"] : [])])],
    };
  },

  handoffs({ materialA, materialB }, { outputs: { verdict } }) {
    const handoffs: Handoff[] = [];
    if (verdict !== "no" && materialA === materialB)
      handoffs.push({ to: "spot-setting", label: "Settings for it", raw: { material: materialA } });
    if (verdict !== "yes")
      handoffs.push(
        { to: "rivet-joint", label: "Rivet it instead", raw: { material: softer(materialA, materialB) } },
        { to: "seam-allowance", label: "Fold a seam instead", raw: { kind: "grooved" } },
      );
    return handoffs;
  },
});

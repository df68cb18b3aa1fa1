import type { Catalogue, Material } from "../catalogue.ts";
import { amount, asTyped, atMost, mm, type Phrase, say } from "../quantity/phrase.ts";
import { carriedRatings } from "../shop/carry-over.ts";
import { type MachineId, machineCautions } from "../shop/machine-cautions.ts";
import type { CutList } from "./cut-list.ts";
import { punchName } from "./hole-checks.ts";
import type { Plan } from "./plan.ts";
import type { HoleStep, NotchStep, PunchStep } from "./punch-list.ts";
import type { RolledPlan } from "./rolled/plan.ts";

/** Where a student works on a part: the machines of the shop's file, and hand tools that it does not list. */
export type StationId = Exclude<MachineId, "marking" | "furnace"> | "snips" | "drill" | "rivets";

/** A question about this one plan, with what a good answer has. */
export interface PlanQuestion {
  readonly ask: Phrase;
  readonly answer: Phrase;
}

export interface Station {
  readonly id: StationId;
  /** What the shop calls its machine; none for hand tools. */
  readonly machine?: string;
  /** What of this part is done there. */
  readonly work: Phrase;
  readonly questions: readonly PlanQuestion[];
  /** Ids of the standing cautions, the one nobody may miss first. */
  readonly cautions: readonly string[];
}

const handTools = {
  snips: ["snips-habits", "sharp-edges"],
  drill: ["eyes", "sharp-edges", "lock-out"],
  rivets: ["rivet-work", "eyes", "noise"],
} as const;

/** Ids of every caution a sheet can name. */
export const signOffCautions: readonly string[] = [
  ...new Set([...Object.values(machineCautions).flat(), ...Object.values(handTools).flat()]),
];

type Data = Pick<Catalogue, "materials" | "shop">;

/** What a folded and a rolled plan have in common here. */
interface Work {
  readonly part: { readonly material: Material; readonly thickness: number };
  readonly blank: { readonly width: number; readonly depth: number };
  readonly cuts: CutList;
  readonly punching: readonly PunchStep[];
  readonly joints?: Plan["joints"];
}

/** Phrases one after the other, with something between them. */
function listed(phrases: readonly Phrase[], between = ", "): Phrase {
  return phrases.flatMap((phrase, index) => (index === 0 ? phrase : [between, ...phrase]));
}

/** How thick this sheet may be on a machine, which the plate says for another metal. */
function ratingQuestion(
  { part: { material, thickness } }: Work,
  machine: { readonly name: string; readonly rating: { readonly material: Material["id"]; readonly thickness: number } },
  limit: number,
  { materials }: Data,
): PlanQuestion {
  const plate = materials[machine.rating.material].name;
  return {
    ask: say`This sheet is ${mm(thickness)} of ${material.name}. How thick may this metal be on ${asTyped(machine.name)}?`,
    answer: say`Up to ${atMost(limit)} at its full length; the plate says ${mm(machine.rating.thickness)} of ${plate}. ${thickness <= limit ? "So the machine takes it." : "So it must not be done there: ask."}`,
  };
}

function shearStation(work: Work, limit: number, catalogue: Data): Station {
  const { shear } = catalogue.shop;
  const settings = work.cuts.pieces.flatMap((piece) => piece.settings);
  const stops = settings.map(({ stop, size }) => (stop === undefined ? say`a scribed line at ${mm(size)}` : say`${mm(stop)}`));
  const longest = Math.max(0, ...settings.map(({ cutLength }) => cutLength));
  return {
    id: "shear",
    machine: shear.name,
    work: say`The blank, ${mm(work.blank.width)} × ${mm(work.blank.depth)}, and the strips for practice.`,
    questions: [
      ratingQuestion(work, shear, limit, catalogue),
      ...(stops.length === 0
        ? []
        : [{ ask: say`Which settings of the stop do you make, in their order?`, answer: listed(stops) }]),
      ...(longest === 0
        ? []
        : [
            {
              ask: say`How long is the longest cut, and is the shear longer?`,
              answer: say`${mm(longest)}; the shear cuts ${mm(shear.cuttingLength)}${longest > shear.cuttingLength ? ", so this cut cannot be made there." : "."}`,
            },
          ]),
    ],
    cautions: machineCautions.shear,
  };
}

const isHole = (step: PunchStep): step is HoleStep => step.kind !== "notch";
const isNotch = (step: PunchStep): step is NotchStep => step.kind === "notch";

function cornerStations(work: Work, limit: number, catalogue: Data): Station[] {
  const { cornerCutter, bandSaw } = catalogue.shop;
  const notches = work.punching.filter(isNotch);
  const cut = notches.filter(({ tool }) => tool.by === "corner-cutter");
  const byHand = notches.filter(({ tool }) => tool.by === "lines");
  const corners = (steps: readonly NotchStep[]) => steps.flatMap((step) => step.for).join(", ");
  const guides = (steps: readonly NotchStep[]) =>
    listed(
      steps.map((step) => say`${step.for.join(", ")}: ${mm(step.guide.x)} × ${mm(step.guide.y)}`),
      "; ",
    );
  const stations: Station[] = [];
  if (cut.length > 0)
    stations.push({
      id: "cornerCutter",
      machine: cornerCutter.name,
      work: say`The corners ${corners(cut)}.`,
      questions: [
        ratingQuestion(work, cornerCutter, limit, catalogue),
        { ask: say`How are its guides set for each corner?`, answer: guides(cut) },
      ],
      cautions: machineCautions.cornerCutter,
    });
  if (byHand.length === 0) return stations;
  const size: PlanQuestion = { ask: say`How far do the notches reach in at each corner?`, answer: guides(byHand) };
  stations.push(
    {
      id: "snips",
      work: say`The corners ${corners(byHand)}, to their lines.`,
      questions: [size],
      cautions: handTools.snips,
    },
    {
      id: "bandSaw",
      machine: bandSaw.name,
      work: say`The same corners, where they are sawn instead of snipped.`,
      questions: [
        {
          ask: say`How far from the edge can this saw cut?`,
          answer: say`${mm(bandSaw.throat)}, from the blade to the frame.`,
        },
      ],
      cautions: machineCautions.bandSaw,
    },
  );
  return stations;
}

function holeStations(work: Work, { shop }: Data): Station[] {
  const holes = work.punching.filter(isHole);
  const count = (steps: readonly HoleStep[]) => steps.reduce((sum, { places }) => sum + places.length, 0);
  const punched = holes.flatMap((step) => (step.tool.by === "punch" ? [{ step, tool: step.tool }] : []));
  const drilled = holes.filter(({ tool }) => tool.by !== "punch");
  const stations: Station[] = [];
  if (punched.length > 0) {
    const most = Math.max(...punched.map(({ tool }) => tool.share));
    const number = count(punched.map(({ step }) => step));
    stations.push({
      id: "punch",
      machine: shop.punch.name,
      work: say`${number} ${number === 1 ? "hole" : "holes"}, while the blank is flat.`,
      questions: [
        {
          ask: say`Which punch and which die do you take for each size?`,
          answer: listed(punched.map(({ tool }) => say`${punchName(tool.punch)} with die ${tool.punch.die}`)),
        },
        {
          ask: say`How much of the force of ${asTyped(shop.punch.name)} does the largest hole take?`,
          answer: say`${Math.round(100 * most)} %${most > 1 ? ", which is too much: it must not be punched there." : "."}`,
        },
      ],
      cautions: machineCautions.punch,
    });
  }
  if (drilled.length > 0) {
    const number = count(drilled);
    stations.push({
      id: "drill",
      work: say`${number} ${number === 1 ? "hole" : "holes"} that the punch does not make.`,
      questions: [
        {
          ask: say`How is the sheet held while it is drilled, and what is below it?`,
          answer: say`Clamped flat on scrap wood or metal, never held by hand: a sheet that catches spins like a blade.`,
        },
        {
          ask: say`Which sizes are drilled?`,
          answer: listed(drilled.map(({ width, height }) => say`${mm(Math.min(width, height))}`)),
        },
      ],
      cautions: handTools.drill,
    });
  }
  return stations;
}

function brakeStation(plan: Plan, limit: number, catalogue: Data): Station[] {
  const { brake } = catalogue.shop;
  const { bends, order } = plan;
  const edges = plan.layout.chains.some(({ edgeLines }) => edgeLines.length > 0);
  if (bends.length === 0 && !edges) return [];
  const swings = bends.flatMap(({ id, swing }) => (swing === null ? [] : [say`${id}: ${amount(swing, "angle")}`]));
  const found: Phrase =
    order && "steps" in order
      ? say`${order.steps.map(({ bend }) => bend).join(", ")}. The list of the plan says how the piece lies each time.`
      : order && "trapped" in order
        ? say`There is none: ${order.trapped.why} The part has to be changed first.`
        : say`The plan does not say: a leg that already stands must not be where the leaf, the fingers or the bed have to be.`;
  return [
    {
      id: "brake",
      machine: brake.name,
      work: say`${bends.length} ${bends.length === 1 ? "bend" : "bends"}${edges ? " and the folded edges" : ""}.`,
      questions: [
        ratingQuestion(plan, brake, limit, catalogue),
        ...(bends.length > 1
          ? [{ ask: say`In which order are the bends made, and what goes wrong otherwise?`, answer: found }]
          : []),
        ...(swings.length > 0
          ? [
              {
                ask: say`How far does the leaf swing for each bend, and why past the angle of the drawing?`,
                answer: listed(swings),
              },
            ]
          : []),
        {
          ask: say`How short may a leg be on this brake?`,
          answer: say`${mm(brake.shortestLeg)}: the leaf needs that much to push on.`,
        },
      ],
      cautions: machineCautions.brake,
    },
  ];
}

function rollStation(plan: RolledPlan, limit: number, catalogue: Data): Station {
  const { rolls } = catalogue.shop;
  const settings = plan.rolling.settings.map(({ end, passes, rise }) => {
    const [first] = passes;
    return say`${end}: ${passes.length} passes, the first at ${mm(first?.rise ?? rise)}, the last at ${mm(rise)}`;
  });
  return {
    id: "rolls",
    machine: rolls.name,
    work: say`The ${plan.part.kind}, pass by pass.`,
    questions: [
      ratingQuestion(plan, rolls, limit, catalogue),
      {
        ask: say`How often does the sheet go through, and how far is the rear roll raised the first and the last time?`,
        answer: settings.length > 0 ? listed(settings, "; ") : say`These rolls cannot be set for it: ask.`,
      },
    ],
    cautions: machineCautions.rolls,
  };
}

function joinStations(work: Work, weldedOn: number, { shop }: Data): Station[] {
  const { joints } = work;
  const stations: Station[] = [];
  if (joints?.kind === "spots" || weldedOn > 0) {
    const start = joints?.kind === "spots" ? joints.start : undefined;
    const coupon: PlanQuestion = {
      ask: say`What must a test coupon of the same sheets show before the part is welded?`,
      answer: start
        ? say`Peeled apart, it leaves a button at least ${mm(start.button)} across in one of the sheets.`
        : say`Peeled apart, it leaves a button in one of the sheets, as wide as the page on spot welding says.`,
    };
    stations.push({
      id: "welder",
      machine: shop.welder.name,
      work: say`${(joints?.kind === "spots" ? joints.count : 0) + weldedOn} spots.`,
      questions: [
        ...(start
          ? [
              {
                ask: say`With which force, current and time do you start?`,
                answer: say`${amount(start.forceMin, "force")} to ${amount(start.forceMax, "force")}, ${amount(start.currentMin, "current")} to ${amount(start.currentMax, "current")}, ${amount(start.timeMin, "time")} to ${amount(start.timeMax, "time")}.`,
              },
            ]
          : []),
        coupon,
      ],
      cautions: machineCautions.welder,
    });
  }
  if (joints?.kind === "rivets")
    stations.push({
      id: "rivets",
      work: say`${joints.count} rivets.`,
      questions: [
        {
          ask: say`Which rivet is it, how large is its hole, and how thick is what it holds?`,
          answer: say`${mm(joints.diameter)} (${joints.inches}), a hole of ${mm(joints.hole)}, a grip of ${mm(joints.grip)}.`,
        },
      ],
      cautions: handTools.rivets,
    });
  return stations;
}

/** One sheet for the supervisor’s signature, folded or rolled. */
export type Signed = { readonly plan: Plan } | { readonly rolled: RolledPlan };

/**
 * The machines and hand tools that a plan uses, in the order of the work, each with what a student must be able to answer
 * before starting. What a machine takes is its plate carried over to the metal of the part; which questions are asked is
 * common practice.
 *
 * @param signed - a plan of a folded part, with the order of its bends where it is known, or one of a rolled part
 * @throws Error when no rating is carried over to the metal, which every metal of the catalogue has
 */
export function signOff(signed: Signed, catalogue: Data): Station[] {
  const work: Work = "plan" in signed ? signed.plan : signed.rolled;
  const limits = carriedRatings(catalogue).find(({ material }) => material === work.part.material.id);
  if (!limits) throw new Error(`No rating was carried over to ${work.part.material.id}`);
  const cone = "rolled" in signed && signed.rolled.part.kind === "cone";
  return [
    shearStation(work, limits.shear, catalogue),
    ...cornerStations(work, limits.cornerCutter, catalogue),
    ...(cone
      ? [
          {
            id: "snips" as const,
            work: say`The two arcs of the blank, to their lines.`,
            questions: [],
            cautions: handTools.snips,
          },
        ]
      : []),
    ...holeStations(work, catalogue),
    ...("plan" in signed
      ? brakeStation(signed.plan, limits.brake, catalogue)
      : [rollStation(signed.rolled, limits.rolls, catalogue)]),
    ...joinStations(work, "plan" in signed ? signed.plan.layout.attachments.length : 0, catalogue),
  ];
}

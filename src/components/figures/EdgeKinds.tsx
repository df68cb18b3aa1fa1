import { type FoldedEdgeSize, foldedEdge } from "../../lib/bending/folded-edge.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresEdges } from "../../texts/en/figures-edges.ts";
import { Paper, Path, Size, spot, Text } from "./pen.tsx";
import { type StripStep, stripPath } from "./section.ts";

const thickness = 1;
const sheetShown = 15;

const kinds: readonly FoldedEdgeSize[] = [
  { kind: "closed", thickness, width: 7, gap: 0 },
  { kind: "open", thickness, width: 7, gap: 1.6 },
  { kind: "teardrop", thickness, width: 8, gap: 2.4 },
  { kind: "double", thickness, width: 7, gap: 0 },
];

/** A sharp fold is drawn with a hair of radius, so that its two faces can be told apart. */
const hair = 0.06;

/** The steps along the face that becomes the outside, from the sheet to the raw edge. */
function stepsOf(edge: FoldedEdgeSize): StripStep[] {
  const { turns } = foldedEdge(edge);
  const { width, kind } = edge;
  if (kind === "double") {
    const outer = { turn: 180, radius: thickness / 2 + hair };
    const outerReach = outer.radius + thickness;
    return [
      { ahead: sheetShown },
      outer,
      { ahead: width - outerReach - thickness - hair },
      { turn: 180, radius: hair },
      { ahead: width - outerReach - thickness - hair },
    ];
  }
  const [turn] = turns;
  if (!turn) throw new Error(`A ${kind} folded edge without a fold`);
  const radius = Math.max(turn.radius, hair);
  return [{ ahead: sheetShown }, { turn: turn.angle, radius }, { ahead: width - radius - thickness }];
}

/** The four folded edges in section, with the width each is named by. */
export default function EdgeKinds() {
  const { edgeKinds: texts } = useTexts(figuresEdges);
  const scale = 7;
  return (
    <Paper height={248} title={texts.title}>
      {kinds.map((edge, index) => {
        const left = (index % 2) * 180;
        const top = index < 2 ? 0 : 126;
        const { turns } = foldedEdge(edge);
        const { name, purpose } = texts[edge.kind];
        const outermost = Math.max(hair, turns.at(-1)?.radius ?? 0) + thickness;
        const origin = spot(left + 22, top + 64);
        const end = origin.x + scale * (sheetShown + outermost);
        return (
          <g key={name}>
            <Path d={stripPath(stepsOf(edge), thickness, { scale, origin }).d} kind="sheet" />
            <Size from={spot(end - scale * edge.width, origin.y)} to={spot(end, origin.y)} off={-14} text="W" gap={4} />
            <Text spot={spot(left + 24, top + 20)} lines={name} kind="big" />
            <Text spot={spot(left + 24, top + 112)} lines={purpose} kind="label" />
          </g>
        );
      })}
    </Paper>
  );
}

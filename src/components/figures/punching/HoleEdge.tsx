import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { type Cut, edgePath, slugPath } from "./cut.ts";

const cut: Cut = {
  top: spot(344, 44),
  thickness: 112,
  half: 196,
  clearance: 14,
  reach: 330,
  rollover: 0.12,
  penetration: 0.36,
  burr: 0.08,
};

/** One side of a punched hole, enlarged, with the zones of its edge, and the slug that came out of it. */
export default function HoleEdge() {
  const { holeEdge: texts } = useTexts(figuresPunching);
  const { top, thickness, half, clearance } = cut;
  const edge = top.x - half;
  const below = top.y + thickness;
  const bright = top.y + (cut.rollover + cut.penetration) * thickness;
  // The slug is drawn so far down that its own zones can be seen.
  const drop = thickness + 40;
  const slug = top.y + drop;
  return (
    <Paper height={366} title={texts.title}>
      <clipPath id="hole-edge-cut">
        <rect x={0} y={0} width={top.x + 2} height={340} />
      </clipPath>
      <g clip-path="url(#hole-edge-cut)">
        <Path d={edgePath(cut, -1)} kind="sheet" />
        <Path d={slugPath(cut, drop)} kind="sheet" />
      </g>
      <Line from={spot(top.x, 14)} to={spot(top.x, 350)} kind="centre" />
      <Line from={spot(edge, bright)} to={spot(edge, 346)} kind="hidden" />
      <Line from={spot(edge - clearance, below + 12)} to={spot(edge - clearance, 346)} kind="hidden" />
      <path class="stretch" d={`M${edge} ${top.y + cut.rollover * thickness}V${bright}`} />
      <path class="squeeze" d={`M${edge} ${bright}L${edge - clearance} ${below}`} />

      <Note to={spot(edge - 10, top.y + 3)} from={spot(176, 24)} lines={texts.drawnInEdge} end="arrow" />
      <Note to={spot(edge, (top.y + bright) / 2 + 6)} from={spot(178, 70)} lines={texts.brightBand} end="arrow" />
      <Note to={spot(edge - clearance / 2, (bright + below) / 2)} from={spot(178, 120)} lines={texts.brokenFace} end="arrow" />
      <Note to={spot(edge - clearance, below + 8)} from={spot(88, 182)} lines={texts.burr} anchor="end" end="arrow" />
      <Text spot={spot(66, 96)} lines={texts.sheet} anchor="middle" kind="name" />

      <Text spot={spot(250, slug + 46)} lines={texts.slug} anchor="middle" kind="name" />
      <Note to={spot(edge - clearance, slug + 84)} from={spot(112, slug + 70)} lines={texts.sizeDie} anchor="end" end="arrow" />
      <Size from={spot(edge - clearance, 338)} to={spot(edge, 338)} off={-6} text="c" outside="from" gap={0} />
    </Paper>
  );
}

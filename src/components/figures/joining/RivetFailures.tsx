import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

const [top, foot] = [40, 112];

/** Four ways a riveted lap gives way: three in the sheet, seen from above, and one in the rivet, seen in section. */
export default function RivetFailures() {
  const { rivetFailures: texts } = useTexts(figuresJoining);
  const y = 76;
  return (
    <Paper height={184} title={texts.title}>
      <g>
        <Path d={box(6, y - 10, 58, y)} kind="sheet" />
        <Path d={box(40, y, 86, y + 10)} kind="sheet" />
        <path class="part" d={`M30 ${y - 10}L30 ${y}L44 ${y}L44 ${y - 10}L50 ${y - 10}A15 12 0 0 0 24 ${y - 10}Z`} />
        <path
          class="part"
          d={`M44 ${y}L44 ${y + 10}L38 ${y + 10}L38 ${y + 18}L64 ${y + 18}L64 ${y + 10}L58 ${y + 10}L58 ${y}Z`}
        />
        <Line from={spot(20, y)} to={spot(70, y)} kind="sight" />
        <Text spot={spot(45, 136)} lines={texts.rivetCut} anchor="middle" kind="name" />
      </g>
      <g>
        <Path d={box(98, top, 166, foot)} kind="sheet" />
        <path class="outline" d={`M126 ${y - 9}A9 9 0 0 0 126 ${y + 9}L136 ${y + 9}A9 9 0 0 0 136 ${y - 9}Z`} />
        <circle class="tool" cx={136} cy={y} r={9} />
        <Line from={spot(136, y)} to={spot(164, y)} kind="motion" />
        <Arrowhead tip={spot(172, y)} direction={0} kind="arrow-motion" />
        <Text spot={spot(135, 136)} lines={texts.holeStretched} anchor="middle" kind="name" />
      </g>
      <g>
        <Path
          d={`M188 ${top}L254 ${top}L254 ${y - 9}L226 ${y - 9}A9 9 0 0 0 226 ${y + 9}L254 ${y + 9}L254 ${foot}L188 ${foot}Z`}
          kind="sheet"
        />
        <Path d={`M262 ${y - 9}L240 ${y - 9}A9 9 0 0 1 240 ${y + 9}L262 ${y + 9}Z`} kind="sheet" />
        <Text spot={spot(225, 136)} lines={texts.tornToTheEdge} anchor="middle" kind="name" />
      </g>
      <g>
        <Path
          d={`M278 ${top}L310 ${top}L308 48L310 51A7 7 0 0 0 310 65L307 70L311 76L308 82L310 87A7 7 0 0 0 310 101L307 106L309 ${foot}L278 ${foot}Z`}
          kind="sheet"
        />
        <Path
          d={`M352 ${top}L320 ${top}L318 48L320 51A7 7 0 0 1 320 65L317 70L321 76L318 82L320 87A7 7 0 0 1 320 101L317 106L319 ${foot}L352 ${foot}Z`}
          kind="sheet"
        />
        <Text spot={spot(315, 136)} lines={texts.tornAcross} anchor="middle" kind="name" />
      </g>
    </Paper>
  );
}

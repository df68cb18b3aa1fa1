import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";
import { groovedSeam, standingSeam } from "./seam-shapes.ts";
import { box, ellipse } from "./shapes.ts";

const t = 6;

/** Four ways to join two sheets, each in section. */
export default function JointKinds() {
  const { jointKinds: texts } = useTexts(figuresJoining);
  const left = 14;
  const right = 166;
  const top = 44;
  return (
    <Paper height={262} title={texts.title}>
      <g>
        <Path d={box(left, top, 122, top + t)} kind="sheet" />
        <Path d={box(58, top + t, right, top + 2 * t)} kind="sheet" />
        <path class="sheet" d={ellipse(spot(90, top + t), 13, 4.6)} />
        <Text spot={spot(90, 88)} lines={texts.spotWeld} anchor="middle" kind="name" />
      </g>
      <g transform="translate(180 0)">
        <Path d={box(left, top, 122, top + t)} kind="sheet" />
        <Path d={box(58, top + t, right, top + 2 * t)} kind="sheet" />
        <path
          class="part"
          d={`M82 ${top}L82 ${top + 2 * t}L77 ${top + 2 * t}L77 ${top + 2 * t + 6}L103 ${top + 2 * t + 6}L103 ${top + 2 * t}L98 ${top + 2 * t}L98 ${top}L106 ${top}A17 14 0 0 0 74 ${top}Z`}
        />
        <path class="outline" d={`M74 ${top}A17 14 0 0 1 106 ${top}Z`} />
        <path class="outline" d={box(77, top + 2 * t, 103, top + 2 * t + 6)} />
        <Text spot={spot(90, 88)} lines={texts.rivet} anchor="middle" kind="name" />
      </g>
      {groovedSeam({ foot: spot(58, 190), thickness: 5, width: 64, beside: 44 }, true).map((d) => (
        <Path key={d} d={d} kind="sheet" />
      ))}
      {standingSeam({ foot: spot(266, 190), thickness: 5, width: 50, beside: 60 }, 20, 2).map((d) => (
        <Path key={d} d={d} kind="sheet" />
      ))}
      <Text spot={spot(90, 222)} lines={texts.groovedSeam} anchor="middle" kind="name" />
      <Text spot={spot(270, 222)} lines={texts.standingSeam} anchor="middle" kind="name" />
    </Paper>
  );
}

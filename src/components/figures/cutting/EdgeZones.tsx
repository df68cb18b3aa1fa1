import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { at, Note, Paper, Path, type Spot, spot, Text } from "../pen.tsx";

/** Shares of the thickness as they are drawn; sharp blades, soft steel. */
const rollover = 0.14;
const burnish = 0.34;
const burr = 0.1;
const thick = 108;
const slope = 9;

/** The edge of one piece: rolled over at its top, with a burr at its foot; turned over for the other one. */
function edge(top: number, x: number, side: 1 | -1, turned: boolean): Spot[] {
  const y = (share: number) => (turned ? top + thick * (1 - share) : top + thick * share);
  return [
    spot(x + side * 16, y(0)),
    spot(x + side * 4, y(rollover * 0.35)),
    spot(x, y(rollover)),
    spot(x, y(rollover + burnish)),
    spot(x + side * slope, y(1)),
    spot(x + side * (slope + 1), y(1 + burr)),
    spot(x + side * (slope + 9), y(1)),
  ];
}

/** Both edges that one stroke of a shear makes, moved apart. */
export default function EdgeZones() {
  const { edgeZones: texts } = useTexts(figuresCutting);
  const top = 58;
  const kept = edge(top, 232, 1, false);
  const fallen = edge(top + 24, 112, -1, true);
  const y = (share: number) => top + thick * share;
  return (
    <Paper height={262} title={texts.title}>
      <Path d={`M352 ${top}L${kept.map(at).join("L")}L352 ${top + thick}`} kind="sheet" />
      <Path d={`M8 ${top + 24 + thick}L${fallen.map(at).join("L")}L8 ${top + 24}`} kind="sheet" />
      <Note to={spot(236, y(rollover * 0.6))} from={spot(204, 34)} lines={texts.rollover} anchor="end" />
      <Note to={spot(232, y(rollover + burnish / 2))} from={spot(212, 88)} lines={texts.burnish} anchor="end" />
      <Note to={spot(238, y(0.75))} from={spot(212, 138)} lines={texts.fracture} anchor="end" />
      <Note to={spot(242, y(1.07))} from={spot(212, 186)} lines={texts.burr} anchor="end" />
      <Text spot={spot(296, 204)} lines={texts.staysOnTheTable} anchor="middle" kind="name" />
      <Text spot={spot(62, 226)} lines={texts.fallsBehind} anchor="middle" kind="name" />
    </Paper>
  );
}

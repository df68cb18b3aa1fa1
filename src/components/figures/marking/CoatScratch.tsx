import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

/** Zinc-coated sheet in section, the coat drawn much thicker than it is: a scribed line goes through it, a drawn line lies on it. */
export default function CoatScratch() {
  const { coatScratch: texts } = useTexts(figuresMarking);
  const top = 84;
  const coat = 14;
  const groove = { x: 96, half: 11, depth: 22 };
  return (
    <Paper height={190} title={texts.title}>
      <Path d={`M14 ${top + coat}H346V${top + coat + 44}H14Z`} kind="tool" />
      <Path
        d={`M14 ${top}H${groove.x - groove.half}L${groove.x - (groove.half * (groove.depth - coat)) / groove.depth} ${top + coat}H14ZM346 ${top}H${groove.x + groove.half}L${groove.x + (groove.half * (groove.depth - coat)) / groove.depth} ${top + coat}H346Z`}
        kind="sheet"
      />
      <Path
        d={`M${groove.x - groove.half} ${top}L${groove.x} ${top + groove.depth}L${groove.x + groove.half} ${top}`}
        kind="sight"
      />
      <Line from={spot(244, top - 2)} to={spot(268, top - 2)} kind="sight" />
      <Note to={spot(groove.x, top + groove.depth - 4)} from={spot(120, 44)} lines={texts.scribed} anchor="middle" />
      <Note to={spot(256, top - 2)} from={spot(270, 44)} lines={texts.drawn} anchor="middle" />
      <Note to={spot(196, top + 8)} from={spot(206, 156)} lines={texts.zinc} />
      <Text spot={spot(24, top + 44)} lines={texts.steel} kind="label" />
      <Text spot={spot(14, 182)} lines={texts.notToScale} kind="label" />
    </Paper>
  );
}

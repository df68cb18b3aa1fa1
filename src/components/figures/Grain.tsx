import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { Line, Paper, Path, spot, Text } from "./pen.tsx";

/** A sheet with its rolling direction and three blanks: bend line across it, slanted, and along it. */
export default function Grain() {
  const { grain: texts } = useTexts(figuresBending);
  const rows = Array.from({ length: 12 }, (_, index) => 30 + index * 13);
  return (
    <Paper height={216} title={texts.title}>
      <Path d="M14 20H346V180H14Z" kind="outline" />
      {rows.map((y, index) => (
        <path key={y} class="grain" d={`M${20 + (index % 3) * 9} ${y}H${338 - (index % 2) * 14}`} />
      ))}
      <path class="badge" d="M32 52H122V112H32Z" />
      <Line from={spot(77, 46)} to={spot(77, 118)} kind="sight" />
      <path class="badge" d="M150 92L198 44L234 80L186 128Z" />
      <Line from={spot(168, 62)} to={spot(216, 110)} kind="sight" />
      <path class="badge" d="M256 52H328V112H256Z" />
      <Line from={spot(250, 82)} to={spot(334, 82)} kind="sight" />
      <Text spot={spot(77, 136)} lines={texts.across} anchor="middle" kind="name" />
      <Text spot={spot(192, 144)} lines={texts.slanted} anchor="middle" kind="name" />
      <Text spot={spot(292, 136)} lines={texts.along} anchor="middle" kind="name" />
      <Text spot={spot(180, 204)} lines={texts.direction} anchor="middle" kind="label" />
    </Paper>
  );
}

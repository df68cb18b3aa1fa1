import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";

/** What a narrow strip may look like when it falls from the shear. */
export default function StripFaults() {
  const { stripFaults: texts } = useTexts(figuresCutting);
  return (
    <Paper height={146} title={texts.title}>
      <Path d="M12 66Q60 22 108 66L108 71Q60 27 12 71Z" kind="sheet" />
      <Path d="M12 71H108" kind="hidden" />
      <Path d="M134 36Q180 68 226 36L226 58Q180 90 134 58Z" kind="sheet" />
      <Path d="M134 36H226" kind="hidden" />
      <Path d="M254 32L346 68L340 74C312 74 284 62 250 66Z" kind="sheet" />
      <Path d="M254 32L250 66M346 68L340 74" kind="outline" />
      {(
        [
          [60, texts.bow, texts.fromTheSide],
          [180, texts.camber, texts.fromAbove],
          [300, texts.twist, texts.slanting],
        ] as const
      ).map(([x, name, seen]) => (
        <g key={name}>
          <Text spot={spot(x, 112)} lines={name} anchor="middle" kind="big" />
          <Text spot={spot(x, 130)} lines={seen} anchor="middle" />
        </g>
      ))}
    </Paper>
  );
}

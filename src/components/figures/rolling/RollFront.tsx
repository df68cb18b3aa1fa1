import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

/** Slip rolls from the front: what is turned, and what is set. A sketch, not to scale. */
export default function RollFront() {
  const { rollFront: texts } = useTexts(figuresRolling);
  const box = (x: number, y: number, width: number, height: number) => `M${x} ${y}H${x + width}V${y + height}H${x}Z`;
  return (
    <Paper height={278} title={texts.title}>
      <Path d={box(44, 70, 30, 160)} kind="tool" />
      <Path d={box(276, 70, 30, 160)} kind="tool" />
      <Path d={box(74, 94, 202, 32)} kind="tool" />
      <Path d={box(74, 130, 202, 32)} kind="tool" />
      {[236, 248, 260].map((x) => (
        <Path key={x} d={`M${x} 130v5a3 3 0 0 0 6 0v-5`} kind="thin" />
      ))}
      <Path d={box(14, 104, 30, 10)} kind="tool" />
      <Path d="M18 109V158H30" kind="outline" />
      {[59, 291].map((x) => (
        <g key={x}>
          <Path d={`M${x} 178V214M${x - 8} 214H${x + 8}`} kind="outline" />
          <Line from={spot(x + 14, 208)} to={spot(x + 14, 186)} kind="motion" />
          <Arrowhead tip={spot(x + 14, 180)} direction={90} kind="arrow-motion" />
        </g>
      ))}
      {[59, 291].map((x) => (
        <Path key={x} d={`M${x} 70V44M${x - 10} 44H${x + 10}`} kind="outline" />
      ))}
      <Path d="M306 104H326V84" kind="outline" />
      <Text spot={spot(175, 115)} lines={texts.upperRoll} anchor="middle" kind="name" />
      <Text spot={spot(160, 151)} lines={texts.lowerRoll} anchor="middle" kind="name" />
      <Note to={spot(59, 46)} from={spot(118, 30)} lines={texts.screwsRearRoll} />
      <Line from={spot(281, 46)} to={spot(266, 34)} />
      <Note to={spot(59, 212)} from={spot(112, 246)} lines={texts.screwsLowerRoll} />
      <Line from={spot(283, 214)} to={spot(262, 236)} />
      <Note to={spot(18, 140)} from={spot(22, 190)} lines={texts.crank} anchor="middle" />
      <Note to={spot(326, 88)} from={spot(326, 62)} lines={texts.release} anchor="middle" />
      <Note to={spot(252, 134)} from={spot(220, 190)} lines={texts.groovesForWire} anchor="middle" />
    </Paper>
  );
}

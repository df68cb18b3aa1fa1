import { spotConditions } from "../../../lib/joining/spot-conditions.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { pressScatter } from "../../../lib/worksheets/parts/welder-remarks.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Paper, spot, Text } from "../pen.tsx";

const sheets = [0.6, 0.8, 1, 1.2, 1.6, 2];

/** The weld times a table allows, by thickness, beside what a finger on a switch does when it aims at their middle. */
export default function PressWindow() {
  const { pressWindow: texts } = useTexts(figuresJoining);
  const left = 70;
  const scale = 430;
  const row = 34;
  const top = 40;
  const x = (seconds: number) => left + scale * seconds;
  const foot = top + row * sheets.length;
  return (
    <Paper height={foot + 92} title={texts.title(pressScatter)}>
      {[0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6].map((seconds) => (
        <g key={seconds}>
          <Line from={spot(x(seconds), top - 12)} to={spot(x(seconds), foot)} />
          <Text spot={spot(x(seconds), foot + 18)} lines={formatNumber(seconds, 1)} anchor="middle" kind="size" />
        </g>
      ))}
      <Text spot={spot(8, 20)} lines={texts.thickness} kind="label" />
      <Text spot={spot(344, foot + 34)} lines={texts.weldTime} anchor="end" kind="label" />
      {sheets.map((thickness, index) => {
        const { timeMin, timeMax } = spotConditions({ governing: thickness, regime: "medium-force" });
        const y = top + row * index;
        const middle = (timeMin + timeMax) / 2;
        const [early, late] = [x(Math.max(middle - pressScatter, 0)), x(middle + pressScatter)];
        return (
          <g key={thickness}>
            <Text spot={spot(8, y + 14)} lines={`${formatNumber(thickness, 1)} mm`} kind="size" />
            <rect class="gauge-fill" x={x(timeMin)} y={y} width={scale * (timeMax - timeMin)} height={18} />
            <Line from={spot(early, y + 9)} to={spot(late, y + 9)} kind="sight" />
            <Arrowhead tip={spot(early, y + 9)} direction={180} kind="arrow-motion" />
            <Arrowhead tip={spot(late, y + 9)} direction={0} kind="arrow-motion" />
          </g>
        );
      })}
      <rect class="gauge-fill" x={10} y={foot + 46} width={28} height={14} />
      <Text spot={spot(70, foot + 58)} lines={texts.allowedByTheTable} kind="name" />
      <Line from={spot(10, foot + 74)} to={spot(38, foot + 74)} kind="sight" />
      <Arrowhead tip={spot(8, foot + 74)} direction={180} kind="arrow-motion" />
      <Arrowhead tip={spot(40, foot + 74)} direction={0} kind="arrow-motion" />
      <Text spot={spot(70, foot + 78)} lines={texts.fingerAimsMiddle} kind="name" />
    </Paper>
  );
}

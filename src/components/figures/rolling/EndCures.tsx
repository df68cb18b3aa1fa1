import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { Arrowhead, arcPath, at, away, Line, Paper, spot, Text } from "../pen.tsx";

/** Three cures for flat ends: bend them first over a bar, turn the sheet end for end, or leave stock and cut it off. */
export default function EndCures() {
  const { endCures: texts } = useTexts(figuresRolling);
  const r = 26;
  const bar = spot(58, 84);
  const rolls = spot(166, 78);
  const arc = spot(300, 84);
  const ends = [-90 - 62, -90 + 62].map((direction) => {
    const from = away(arc, direction, 46);
    return { from, to: away(from, direction + (direction < -90 ? -90 : 90), 30) };
  });
  return (
    <Paper height={196} title={texts.title}>
      <circle class="tool" cx={bar.x} cy={bar.y} r={r} />
      <path class="outline" d={`M10 ${bar.y - r}L${bar.x} ${bar.y - r}${arcPath(bar, r, 90, 28, "L")}`} />
      <Line from={spot(100, 36)} to={spot(96, 62)} kind="motion" />
      <Arrowhead tip={spot(94, 70)} direction={-105} kind="arrow-motion" />
      <Text spot={spot(60, 150)} lines={texts.bendEndOver} anchor="middle" kind="name" />

      <circle class="tool" cx={rolls.x} cy={rolls.y - 24} r={23} />
      <circle class="tool" cx={rolls.x} cy={rolls.y + 24} r={23} />
      <path
        class="outline"
        d={`M${rolls.x + 10} ${rolls.y}H${rolls.x}${arcPath(spot(rolls.x, rolls.y - 24), 24, -90, -140, "L")}L134 30`}
      />
      <path class="hidden" d={`M${rolls.x} ${rolls.y}H128`} />
      <Line from={spot(130, 70)} to={spot(126, 46)} kind="motion" />
      <Arrowhead tip={spot(125, 38)} direction={98} kind="arrow-motion" />
      <Text spot={spot(180, 150)} lines={texts.orLiftRound} anchor="middle" kind="name" />

      <path class="outline" d={arcPath(arc, 46, -90 - 62, -90 + 62)} />
      {ends.map(({ from, to }) => (
        <g key={from.x}>
          <path class="stretch" d={`M${at(from)}L${at(to)}`} />
          <Line
            from={spot(from.x + (from.x < arc.x ? -9 : 9), from.y + 4)}
            to={spot(from.x + (from.x < arc.x ? 9 : -9), from.y - 4)}
            kind="sight"
          />
        </g>
      ))}
      <Text spot={spot(300, 150)} lines={texts.orLeaveLength} anchor="middle" kind="name" />
    </Paper>
  );
}

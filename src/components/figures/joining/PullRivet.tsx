import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

const t = 9;

/** A pull rivet from one side, in three steps, in section. */
export default function PullRivet() {
  const { pullRivet: texts } = useTexts(figuresJoining);
  const y = 78;
  const sheets = (x: number) => (
    <>
      <Path d={box(x - 52, y, x - 9, y + t)} kind="sheet" />
      <Path d={box(x + 9, y, x + 52, y + t)} kind="sheet" />
      <Path d={box(x - 52, y + t, x - 9, y + 2 * t)} kind="sheet" />
      <Path d={box(x + 9, y + t, x + 52, y + 2 * t)} kind="sheet" />
    </>
  );
  const stem = (x: number, from: number, to: number) => <Path d={box(x - 2.5, from, x + 2.5, to)} kind="outline" />;
  const open = (x: number) => (
    <path
      class="part"
      d={`M${x - 20} ${y}L${x - 20} ${y - 6}L${x + 20} ${y - 6}L${x + 20} ${y}L${x + 9} ${y}L${x + 9} ${y + 44}L${x - 9} ${y + 44}L${x - 9} ${y}Z`}
    />
  );
  const set = (x: number) => (
    <path
      class="part"
      d={`M${x - 20} ${y}L${x - 20} ${y - 6}L${x + 20} ${y - 6}L${x + 20} ${y}L${x + 9} ${y}L${x + 9} ${y + 2 * t}Q${x + 20} ${y + 2 * t + 2} ${x + 15} ${y + 2 * t + 10}L${x - 15} ${y + 2 * t + 10}Q${x - 20} ${y + 2 * t + 2} ${x - 9} ${y + 2 * t}L${x - 9} ${y}Z`}
    />
  );
  const bead = (x: number, at: number) => <circle class="tool" cx={x} cy={at} r={8} />;
  return (
    <Paper height={206} title={texts.title}>
      {sheets(60)}
      {open(60)}
      {stem(60, 18, y + 44)}
      {bead(60, y + 52)}
      <Text spot={spot(60, 160)} lines={texts.pushOneSide} anchor="middle" kind="name" />

      {sheets(180)}
      {set(180)}
      {stem(180, 10, y + 30)}
      {bead(180, y + 33)}
      <Path d="M166 72L166 36L194 36L194 72" kind="tool-ghost" />
      <Line from={spot(206, 60)} to={spot(206, 26)} kind="motion" />
      <Arrowhead tip={spot(206, 18)} direction={90} kind="arrow-motion" />
      <Text spot={spot(180, 160)} lines={texts.pull} anchor="middle" kind="name" />

      {sheets(300)}
      {set(300)}
      {stem(300, y + 2, y + 30)}
      {bead(300, y + 33)}
      {stem(324, 10, 56)}
      <Line from={spot(334, 40)} to={spot(344, 30)} kind="motion" />
      <Arrowhead tip={spot(349, 24)} direction={48} kind="arrow-motion" />
      <Text spot={spot(300, 160)} lines={texts.stemSnapsOff} anchor="middle" kind="name" />
    </Paper>
  );
}

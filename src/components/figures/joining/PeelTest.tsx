import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { AngleSize, arcPath, at, away, Paper, Path, spot, Text } from "../pen.tsx";
import { box, ellipse } from "./shapes.ts";

const t = 5;

/** The coupon in the vice, and the free sheet rolled off it. */
export default function PeelTest() {
  const { peelTest: texts } = useTexts(figuresJoining);
  const floor = 128;
  const jaws = (x: number) => (
    <>
      <Path d={box(x - 30, floor - 16, x - t, floor + 40)} kind="tool" />
      <Path d={box(x, floor - 16, x + 25, floor + 40)} kind="tool" />
    </>
  );
  // The rolled sheet leaves the standing one in an arc and ends round the rod.
  const start = spot(268, 84);
  const radius = 34;
  const centre = spot(start.x + radius, start.y);
  const inner = radius - t;
  const end = 20;
  return (
    <Paper height={246} title={texts.title}>
      {jaws(84)}
      <Path d={box(84 - t, 40, 84, floor + 30)} kind="sheet" />
      <Path
        d={`M84 ${floor - 28}L84 52Q84 40 96 40L140 40L140 ${40 + t}L${96} ${40 + t}Q${84 + t} ${40 + t} ${84 + t} 52L${84 + t} ${floor - 28}Z`}
        kind="sheet"
      />
      <path class="sheet" d={ellipse(spot(84, 84), 3.4, 8)} />
      <AngleSize centre={spot(90, 60)} radius={62} from={84} to={30} text="" kind="motion" />
      <Text spot={spot(84, 194)} lines={texts.oneSheetVice} anchor="middle" kind="name" />

      {jaws(268)}
      <Path d={box(268 - t, 40, 268, floor + 30)} kind="sheet" />
      <Path
        d={`M268 ${floor - 28}L268 ${start.y}${arcPath(centre, radius, 180, end, "L")}L${at(away(centre, end, inner))}${arcPath(centre, inner, end, 180, "L")}L${268 + t} ${floor - 28}Z`}
        kind="sheet"
      />
      <path class="sheet" d={ellipse(spot(268, 88), 3.4, 8)} />
      <circle class="tool" cx={centre.x + 24} cy={centre.y - 4} r={9} />
      <AngleSize centre={spot(centre.x + 24, centre.y - 4)} radius={20} from={40} to={-110} text="" kind="motion" />
      <Text spot={spot(268, 194)} lines={texts.rollOffSlotted} anchor="middle" kind="name" />
    </Paper>
  );
}

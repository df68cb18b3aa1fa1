import { seamAllowance } from "../../../lib/joining/seams.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, Size, spot, Text } from "../pen.tsx";
import { standingSeam } from "./seam-shapes.ts";

/** Height of the seam that is drawn: the one that was read, 3/4 in. */
const height = 19.05;

/** A standing seam: two edges up, the longer one over the shorter one, both over together. */
export default function StandingSteps() {
  const { standingSteps: texts } = useTexts(figuresJoining);
  const { sideA, sideB } = seamAllowance({ kind: "standing", width: height });
  const scale = 2.9;
  const fold = scale * (sideB - height);
  const foot = 150;
  const shape = (x: number) => ({ foot: spot(x, foot), thickness: 4, width: scale * height, beside: 30 });
  const mm = (value: number) => formatNumber(value, 1);
  return (
    <Paper height={230} title={texts.title(mm(height), mm(sideA), mm(sideB))}>
      {([0, 1, 2] as const).map((stage) =>
        standingSeam(shape([62, 182, 294][stage] ?? 0), fold, stage).map((d) => (
          <Path key={`${stage} ${d}`} d={d} kind="sheet" />
        )),
      )}
      <Size from={spot(58, foot)} to={spot(58, foot - scale * sideA)} off={34} text={`A ${mm(sideA)}`} gap={30} />
      <Size from={spot(66, foot)} to={spot(66, foot - scale * sideB)} off={-32} text={`B ${mm(sideB)}`} gap={28} />
      <Size from={spot(290, foot)} to={spot(290, foot - scale * height)} off={24} text={`W ${mm(height)}`} gap={20} />
      <Text spot={spot(60, 180)} lines={texts.turnBothEdgesUp} anchor="middle" kind="name" />
      <Text spot={spot(182, 180)} lines={texts.foldLongerOne} anchor="middle" kind="name" />
      <Text spot={spot(300, 180)} lines={texts.foldBothDown} anchor="middle" kind="name" />
      <Text spot={spot(352, 222)} lines={texts.sizesIn} anchor="end" kind="label" />
    </Paper>
  );
}

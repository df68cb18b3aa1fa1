import { seamAllowance } from "../../../lib/joining/seams.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

/** The worked example of the page [mm]. */
const seam = { kind: "grooved", width: 6 } as const;

/** Flat of a tube with a grooved seam: one and a half widths on each edge, the fold one width from the raw edge. */
export default function SeamBlank() {
  const { seamBlank: texts } = useTexts(figuresJoining);
  const { sideA, sideB, allowance } = seamAllowance(seam);
  const scale = 7;
  const [left, right] = [16, 344];
  const [top, foot] = [70, 150];
  const bodyLeft = left + scale * sideA;
  const bodyRight = right - scale * sideB;
  const mm = (value: number) => formatNumber(value, 1).replace(/\.0$/, "");
  const fold = scale * seam.width;
  return (
    <Paper height={246} title={texts.title(seam.width, mm(sideA), mm(allowance))}>
      <Path d={box(left, top, right, foot)} kind="sheet" />
      {[bodyLeft, bodyRight].map((x) => (
        <Line key={x} from={spot(x, top - 8)} to={spot(x, foot + 8)} kind="hidden" />
      ))}
      <Line from={spot(left + fold, top)} to={spot(left + fold, foot)} kind="sight" />
      <Line from={spot(right - fold, top)} to={spot(right - fold, foot)} kind="sight" />
      <Size from={spot(left, top)} to={spot(bodyLeft, top)} off={16} text={`1.5 W = ${mm(sideA)}`} />
      <Size from={spot(bodyRight, top)} to={spot(right, top)} off={16} text={`1.5 W = ${mm(sideB)}`} />
      <Size from={spot(bodyLeft, top)} to={spot(bodyRight, top)} off={16} text={texts.roundTheTube} />
      <Size from={spot(left, foot)} to={spot(left + fold, foot)} off={-22} text={`W ${seam.width}`} />
      <Size from={spot(right - fold, foot)} to={spot(right, foot)} off={-22} text={`W ${seam.width}`} />
      <Text spot={spot(180, 116)} lines={texts.body} anchor="middle" kind="name" />
      <Text spot={spot(16, 208)} lines={texts.bright} kind="label" />
      <Text spot={spot(344, 26)} lines={texts.sizesIn} anchor="end" kind="label" />
    </Paper>
  );
}

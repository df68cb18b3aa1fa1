import { angleError, squareOffset } from "../../../lib/marking/squareness.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { at, Line, Note, Paper, Path, type Spot, spot, Text } from "../pen.tsx";

/** The blank of the calculator on this page [mm]. */
const blank = { width: 600, height: 400, diagonalA: 721.6, diagonalB: 720.6 };
const drawnShift = 22;

function Blank({ corners, names }: { corners: readonly [Spot, Spot, Spot, Spot]; names: readonly [string, string] }) {
  const [a, b, c, d] = corners;
  const middle = spot((a.x + b.x + c.x + d.x) / 4, (a.y + b.y + c.y + d.y) / 4);
  return (
    <g>
      <Path d={`M${[a, b, c, d].map(at).join("L")}Z`} kind="sheet" />
      <Line from={a} to={c} kind="sight" />
      <Line from={b} to={d} kind="sight" />
      <Text spot={spot(middle.x + 15, middle.y + 4)} lines={names[0]} />
      <Text spot={spot(middle.x - 15, middle.y + 4)} lines={names[1]} anchor="end" />
    </g>
  );
}

/** A blank that leans, drawn leaning more than it does, and one that narrows and still has equal diagonals. */
export default function Diagonals() {
  const { diagonals: texts } = useTexts(figuresMarking);
  const lean = squareOffset(blank.height, angleError(blank));
  const left = 16;
  const width = 132;
  const bottom = 142;
  const height = 88;
  const right = 208;
  return (
    <Paper height={214} title={texts.title(formatNumber(lean, 1))}>
      <Blank
        corners={[
          spot(left, bottom),
          spot(left + width, bottom),
          spot(left + width + drawnShift, bottom - height),
          spot(left + drawnShift, bottom - height),
        ]}
        names={[formatNumber(blank.diagonalA, 1), formatNumber(blank.diagonalB, 1)]}
      />
      <Line from={spot(left, bottom)} to={spot(left, bottom - height - 12)} kind="hidden" />
      <Note
        to={spot(left + drawnShift / 2, bottom - height)}
        from={spot(left + 30, 32)}
        lines={texts.shiftedBy(formatNumber(lean, 1))}
      />
      <Text spot={spot(left + width / 2, bottom + 17)} lines={`${blank.width} × ${blank.height}`} anchor="middle" kind="size" />
      <Blank
        corners={[
          spot(right, bottom),
          spot(right + width, bottom),
          spot(right + width - 20, bottom - height),
          spot(right + 20, bottom - height),
        ]}
        names={[texts.equal, texts.equal]}
      />
      <Text spot={spot(92, 186)} lines={texts.leans} anchor="middle" kind="name" />
      <Text spot={spot(272, 186)} lines={texts.narrows} anchor="middle" kind="name" />
    </Paper>
  );
}

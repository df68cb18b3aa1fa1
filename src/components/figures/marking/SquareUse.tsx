import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

const edge = 150;

/** The head of a combination square below the edge and its blade on the sheet, from above. */
function Square({ x, reach }: { x: number; reach: number }) {
  return (
    <g>
      <Path d={`M${x - 30} ${edge}H${x + 36}V${edge + 18}H${x + 8}L${x - 14} ${edge + 30}H${x - 30}Z`} kind="tool" />
      <Path d={`M${x - 8} ${edge + 26}V${edge - reach}H${x + 8}V${edge + 26}Z`} kind="tool" />
      {Array.from({ length: Math.floor(reach / 10) }, (_, index) => (
        <Line
          key={index}
          from={spot(x + 8, edge - 10 * (index + 1) + 4)}
          to={spot(x + (index % 2 === 0 ? 4 : 1), edge - 10 * (index + 1) + 4)}
        />
      ))}
    </g>
  );
}

/** What a combination square marks: a line square to the datum edge, and a line parallel to it. */
export default function SquareUse() {
  const { squareUse: texts } = useTexts(figuresMarking);
  return (
    <Paper height={214} title={texts.title}>
      {[12, 190].map((left) => (
        <Path key={left} d={`M${left} 32H${left + 158}V${edge}H${left}Z`} kind="sheet" />
      ))}
      <Square x={84} reach={104} />
      <Line from={spot(92, edge)} to={spot(92, 44)} kind="sight" />
      <Line from={spot(104, 66)} to={spot(104, 122)} kind="motion" />
      <Arrowhead tip={spot(104, 130)} direction={-90} kind="arrow-motion" />
      <Square x={244} reach={74} />
      <Line from={spot(194, edge - 74)} to={spot(252, edge - 74)} kind="sight" />
      <Line from={spot(262, edge - 40)} to={spot(310, edge - 40)} kind="motion" />
      <Arrowhead tip={spot(318, edge - 40)} direction={0} kind="arrow-motion" />
      <Path d="M252 76L268 46L273 49Z" kind="outline" />
      <Note to={spot(269, 50)} from={spot(292, 24)} lines={texts.scriber} />
      <Text spot={spot(91, 202)} lines={texts.squareToTheEdge} anchor="middle" kind="name" />
      <Text spot={spot(269, 202)} lines={texts.parallelToIt} anchor="middle" kind="name" />
      <Text spot={spot(344, edge - 8)} lines={texts.datumEdge} anchor="end" kind="label" />
    </Paper>
  );
}

import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";

const plate = { width: 120, height: 80 };
/** Holes and a line, from the two datum edges [mm]. */
const across = [15, 60, 105];
const up = [20, 62];
const scale = 2.1;
const left = 86;
const bottom = 196;

/** The usual mark of a datum edge: a small open triangle that stands on it. */
function Datum({ x, y, below }: { x: number; y: number; below: boolean }) {
  return <Path d={below ? `M${x} ${y}L${x - 7} ${y + 12}H${x + 7}Z` : `M${x} ${y}L${x - 12} ${y - 7}V${y + 7}Z`} kind="sight" />;
}

/** Every size starts at one of two edges. */
export default function DatumEdges() {
  const { datumEdges: texts } = useTexts(figuresMarking);
  const x = (value: number) => left + scale * value;
  const y = (value: number) => bottom - scale * value;
  return (
    <Paper height={300} title={texts.title}>
      <Path d={`M${x(0)} ${y(0)}H${x(plate.width)}V${y(plate.height)}H${x(0)}Z`} kind="sheet" />
      {across.map((place) => (
        <Line key={place} from={spot(x(place), y(0))} to={spot(x(place), y(plate.height))} />
      ))}
      {up.map((place) => (
        <Line key={place} from={spot(x(0), y(place))} to={spot(x(plate.width), y(place))} />
      ))}
      {across.flatMap((one) =>
        up.map((other) => <circle key={`${one} ${other}`} class="outline" cx={x(one)} cy={y(other)} r={5} />),
      )}
      {across.map((place, index) => (
        <Size
          key={place}
          from={spot(x(0), y(0))}
          to={spot(x(place), y(0))}
          off={-36 - 20 * index}
          gap={18}
          text={String(place)}
        />
      ))}
      {up.map((place, index) => (
        <Size key={place} from={spot(x(0), y(0))} to={spot(x(0), y(place))} off={36 + 18 * index} gap={18} text={String(place)} />
      ))}
      <Datum x={x(82)} y={y(0)} below />
      <Datum x={x(0)} y={y(40)} below={false} />
      <Text spot={spot(x(82.5), y(0) - 10)} lines={texts.datumEdge} anchor="middle" kind="name" />
      <Text spot={spot(x(0) + 4, y(plate.height) - 10)} lines={texts.secondDatumEdge} kind="name" />
    </Paper>
  );
}

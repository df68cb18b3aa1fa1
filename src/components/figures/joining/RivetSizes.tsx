import { rivetFactors, rivetLayout, rivetLength, rivetSizeFor } from "../../../lib/joining/rivets.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { drivenRivet, plainRivet } from "./rivet-shapes.ts";
import { box } from "./shapes.ts";

const sheet = 1;

/** A solid rivet for two 1 mm sheets before and after it is driven, to scale. */
export default function RivetSizes() {
  const { rivetSizes: texts } = useTexts(figuresJoining);
  const { diameter, inches } = rivetSizeFor(sheet);
  const grip = 2 * sheet;
  const length = rivetLength({ grip, diameter });
  const { headWidth, headHeight } = rivetLayout(diameter);
  const scale = 14;
  const top = 96;
  const [before, after] = [92, 268];
  const shape = (x: number) => ({ top: spot(x, top), diameter: scale * diameter, grip: scale * grip });
  const mm = (value: number) => formatNumber(value, 1);
  const face = top + scale * grip;
  return (
    <Paper height={262} title={texts.title(inches, sheet, rivetFactors.headWidth, mm(headWidth), mm(headHeight))}>
      {[before, after].map((x) => (
        <g key={x}>
          <Path d={box(x - 66, top, x + 74, top + scale)} kind="sheet" />
          <Path d={box(x - 66, top + scale, x + 74, face)} kind="sheet" />
        </g>
      ))}
      <path class="part" d={plainRivet(shape(before), scale * (length - grip))} />
      <path class="part" d={drivenRivet(shape(after), scale * headWidth, scale * headHeight)} />
      <Line from={spot(before, 44)} to={spot(before, 214)} kind="centre" />
      <Line from={spot(after, 44)} to={spot(after, 176)} kind="centre" />
      <Size from={spot(before - 66, face)} to={spot(before - 66, top)} off={10} text={`G ${mm(grip)}`} outside="to" />
      <Size
        from={spot(before + (scale * diameter) / 2, top)}
        to={spot(before + (scale * diameter) / 2, top + scale * length)}
        off={34}
        text={`L ${mm(length)}`}
        gap={30}
      />
      <Size
        from={spot(before - (scale * diameter) / 2, top + scale * length)}
        to={spot(before + (scale * diameter) / 2, top + scale * length)}
        off={-22}
        text={`D ${mm(diameter)}`}
      />
      <Size
        from={spot(after - (scale * headWidth) / 2, face + scale * headHeight)}
        to={spot(after + (scale * headWidth) / 2, face + scale * headHeight)}
        off={-22}
        text={mm(headWidth)}
      />
      <Size
        from={spot(after + (scale * headWidth) / 2, face)}
        to={spot(after + (scale * headWidth) / 2, face + scale * headHeight)}
        off={20}
        text={mm(headHeight)}
        outside="to"
      />
      <Text spot={spot(before, 26)} lines={texts.before} anchor="middle" kind="name" />
      <Text spot={spot(after, 26)} lines={texts.driven} anchor="middle" kind="name" />
      <Text spot={spot(352, 254)} lines={texts.rivet(inches)} anchor="end" kind="label" />
    </Paper>
  );
}

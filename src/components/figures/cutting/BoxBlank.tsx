import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Note, Paper, Path, Size, spot } from "../pen.tsx";
import { box, cornerPlaces } from "./corner.ts";

const scale = 1.75;

/** The whole blank of an open box: base, four sides, four square corners to be cut out. */
export default function BoxBlank() {
  const { boxBlank: texts } = useTexts(figuresCutting);
  const { side, deduction, guide, centre, tangent } = cornerPlaces();
  const wide = box.width + 2 * (side - deduction);
  const deep = box.depth + 2 * (side - deduction);
  const left = 64;
  const top = 58;
  const x = (value: number) => left + scale * value;
  const y = (value: number) => top + scale * value;
  const middle = (tangent + centre) / 2;
  return (
    <Paper
      height={326}
      title={texts.title(box.width, box.depth, side, formatNumber(wide, 1), formatNumber(deep, 1), formatNumber(guide, 2))}
    >
      <Path
        d={`M${x(guide)} ${y(0)}H${x(wide - guide)}V${y(guide)}H${x(wide)}V${y(deep - guide)}H${x(wide - guide)}V${y(deep)}H${x(guide)}V${y(deep - guide)}H${x(0)}V${y(guide)}H${x(guide)}Z`}
        kind="sheet"
      />
      <Path d={`M${x(0)} ${y(guide)}V${y(0)}H${x(guide)}M${x(wide - guide)} ${y(0)}H${x(wide)}V${y(guide)}`} kind="sheet-ghost" />
      <Path
        d={`M${x(0)} ${y(deep - guide)}V${y(deep)}H${x(guide)}M${x(wide - guide)} ${y(deep)}H${x(wide)}V${y(deep - guide)}`}
        kind="sheet-ghost"
      />
      {[middle, wide - middle].map((place) => (
        <Line key={place} from={spot(x(place), y(guide))} to={spot(x(place), y(deep - guide))} />
      ))}
      {[middle, deep - middle].map((place) => (
        <Line key={place} from={spot(x(guide), y(place))} to={spot(x(wide - guide), y(place))} />
      ))}
      <Size from={spot(x(0), y(0))} to={spot(x(wide), y(0))} off={34} text={formatNumber(wide, 1)} />
      <Size from={spot(x(0), y(0))} to={spot(x(guide), y(0))} off={12} text={formatNumber(guide, 2)} />
      <Size from={spot(x(0), y(0))} to={spot(x(0), y(deep))} off={-38} text={formatNumber(deep, 1)} />
      <Size from={spot(x(0), y(0))} to={spot(x(0), y(guide))} off={-14} text={formatNumber(guide, 2)} />
      <Note
        to={spot(x(wide - guide / 2), y(deep - guide / 2))}
        from={spot(x(wide) - 8, y(deep) + 26)}
        lines={texts.cutOut}
        anchor="middle"
      />
      <Note
        to={spot(x(wide / 2), y(deep - middle))}
        from={spot(x(wide / 2) - 20, y(deep) + 26)}
        lines={texts.bend}
        anchor="middle"
      />
    </Paper>
  );
}

import { bladeGap } from "../../../lib/cutting/blade-gap.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Arrowhead, Paper, Path, spot, Text } from "../pen.tsx";

const thickness = 1.2;
const scale = 30;
const top = 82;

/** Gaps as they are drawn, in parts of the thickness: the right one is twice the rule's, or it could not be seen. */
const cells = [
  { name: "tooSmall", share: 0.03, bend: 0 },
  { name: "right", share: 0.15, bend: 0 },
  { name: "tooLarge", share: 0.42, bend: 11 },
] as const;

/** The blades with the sheet between them, from the side, for three gaps. */
export default function GapSizes() {
  const { gapSizes: texts } = useTexts(figuresCutting);
  const low = formatNumber(bladeGap(thickness, "low"), 2);
  const high = formatNumber(bladeGap(thickness, "high"), 2);
  return (
    <Paper height={232} title={texts.title(thickness, low, high)}>
      {cells.map(({ name, share, bend }, index) => {
        const middle = index * 120 + 60;
        const gap = share * thickness * scale;
        const upper = middle - gap / 2;
        const lower = middle + gap / 2;
        const bottom = top + thickness * scale;
        const bite = 0.24 * thickness * scale;
        // The crack of each blade starts at its edge and runs towards the other blade's.
        const crack = share < 0.1 ? 11 : 0;
        return (
          <g key={share}>
            <Path d={`M${upper} ${top + bite}V34H${upper - 40}V${top + bite - 5}Z`} kind="tool" />
            <Path d={`M${lower} ${bottom - bite}V${bottom + 46}H${lower + 40}V${bottom - bite}Z`} kind="tool" />
            <Path
              d={`M${middle + 54} ${top - bite}H${lower + 10}C${lower} ${top - bite} ${upper + 4} ${top + bend} ${upper} ${top + bite}L${upper - 30} ${top + bite + bend * 0.6}L${upper - 46} ${top + bite + bend}V${bottom + bite + bend}L${upper - 30} ${bottom + bite + bend * 0.6}C${upper} ${bottom + bite} ${lower - 4} ${bottom - bend} ${lower} ${bottom - bite}H${middle + 54}Z`}
              kind="sheet"
            />
            <Path d={`M${upper} ${top + bite}L${(upper + lower) / 2 + crack} ${(top + bottom) / 2 - 2}`} kind="sight" />
            <Path d={`M${lower} ${bottom - bite}L${(upper + lower) / 2 - crack} ${(top + bottom) / 2 + 2}`} kind="sight" />
            {index === 1 && (
              <>
                <Path d={`M${upper} ${bottom + 54}V${bottom + 64}M${lower} ${bottom + 54}V${bottom + 64}`} kind="thin" />
                <Path d={`M${upper - 16} ${bottom + 59}H${upper}M${lower} ${bottom + 59}H${lower + 16}`} kind="thin" />
                <Arrowhead tip={spot(upper, bottom + 59)} direction={0} />
                <Arrowhead tip={spot(lower, bottom + 59)} direction={180} />
                <Text spot={spot(lower + 18, bottom + 63)} lines="c" kind="size" />
              </>
            )}
            <Text spot={spot(middle, 208)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}

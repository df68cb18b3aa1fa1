import { loadCatalogue } from "../../../catalogue/load.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { oneLifter, sheetMass } from "../../../lib/stock/sheet-mass.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Paper, spot, Text } from "../pen.tsx";

const row = 26;

/** What the whole sheets of this shop's rack weigh, heaviest first. */
export default function StockMass() {
  const { stockMass: texts } = useTexts(figuresCutting);
  const { shop, materials } = loadCatalogue();
  const sheets = shop.stock
    .map((sheet) => ({ ...sheet, mass: sheetMass({ ...sheet, density: materials[sheet.material].density.value }) }))
    .sort((one, other) => other.mass - one.mass);
  // The rack repeats itself; the heaviest, the lightest and what lies between them say enough.
  const shown = sheets.filter((_, index) => index % 2 === 0 || index === sheets.length - 1);
  const left = 16;
  const most = Math.max(oneLifter, sheets[0]?.mass ?? 0);
  const x = (mass: number) => left + (300 * mass) / most;
  const height = 44 + row * shown.length;
  return (
    <Paper
      height={height + 16}
      title={texts.title(formatNumber(sheets.at(-1)?.mass ?? 0, 0), formatNumber(sheets[0]?.mass ?? 0, 0), oneLifter)}
    >
      <Line from={spot(x(oneLifter), 36)} to={spot(x(oneLifter), height)} kind="sight" />
      {shown.map(({ material, thickness, width, length, mass }, index) => (
        <g key={index}>
          <rect class="gauge-fill" x={left} y={38 + row * index} width={(x(mass) - left).toFixed(1)} height={5} />
          <Text
            spot={spot(left, 33 + row * index)}
            lines={`${materials[material].name.split(/ ?[,(]/)[0]} ${formatNumber(thickness, 1)}, ${formatNumber(width, 0)} × ${formatNumber(length, 0)}`}
            kind="size"
          />
          <Text spot={spot(352, 33 + row * index)} lines={texts.mass(formatNumber(mass, 0))} anchor="end" kind="size" />
        </g>
      ))}
      <Text spot={spot(x(oneLifter) - 4, height + 8)} lines={texts.oneLifter(oneLifter)} anchor="end" kind="size" />
    </Paper>
  );
}

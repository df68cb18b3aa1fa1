import { loadCatalogue } from "../../catalogue/load.ts";
import { formatNumber } from "../../lib/quantity/format.ts";
import { runWorksheet } from "../../lib/worksheet.ts";
import practicePieces from "../../lib/worksheets/practice-pieces.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { Line, Paper, spot, Text } from "./pen.tsx";
import { firstThree, practiceExample } from "./practice-example.ts";

function resultOf(raw: typeof practiceExample | typeof firstThree) {
  const { answer, problems } = runWorksheet(practicePieces, raw, loadCatalogue());
  if (!answer) throw new Error(`Practice pieces of the figure: ${problems.map(({ message }) => message).join(" ")}`);
  const { deduction, uncertainty } = answer.outputs;
  if (deduction === null || uncertainty === null) throw new Error("The practice pieces of the figure give no ±");
  const each = answer.tables?.[0]?.rows.map(({ cells }) => Number(cells[1])) ?? [];
  return { deduction, uncertainty, each };
}

/** Measured deductions as dots, with their mean and ±, for the first three strips and for all five. */
export default function Spread() {
  const { spread: texts } = useTexts(figuresSpringback);
  const rows = [
    { name: texts.three, ...resultOf(firstThree) },
    { name: texts.five, ...resultOf(practiceExample) },
  ];
  const reach = 1.15 * Math.max(...rows.map(({ uncertainty }) => uncertainty));
  const middle = rows[1]?.deduction ?? 0;
  const low = Math.floor((middle - reach) * 20) / 20;
  const high = Math.ceil((middle + reach) * 20) / 20;
  const left = 84;
  const right = 344;
  const x = (value: number) => left + ((right - left) * (value - low)) / (high - low);
  const ticks = Array.from({ length: Math.round((high - low) / 0.05) + 1 }, (_, index) => low + index * 0.05);
  const axis = 176;
  return (
    <Paper
      height={214}
      title={texts.title(
        rows
          .map(({ name, deduction, uncertainty }) => texts.row(name, formatNumber(deduction, 2), formatNumber(uncertainty, 2)))
          .join("; "),
      )}
    >
      {ticks.map((tick, index) => (
        <g key={tick}>
          <path class="grain" d={`M${x(tick)} 14V${axis}`} />
          {index % 2 === 0 && <Text spot={spot(x(tick), axis + 17)} lines={formatNumber(tick, 2)} anchor="middle" kind="size" />}
        </g>
      ))}
      <Line from={spot(left, axis)} to={spot(right, axis)} />
      {rows.map(({ name, deduction, uncertainty, each }, index) => {
        const y = 50 + index * 76;
        return (
          <g key={name}>
            <Text
              spot={spot(6, y - 4)}
              lines={[name, formatNumber(deduction, 2), `± ${formatNumber(uncertainty, 2)}`]}
              kind="size"
            />
            <path
              class="band"
              d={`M${x(deduction - uncertainty)} ${y - 22}H${x(deduction + uncertainty)}V${y + 22}H${x(deduction - uncertainty)}Z`}
            />
            <Line from={spot(x(deduction), y - 26)} to={spot(x(deduction), y + 26)} kind="sight" />
            {each.map((value, piece) => (
              <circle key={`${name} ${piece + 1}`} class="dot" cx={x(value)} cy={y - 12 + piece * 6} r={3.5} />
            ))}
          </g>
        );
      })}
      <Text spot={spot((left + right) / 2, axis + 34)} lines={texts.bendDeduction} anchor="middle" kind="label" />
    </Paper>
  );
}
